// The door to the compiler for all that is outside of it: plain values, offsets and strings. It knows nothing of disks, editors or
// protocols; who comes in brings a World.

export type { Because, Finding, Fix, Severity, Span, TextEdit } from "./findings/finding.ts";
export type { World } from "./world/world.ts";
export { defaultSettings, type Settings } from "./world/settings.ts";
export {
  checkAhead,
  checkProject,
  checkTexts,
  newMemo,
  performTexts,
  type Acted,
  type Checked,
  type CheckMemo,
  type CheckOptions,
} from "./workspace/check-project.ts";
export type { UnitSummary } from "./findings/surveyed.ts";

export type { Declaration, Project, SourceFile } from "./names/project.ts";
export { loadProject } from "./names/load.ts";
export {
  eachItem,
  format,
  linesOf,
  offsetAt,
  parse,
  positionAt,
  print,
  type Argument,
  type Block,
  type Comment,
  type Item,
  type Lines,
  type Position,
  type Token,
  type Tree,
} from "./syntax/index.ts";

export type { Model, Part, Tie, Fluid, Hazard, Thing, ThingIndex, Procedure, Precaution } from "./model/model.ts";
export type { Act, Name } from "./model/act.ts";
export type { Performance, Performed, RefitOp, RefitPerformed, StepRun, Event } from "./bench/trace.ts";
export type { State } from "./bench/state.ts";

export { checks } from "./checks/registry.ts";
export type { Check } from "./checks/check.ts";

export {
  CannotMake,
  write,
  type Output,
  type OutputInput,
  type OutputOptions,
  type Picture,
} from "./outputs/output.ts";
export { pictureEndings, pictureKindOf, pictureSize } from "./outputs/picture-kinds.ts";
export { defaultWording, wordingFor, wordings } from "./outputs/wording/languages.ts";
export type { Wording } from "./outputs/wording/wording.ts";

// What an editor asks beside: the bench at a moment, names and their places, words, and the figures that hovers show.
export { chargeOf } from "./bench/placement.ts";
export { ASIDE, DRAINED, HELD, ON_BASE } from "./bench/state.ts";
export { left, lumpOf } from "./bench/ties.ts";
export { at } from "./bench/vector.ts";
export { unitNames, unitOfProcedure } from "./checks/space-of-names.ts";
export { assumptionsFrom } from "./figures/assumptions.ts";
export { aidCaution, isFigureError } from "./figures/figure.ts";
export { requiredWait } from "./figures/required-wait.ts";
export { assessTorque } from "./figures/tightening.ts";
export { format as formatQuantity, rounded, si } from "./quantities/index.ts";
export { placeNames, placesOf, reservedNames, wordsIn } from "./vocabulary/index.ts";

export { readSettings } from "./workspace/settings-schema.ts";
export { formatEdits } from "./syntax/index.ts";
export { textOf } from "./names/strings.ts";
export { kindTexts, type Entry } from "./vocabulary/index.ts";
export { explainMarkdown } from "./assist/explain-page.ts";

export { benchView, momentAt, performanceAt, type BenchView, type Moment } from "./assist/bench-at.ts";
export { candidatesFor } from "./assist/candidates.ts";
export { completionAt, type Completion, type Proposal } from "./assist/complete.ts";
export { keptMoment } from "./assist/kept-moment.ts";
export { linesThatFree } from "./assist/freeing.ts";
export { inOtherWords, type OtherWords } from "./workspace/other-words.ts";
export { documentKinds, documentNames, documentsOf, type DocumentKind } from "./assist/documents.ts";
export { hashOf, madeList, madeText, mayReplace, notOurs, readMade } from "./outputs/made.ts";
export { codeOf, reportOf } from "./outputs/findings/report.ts";
export { findingsAsText } from "./outputs/findings/text.ts";
export { hintsIn, type Hint } from "./assist/hints.ts";
export { hoverAt, plain as plainMarkdown, type Hover } from "./assist/hover.ts";
export { manualPage, type ManualPage } from "./assist/manual-page.ts";
export { outlineOf, type OutlineEntry } from "./assist/outline.ts";
export { placeAt, slotAt, type Place, type Slot } from "./assist/place.ts";
export { ownPerformances, refitText, stepRefits, type StepRefit } from "./assist/refit-of.ts";
export { rename, renameTarget, type Renamed } from "./assist/rename.ts";
export { convertUnits, freeingSteps, reverseSteps, typeOfFasteners, type Rework } from "./assist/rework.ts";
export { relativeTo, useLine } from "./checks/use-line.ts";
export { stripDiagram, type StripDiagram } from "./assist/strip-diagram.ts";
export { mentionAt, mentionsIn, mentionsOf, type Mention } from "./assist/symbols.ts";
export { colouredTokens, tokenModifiers, tokenTypes, type ColouredToken } from "./assist/token-kinds.ts";
