// Which torque wrench of the workshop's list a torque is set on.

import type { Library, Tool } from "../../model/model.ts";
import { wrenchFinding } from "../../figures/torque-wrench.ts";
import { si, type Quantity } from "../../quantities/index.ts";

/** The smallest that covers it well, else the smallest that covers it at all. Undefined where none does, or the list has none. */
export function wrenchFor(wrenches: readonly Wrench[], torque: Quantity): Tool | undefined {
  const { low, high } = si(torque);
  return (
    wrenches.find(({ range }) => !wrenchFinding(low, range) && !wrenchFinding(high, range)) ??
    wrenches.find(({ range }) => low >= range.low && high <= range.high)
  )?.tool;
}

/** A torque wrench with its range in N·m. */
export interface Wrench {
  readonly tool: Tool;
  readonly range: ReturnType<typeof si>;
}

/** Those of the list that say a range, the smallest first. */
export const wrenchesIn = ({ tools }: Library): readonly Wrench[] =>
  [...tools.values()]
    .flatMap((tool) => (tool.kind === "torque-wrench" && tool.range ? [{ tool, range: si(tool.range) }] : []))
    .sort((a, b) => a.range.high - b.range.high || (a.tool.id < b.tool.id ? -1 : 1));
