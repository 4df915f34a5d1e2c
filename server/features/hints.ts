// Inlay hints, few: how many are out after an undo of some, and a torque in the other system.

import { InlayHintKind, type InlayHint, type Range } from "vscode-languageserver";
import { at, formatQuantity, type Checked } from "../../language/index.ts";
import { offsetOf, positionOf } from "../places.ts";

export function inlayHints(checked: Checked, path: string, range: Range): InlayHint[] {
  const start = offsetOf(checked, path, range.start), end = offsetOf(checked, path, range.end), hints = new Map<number, string>(), within = (offset: number): boolean => offset >= start && offset <= end;
  for (const { model, strip } of checked.performances) {
    for (const { act, things, after } of strip) {
      if (act.at.file !== path || act.verb !== "undo" || act.count === undefined || !within(act.at.end)) continue;
      const tie = model.things[things[0] ?? -1];
      if (tie?.is === "tie") hints.set(act.at.end, `${at(after.out, tie.index)} of ${tie.count} out`);
    }
    for (const tie of model.ties) for (const { value, at: place } of tie.torques) {
      if (!value || value.pair || place.file !== path || !within(place.end)) continue;
      const metric = formatQuantity(value, "metric"), us = formatQuantity(value, "us");
      hints.set(place.end, value.written === metric || value.unit.includes("N") ? us : metric);
    }
  }
  return [...hints].sort((a, b) => a[0] - b[0]).map(([offset, label]) => ({ position: positionOf(checked, path, offset), label, kind: InlayHintKind.Type, paddingLeft: true }));
}
