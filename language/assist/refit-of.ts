// What undoes a step: the lines of the refit that belong to it, and where they stand. The computed refit as text for reading.

import { allowedOf } from "../workspace/allowed.ts";
import type { Performance } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import { linesOf } from "../outputs/lines/groups.ts";
import type { LineGroup } from "../outputs/lines/line.ts";
import { refit } from "../outputs/refit/refit.ts";
import { write, type OutputInput, type OutputOptions } from "../outputs/output.ts";
import type { Units } from "../outputs/lines/figures.ts";
import type { Acted, Checked } from "../workspace/check-project.ts";

export interface RefitLine {
  readonly id: string;
  readonly says: string;
  readonly at: Span;
}
export interface StepRefit {
  /** Number and title of the strip step. */
  readonly number: number;
  readonly title: string;
  readonly at: Span;
  /** Ids of the groups that undo it, such as R3. */
  readonly groups: readonly string[];
  readonly lines: readonly RefitLine[];
}

const known = kept<Performance, Map<string, readonly StepRefit[]>>();

/** Each step of the strip with what undoes it, in the order of the strip: worked out once for a language and a system of units. */
export function stepRefits(performance: Performance, units: Units): readonly StepRefit[] {
  const all = known(performance, () => new Map()),
    key = `${units.wording.tag} ${units.system}`;
  let found = all.get(key);
  if (!found) all.set(key, (found = findStepRefits(performance, units)));
  return found;
}

function findStepRefits(performance: Performance, units: Units): StepRefit[] {
  const lines = linesOf(performance, units),
    steps = new Map(performance.strip.flatMap(({ around: { step } }) => (step ? [[step.number, step] as const] : [])));
  return [...steps.values()].map((step): StepRefit => {
    const groups = lines.refit.filter((group) => group.step === step.number);
    return {
      number: step.number,
      title: step.title || step.name,
      at: step.at,
      groups: groups.map((group) => group.number),
      lines: groups.flatMap(saidIn),
    };
  });
}

const saidIn = (group: LineGroup): RefitLine[] =>
  group.lines.flatMap((line): RefitLine[] => {
    switch (line.is) {
      case "action":
        return [{ id: line.id, says: [line.says, line.text].filter(Boolean).join(" "), at: line.at }];
      case "note":
      case "video":
        return [{ id: line.id, says: line.says, at: line.at }];
      case "message":
        return [{ id: line.id, says: `${line.signal.toUpperCase()}: ${line.text}`, at: line.at }];
      case "hazard":
        return [
          { id: line.id, says: `${(line.hazard.signal ?? "hazard").toUpperCase()}: ${line.hazard.name}`, at: line.at },
        ];
      case "photo":
        return [];
    }
  });

/** The performances of a file's own procedures, the plain build of each. */
export function ownPerformances(checked: Acted, file: string): Performance[] {
  const found = new Map<string, Performance>();
  for (const performance of checked.performances)
    if (performance.procedure.at.file === file && !found.has(performance.procedure.id))
      found.set(performance.procedure.id, performance);
  return [...found.values()];
}

/** Those of them that no other one does: what is printed of a file. */
export function printedPerformances(checked: Acted, file: string): Performance[] {
  const own = ownPerformances(checked, file),
    called = new Set(
      own.flatMap((performance) =>
        performance.strip.map(({ around }) => around.procedure.id).filter((id) => id !== performance.procedure.id),
      ),
    );
  return own.filter(({ procedure }) => !called.has(procedure.id));
}

export function inputFor(checked: Checked, performances: readonly Performance[]): OutputInput {
  return {
    performances,
    texts: checked.texts,
    openFindings: checked.findings.filter(({ severity }) => severity !== "hint").length,
    allowed: allowedOf(checked),
  };
}

/** Strip and refit of a file's procedures as text. */
export const refitText = (checked: Checked, file: string, options: OutputOptions): string =>
  write(refit, "text", inputFor(checked, ownPerformances(checked, file)), options);
