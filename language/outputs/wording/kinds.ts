// Printed words of the kinds of the tables, for every language: what a catalogue has to give, and how a kind is looked up in it. A
// kind that a table gains and a language lacks does not compile.

import {
  kindIn,
  type DriveName,
  type FacingName,
  type FastenerKindName,
  type FluidKindName,
  type HazardKindName,
  type JointKindName,
  type JointUse,
  type PartKindName,
  type PositionName,
  type PrecautionName,
  type SequenceName,
  type SignalName,
  type SourceName,
} from "../../tables/index.ts";
import type { ProtectiveEquipmentName } from "../../tables/protective-equipment.ts";
import type { hazardFigures } from "../../model/read-hazard.ts";
import { sentence } from "./phrases.ts";

type Half = "strip" | "refit";

/** Words of the language that hold a figure of a hazard; the distance to keep has a sentence of its own. */
export type HazardFigure = Exclude<(typeof hazardFigures)[number][0], "keep-out">;

/** Title, and the verbs of the way apart and of the way back as this language puts them into its sentences. */
interface Worked {
  readonly title: string;
  readonly strip: string;
  readonly refit: string;
}

export interface KindWords {
  /** For a part without a kind. */
  readonly plain: Readonly<Record<Half, string>>;
  readonly parts: Readonly<Record<PartKindName, Worked>>;
  readonly fasteners: Readonly<Record<FastenerKindName, Omit<Worked, "title">>>;
  readonly joints: Readonly<Record<JointKindName, Worked>>;
  readonly uses: Readonly<Record<JointUse, string>>;
  /** `harm`: what it can do to people, as nouns that stand behind a colon. */
  readonly hazards: Readonly<Record<HazardKindName, { readonly title: string; readonly harm: string }>>;
  readonly hazardFigures: Readonly<Record<HazardFigure, string>>;
  /** `back`: printed where the author says nothing; undefined where nothing has to be taken back. */
  readonly precautions: Readonly<
    Record<Exclude<PrecautionName, "other">, { readonly title: string; readonly back: string | undefined }>
  >;
  /** At the head of a line whose precaution has no kind: the words of the author say what it is. */
  readonly anyPrecaution: string;
  readonly fluids: Readonly<
    Record<FluidKindName, { readonly title: string; readonly container: string; readonly waste: string }>
  >;
  readonly sources: Readonly<Record<SourceName, { readonly title: string }>>;
  readonly wear: Readonly<Record<ProtectiveEquipmentName, { readonly title: string }>>;
  readonly drives: Readonly<Record<DriveName, { readonly tool: string }>>;
  readonly sequences: Readonly<Record<SequenceName, { readonly title: string }>>;
  /** Behind a colon, and behind the word for position; of something whose gender nobody knows. */
  readonly positions: Readonly<Record<PositionName, string>>;
  readonly facings: Readonly<Record<FacingName, string>>;
  /** The word as the standards print it, and what it means. */
  readonly signals: Readonly<Record<SignalName, { readonly word: string; readonly about: string }>>;
}

/** The chapter of a catalogue that says the kinds. A kind is given by its name in its table; an unknown one as each line says. */
export const kindsOf = (words: KindWords) => ({
  partVerb: (kind: string, half: Half): string => kindIn(words.parts, kind)?.[half] ?? words.plain[half],
  fastenerVerb: (kind: string, half: Half): string => (kindIn(words.fasteners, kind) ?? words.fasteners.screw)[half],
  jointVerb: (kind: string, half: Half): string => kindIn(words.joints, kind)?.[half] ?? words.plain[half],
  part: (kind: string): string => kindIn(words.parts, kind)?.title ?? "",
  joint: (kind: string): string => kindIn(words.joints, kind)?.title ?? "",
  hazard: (kind: string): string => kindIn(words.hazards, kind)?.title ?? kind,
  hazardHarm: (kind: string): string => kindIn(words.hazards, kind)?.harm ?? "",
  hazardFigure: (word: string): string => kindIn(words.hazardFigures, word) ?? word.replaceAll("-", " "),
  /** At the head of a line. */
  precautionShort: (kind: string): string =>
    kind === "other" ? words.anyPrecaution : (kindIn(words.precautions, kind)?.title ?? kind),
  precautionBack: (kind: string): string | undefined => {
    const back = kindIn(words.precautions, kind)?.back;
    return back && sentence(back);
  },
  fluid: (kind: string): string => kindIn(words.fluids, kind)?.title ?? "",
  fluidWaste: (kind: string): string | undefined => kindIn(words.fluids, kind)?.waste,
  fluidContainer: (kind: string): string | undefined => kindIn(words.fluids, kind)?.container,
  jointUse: (use: string): string => kindIn(words.uses, use) ?? use,
  source: (kind: string): string => kindIn(words.sources, kind)?.title ?? kind,
  /** Undefined for a name of the shop's own. */
  wear: (name: string): string | undefined => kindIn(words.wear, name)?.title,
  driveTool: (kind: string): string => kindIn(words.drives, kind)?.tool ?? kind,
  sequence: (kind: string): string => kindIn(words.sequences, kind)?.title ?? kind,
  /** A word of the author's own stays as written. */
  position: (name: string): string => kindIn(words.positions, name) ?? name.replaceAll("-", " "),
  facing: (name: string): string => kindIn(words.facings, name) ?? name.replaceAll("-", " "),
  signal: (signal: SignalName): string => words.signals[signal].word,
  signalAbout: (signal: SignalName): string => words.signals[signal].about,
});
