// The facts of a part that need no other thing: what it fits, what it lies between, how it is lifted.

import type { Name } from "./act.ts";
import { accept, cursorOf, takeLabel, takeName, takeNames, takeNumber, type Line } from "./cursor.ts";

export function readFits(line: Line): { hosts: string[]; by: string | undefined } {
  const c = cursorOf(line),
    hosts = takeNames(c).map((n) => n.text);
  return { hosts, by: accept(c, "by") ? takeLabel(c) : undefined };
}
/** The names on both sides, each of one thing or, left out, of none. */
export function readBetween(line: Line): [string[], string[]] {
  const c = cursorOf(line),
    side = (): string[] => {
      const name = takeName(c);
      return name ? [name.text] : [];
    };
  const first = side();
  accept(c, "and");
  return [first, side()];
}
export function readLift(line: Line): { people: number | undefined; tools: readonly Name[] } {
  const c = cursorOf(line),
    tools: Name[] = [];
  let people: number | undefined;
  while (c.at < c.stop) {
    if (accept(c, "by")) {
      people = takeNumber(c);
      accept(c, "people");
    } else if (accept(c, "with")) {
      const tool = takeName(c);
      if (tool) tools.push(tool);
    } else c.at++;
  }
  return { people, tools };
}
