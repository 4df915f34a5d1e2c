// The facts of a hazard and its precautions that need no other thing.

import type { Quantity } from "../quantities/index.ts";
import type { Name } from "./act.ts";
import type { Precaution } from "./model.ts";
import {
  accept,
  cursorOf,
  headSpan,
  isNumber,
  isString,
  peek,
  takeLabel,
  takeName,
  takeNames,
  takeOf,
  takeQuantity,
  takeString,
  type Line,
} from "./cursor.ts";

export interface PrecautionFacts extends Omit<Precaution, "number" | "hazard" | "behind"> {
  readonly behindNames: readonly Name[];
}

/** Its parts stand in any order behind the kind. */
export function readPrecaution(line: Line): PrecautionFacts {
  const c = cursorOf(line),
    kind = takeLabel(c) ?? "";
  let text = "",
    back = "",
    wait: Quantity | undefined,
    limits: Precaution["limits"],
    behindNames: readonly Name[] = [];
  const tools: Name[] = [];
  while (c.at < c.stop) {
    if (isString(peek(c))) {
      const said = takeString(c)!;
      text = text === "" ? said : `${text} ${said}`;
      continue;
    }
    if (isNumber(peek(c))) {
      const value = takeQuantity(c);
      if (value) limits = { ...limits, value };
      else c.at++;
      continue;
    }
    if (accept(c, "behind")) behindNames = takeNames(c);
    else if (accept(c, "wait")) wait = takeOf("time")(c);
    else if (accept(c, "with")) {
      const tool = takeName(c);
      if (tool) tools.push(tool);
    } else if (accept(c, "back")) back = takeString(c) ?? "";
    else if (accept(c, "at")) {
      const which = accept(c, "least") ? "atLeast" : accept(c, "most") ? "atMost" : "value",
        value = takeQuantity(c);
      if (value) limits = { ...limits, [which]: value };
    } else c.at++;
  }
  return { kind, text, wait, tools, limits, back, at: headSpan(line), behindNames };
}

/** Words of a hazard that hold a figure, with its dimension. */
export const hazardFigures = [
  ["voltage", "voltage"],
  ["capacitance", "capacitance"],
  ["bleeder", "resistance"],
  ["force", "force"],
  ["pressure", "pressure"],
  ["temperature", "temperature"],
  ["mass", "mass"],
  ["flux", "flux"],
  ["keep-out", "length"],
] as const;
