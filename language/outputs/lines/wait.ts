// The wait of a precaution as it is printed: the longest of the author's and the computed ones, by the figures' function.

import { requiredWait, type RequiredWait, type WaitQuestion } from "../../figures/required-wait.ts";
import type { Hazard, Precaution } from "../../model/model.ts";
import { findUnit, si } from "../../quantities/index.ts";

/** A wait is due with the precaution that states one, and with the discharge of a stored charge. Undefined where there is none. */
export function waitOf(hazard: Hazard, precaution: Precaution): RequiredWait | undefined {
  const makerWait = precaution.wait ? si(precaution.wait).high : undefined;
  if (makerWait === undefined && !isWhereItWaits(hazard, precaution)) return undefined;
  const figure = (word: string): number | undefined => { const given = hazard.figures.get(word); return given ? si(given).high : undefined; };
  const voltage = hazard.figures.get("voltage"), kind = voltage ? findUnit(voltage.unit)?.kind : undefined;
  const stored = isWhereItWaits(hazard, precaution) ? { voltage: figure("voltage"), capacitance: figure("capacitance"), bleeder: figure("bleeder"),
    kind: kind === "ac" || kind === "dc" ? kind : undefined } : {};
  const question: Record<string, unknown> = {};
  for (const [name, value] of Object.entries({ makerWait, ...stored })) if (value !== undefined) question[name] = value;
  const wait = requiredWait(question as WaitQuestion);
  return wait.seconds === undefined ? undefined : wait;
}

/** The charge is waited for at its discharge; where there is none, at the last precaution that is no proof and states a wait or comes before the proof. */
function isWhereItWaits(hazard: Hazard, precaution: Precaution): boolean {
  if (hazard.kind !== "electrical") return false;
  const place = hazard.precautions.find((each) => each.kind === "discharge") ?? hazard.precautions.find((each) => each.wait) ?? hazard.precautions.find((each) => each.kind === "prove-dead");
  return place === precaution;
}
