// The bench at a place in a procedure: what is on, what is off and where it lies, position, precautions that stand, fluids, bolts left.

import type { BenchAnswer, BenchItem, BenchSection } from "../../shared/protocol.ts";
import type { Position } from "vscode-languageserver";
import { ASIDE, DRAINED, HELD, ON_BASE, at, left, lumpOf, type Checked, type Thing } from "../../language/index.ts";
import { locationOf, offsetOf } from "../places.ts";
import { momentAt } from "./completion.ts";

export function benchAt(checked: Checked, path: string, position: Position): BenchAnswer | null {
  const moment = momentAt(checked, path, offsetOf(checked, path, position));
  if (!moment) return null;
  const { performance: { model, procedure, strip }, state, act } = moment, flag = (thing: Thing, bit: number): boolean => (at(state.flags, thing.index) & bit) !== 0;
  const item = (thing: Thing, detail = ""): BenchItem => { const { uri, range } = locationOf(checked, thing.at); return { name: thing.name, detail, uri, line: range.start.line, character: range.start.character }; };
  const lies = new Map<number, string>();
  for (const one of strip.slice(0, act + 1)) if (one.act.into) for (const thing of one.things) lies.set(thing, `in ${one.act.into.kind === "container" ? "" : `${one.act.into.kind} `}${one.act.into.label}`);
  const on = model.parts.filter((part) => lumpOf(state, part.index) === ON_BASE), off = model.parts.filter((part) => lumpOf(state, part.index) !== ON_BASE);
  const sections: BenchSection[] = [
    { title: "Precautions that stand", items: model.hazards.flatMap((hazard) => { const kinds = hazard.precautions.filter((p) => at(state.standing, p.number) !== 0).map((p) => p.kind); return kinds.length > 0 ? [item(hazard, kinds.join(", "))] : []; }) },
    { title: "On the unit", items: on.map((part) => item(part, [flag(part, ASIDE) ? "aside" : "", flag(part, HELD) ? "held" : ""].filter((s) => s !== "").join(", "))) },
    { title: "Off", items: off.map((part) => item(part, lies.get(part.index) ?? "")) },
    { title: "Still in", items: model.ties.filter((tie) => !tie.passing && left(model, state, tie.index) > 0).map((tie) => item(tie, `${left(model, state, tie.index)} of ${tie.count}`)) },
    { title: "Fluids aboard", items: model.fluids.filter((fluid) => !flag(fluid, DRAINED)).map((fluid) => item(fluid)) },
  ];
  const unit = checked.units.find((one) => one.unit === model.unit);
  return { procedure: procedure.title, after: act < 0 ? "" : checked.texts.get(path)?.slice(strip[act]!.act.at.start, strip[act]!.act.at.end) ?? "", position: state.position, sections: sections.filter((s) => s.items.length > 0), notConsidered: unit?.notConsidered ?? [] };
}
