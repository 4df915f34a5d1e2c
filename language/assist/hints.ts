// Short facts beside the lines of a procedure: how many are out, torques of the refit, computed waits, figures in the other system.

import { at } from "../bench/vector.ts";
import { waitOf } from "../bench/placement.ts";
import type { Performance } from "../bench/trace.ts";
import { kindIn, fastenerKinds } from "../tables/index.ts";
import type { SourceFile } from "../names/project.ts";
import { systemOf, timeText, type Units } from "../outputs/lines/figures.ts";
import { torqueText } from "../outputs/lines/torque.ts";
import { findUnit, format, isProblem, makeQuantity } from "../quantities/index.ts";
import { eachItem } from "../syntax/index.ts";
import { modelsIn } from "./models.ts";
import type { Acted } from "../workspace/check-project.ts";

export interface Hint {
  readonly at: number;
  readonly says: string;
  readonly why: string;
  readonly is: "count" | "torque" | "wait" | "unit" | "position";
}

/** Hints between two offsets of a file, in order. */
export function hintsIn(checked: Acted, file: SourceFile, from: number, to: number, units: Units): Hint[] {
  const found: Hint[] = [],
    told = new Set<string>();
  const add = (hint: Hint): void => {
    const key = `${hint.at} ${hint.is} ${hint.says}`;
    if (hint.at < from || hint.at > to || told.has(key)) return;
    told.add(key);
    found.push(hint);
  };
  // One build: the plain one, as what a reader has before him.
  const plainBuilds = new Map<string, Performance>();
  for (const performance of checked.performances)
    if (performance.procedure.at.file === file.path && !plainBuilds.has(performance.procedure.id))
      plainBuilds.set(performance.procedure.id, performance);
  for (const performance of plainBuilds.values()) ofPerformance(performance, file, units, add);
  for (const model of modelsIn(checked, file.path)) {
    for (const hazard of model.hazards)
      for (const precaution of hazard.precautions) {
        if (precaution.at.file !== file.path) continue;
        const wait = waitOf(hazard, precaution);
        if (wait?.decidedBy && wait.decidedBy.of !== "maker" && wait.seconds !== undefined)
          add({
            at: precaution.at.end,
            says: `at least ${timeText(wait.seconds, units.wording)}`,
            why: [...wait.steps, wait.source].join("\n"),
            is: "wait",
          });
      }
  }
  otherSystem(file, from, to, units, add);
  return found.sort((a, b) => a.at - b.at);
}

function ofPerformance(
  { model, strip, written, procedure, refit }: Performance,
  file: SourceFile,
  units: Units,
  add: (hint: Hint) => void,
): void {
  for (const { act, things, after } of [...strip, ...written]) {
    if (act.at.file !== file.path || act.at.start < procedure.whole.start || act.at.end > procedure.whole.end) continue;
    if (act.verb === "undo" || act.verb === "loosen" || act.verb === "back-out") {
      const ties = things.map((thing) => model.things[thing]!).filter((thing) => thing.is === "tie");
      const part = ties.filter((tie) => tie.count > 1 && at(after.out, tie.index) < tie.count && act.verb === "undo");
      for (const tie of part)
        add({
          at: act.at.end,
          says: `${at(after.out, tie.index)} of ${tie.count} out`,
          why: `${tie.name}, after this line`,
          is: "count",
        });
      const made = ties.find(
        (tie) =>
          tie.fastener && kindIn(fastenerKinds, tie.kind)?.turned && (tie.torques.length > 0 || tie.stages.length > 0),
      );
      if (
        act.verb === "undo" &&
        ties.length === 1 &&
        made &&
        at(after.out, made.index) >= made.count &&
        refit.some(({ op }) => op.things.includes(made.index))
      ) {
        add({
          at: act.at.end,
          says: `refit ${torqueText(made, units)}`,
          why: `${made.name}: the torque that its declaration gives`,
          is: "torque",
        });
      }
    }
  }
}

/** The other system's figure beside a torque. */
function otherSystem(file: SourceFile, from: number, to: number, units: Units, add: (hint: Hint) => void): void {
  const { tokens } = file.tree.scan;
  eachItem(file.tree.items, (item) => {
    for (const argument of item.arguments) {
      if (argument.slot !== "torque") continue;
      const first = tokens[argument.first]!,
        range = tokens[argument.first + 1]?.text === ".." ? tokens[argument.first + 2] : undefined,
        unit = tokens[argument.first + (range ? 3 : 1)];
      if (
        !unit ||
        first.startOffset < from ||
        first.startOffset > to ||
        tokens[argument.last]!.text === ")" ||
        findUnit(unit.image) === undefined
      )
        continue;
      const quantity = makeQuantity({
        first: first.image,
        second: range?.image,
        form: range ? "range" : "single",
        unit: unit.image,
      });
      if (isProblem(quantity)) continue;
      const own = systemOf(quantity);
      if (own)
        add({
          at: unit.endOffset! + 1,
          says: format(quantity, own === "metric" ? "us" : "metric", units.wording.tag),
          why: "In the other system of units",
          is: "unit",
        });
    }
  });
}
