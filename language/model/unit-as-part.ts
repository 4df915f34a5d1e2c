// A part that is a unit of its own: what that unit says of itself, and of the base that the part is, is said of the part, unless it says
// so itself.

import type { Quantity } from "../quantities/index.ts";
import { firstOf, takeOf, wordOf, type Cursor } from "./cursor.ts";
import { linesOf } from "./declared-thing.ts";
import type { Draft, UnitDraft } from "./draft.ts";
import type { Part } from "./model.ts";

const takeMass = takeOf("mass"),
  takeVoltage = takeOf("voltage");

export interface SaidInside {
  readonly mass: Quantity | undefined;
  readonly massFrom: Part["massFrom"];
  readonly supply: Quantity | undefined;
}
const nothing: SaidInside = { mass: undefined, massFrom: "base", supply: undefined };

export function saidInside(units: readonly UnitDraft[], part: Draft): SaidInside {
  const unit = units.find(({ host }) => host === part);
  if (!unit) return nothing;
  const { base, lines } = unit,
    ofBase = <T>(word: string, take: (c: Cursor) => T | undefined): T | undefined =>
      base && firstOf(linesOf(base, word, ""), take);
  const whole = firstOf(
    lines.filter((line) => wordOf(line) === "mass"),
    takeMass,
  );
  return {
    mass: whole ?? ofBase("mass", takeMass),
    massFrom: whole === undefined ? "base" : "unit",
    supply: ofBase("supply", takeVoltage),
  };
}
