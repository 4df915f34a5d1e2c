// Which torque wrench of the workshop's list a torque is set on.

import type { Library, Tool } from "../../model/model.ts";
import { wrenchFinding } from "../../figures/torque-wrench.ts";
import { si, type Quantity } from "../../quantities/index.ts";

/** The smallest that covers it well, else the smallest that covers it at all. Undefined where none does, or the list has none. */
export function wrenchFor({ tools }: Library, torque: Quantity): Tool | undefined {
  const wrenches = [...tools.values()]
      .filter((tool) => tool.kind === "torque-wrench" && tool.range)
      .sort((a, b) => si(a.range!).high - si(b.range!).high || (a.id < b.id ? -1 : 1)),
    { low, high } = si(torque);
  return (
    wrenches.find((tool) => [low, high].every((value) => !wrenchFinding(value, si(tool.range!)))) ??
    wrenches.find((tool) => low >= si(tool.range!).low && high <= si(tool.range!).high)
  );
}
