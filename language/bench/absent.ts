// What an act names and what is not there in this build, though the unit declares it for others.

import { writtenCondition } from "../model/conditions.ts";
import type { Act } from "../model/act.ts";
import type { Absence } from "../model/model.ts";
import { joins, reasonOf, report, resolveName, type Bench } from "./bench.ts";
import type { Around, Problem, Reason } from "./trace.ts";

/** A line about it would do nothing, silently: said once for each line, unless the author wrote a condition that keeps it out of here. */
export function judgeAbsent(bench: Bench, act: Act, around: Around): boolean {
  const { absent } = bench.model;
  if (absent.size === 0) return false;
  const missing: { readonly of: Absence; readonly text: string }[] = [];
  for (const { text } of [...act.names, ...act.on]) {
    const of = absenceOf(absent, around.prefix, text);
    if (of && resolveName(bench, text, around).length === 0) missing.push({ of, text });
  }
  if (missing.length === 0) return false;
  const reasons = missing.map(({ of }) =>
    reasonOf("sequence/not-in-build", { words: [of.name, writtenCondition(of.condition)], at: of.at }),
  );
  // Said once for each line, and lines of one step about things of one condition lack one line: that condition, or the right one.
  const told = bench.problems.filter((one) => one.reasons[0]?.rule === "sequence/not-in-build"),
    isTold = ({ words, at }: Reason): boolean =>
      told.some((one) => one.reasons.some((had) => had.words[0] === words[0] && had.at?.start === at?.start)),
    sameLack = (list: readonly Reason[]): boolean => list.every(({ words }) => words[1] === reasons[0]!.words[1]);
  const step = (one: Problem): boolean =>
    told.includes(one) && one.phase === bench.phase && one.around?.step === around.step && sameLack(one.reasons);
  const isSaid = told.some(({ at }) => at.start === act.at.start && at.file === act.at.file);
  if (
    !isSaid &&
    !(
      sameLack(reasons) &&
      joins(
        bench,
        reasons.filter((one) => !isTold(one)),
        step,
      )
    )
  )
    report(bench, act.at, [], reasons, act, around);
  return true;
}

/** Of a thing here, or inside a part that the name goes through: `gearbox.heater`, `gearbox.left.heater`. */
function absenceOf(absent: Bench["model"]["absent"], prefix: string, text: string): Absence | undefined {
  const names = text.split(".");
  for (let k = 0; k < names.length; k++) {
    const through = names.slice(0, k),
      homes = [through.join("."), through.join("/")].map((path) => (path === "" ? prefix : `${prefix}${path}/`));
    for (const home of homes) {
      const found = absent.get(home)?.get(names[k]!);
      if (found) return found;
    }
  }
  return undefined;
}
