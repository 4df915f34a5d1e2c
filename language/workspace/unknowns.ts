// Figures that nobody gave, and what each would let the tool check. Never a finding: real manuals seldom print a mass or a thread.

import type { Model, Tie } from "../model/model.ts";
import { fastenerKinds, kindIn } from "../tables/index.ts";

/** One line for each kind of figure that is missing in a unit. */
export function unknownsOfModel(model: Model): string[] {
  const fasteners = model.ties.filter((tie) => tie.fastener && kindIn(fastenerKinds, tie.kind)?.turned === true),
    lines: string[] = [];
  const say = (what: string, gives: string, names: readonly string[]): void => {
    if (names.length === 0) return;
    const first = `${[...new Set(names)].slice(0, 12).join(", ")}${names.length > 12 ? " …" : ""}`;
    lines.push(`${model.title}: ${what} not given for ${names.length}: ${first}. It would let the tool check ${gives}`);
  };
  const names = (ties: readonly Tie[]): string[] => ties.map((tie) => tie.name);
  say(
    "mass",
    "lifts, hoists and what may fall",
    model.parts.filter((part) => part.mass === undefined).map((part) => part.name),
  );
  say("thread size", "the spanner, the torque and the length", names(fasteners.filter((tie) => !tie.size)));
  say(
    "strength class",
    "the torque against the yield of the thread",
    names(fasteners.filter((tie) => tie.size && tie.propertyClass === undefined && tie.grade === undefined)),
  );
  say(
    "torque",
    "the torque against thread and wrench",
    names(fasteners.filter((tie) => tie.torques.length === 0 && tie.stages.length === 0)),
  );
  // A charge is waited for by the longest of three times, two of which are reckoned from these.
  const charged = model.hazards.filter(
    ({ source, figures }) => source === "capacitor" || figures.has("capacitance") || figures.has("bleeder"),
  );
  for (const word of ["voltage", "capacitance", "bleeder"])
    say(
      word,
      "the wait for the charge",
      charged.filter(({ figures }) => !figures.has(word)).map(({ name }) => name),
    );
  return lines;
}
