// What a unit or a file says of many things at once: order statements, standing messages, temporary things.

import type { Project } from "../names/project.ts";
import type { Name } from "./act.ts";
import { accept, cursorOf, headSpan, takeLabel, takeName, takeNames, takeString, wordOf } from "./cursor.ts";
import type { Line } from "./cursor.ts";
import type { DeclaredThing } from "./declared-thing.ts";
import type { UnitDraft } from "./draft.ts";
import type { Message, Model, Statement } from "./model.ts";

export function readStatement(line: Line): Statement {
  const c = cursorOf(line),
    names = takeNames(c);
  let after: Name[] = [],
    before: Name[] = [],
    first = false,
    last = false;
  if (accept(c, "after")) after = takeNames(c);
  else if (accept(c, "before")) before = takeNames(c);
  else if (accept(c, "first")) first = true;
  else last = accept(c, "last");
  return { names, after, before, first, last, at: headSpan(line) };
}

/** A message on a kind, anywhere, or on a thing by name, in its own unit. */
export interface StandingMessage {
  readonly name: string;
  readonly prefix: string;
  readonly message: Message;
}

/** `warn SIGNAL "…" on KIND or THING`, at the top of a seen file and in the units: a kind anywhere, a name in its own unit. */
export function standingMessages(project: Project, file: string, units: readonly UnitDraft[]): StandingMessage[] {
  const found: StandingMessage[] = [];
  const read = (line: Line, prefix: string): void => {
    const c = cursorOf(line),
      signal = takeLabel(c),
      text = takeString(c) ?? "";
    accept(c, "on");
    if (signal !== "danger" && signal !== "warning" && signal !== "caution" && signal !== "notice") return;
    for (const name of takeNames(c))
      found.push({ name: name.text, prefix, message: { signal, text, at: headSpan(line) } });
  };
  for (const unit of units) for (const line of unit.lines) if (wordOf(line) === "warn") read(line, unit.prefix);
  for (const declaration of project.seen(file).get("") ?? [])
    if (declaration.word === "warn") read({ item: declaration.item, source: project.files.get(declaration.file)! }, "");
  return found;
}

export function temporariesOf(project: Project, file: string, units: readonly UnitDraft[]): Model["temporaries"] {
  const found: [string, { name: string; at: DeclaredThing["at"] }][] = [];
  for (const list of project.seen(file).values())
    for (const d of list) if (d.word === "temporary") found.push([d.id, { name: d.name, at: d.at }]);
  for (const unit of units)
    for (const line of unit.lines) {
      if (wordOf(line) !== "temporary") continue;
      const c = cursorOf(line),
        id = takeName(c);
      if (id)
        found.push([
          id.text,
          { name: takeString(c) ?? id.text, at: { file: line.source.path, start: id.start, end: id.end } },
        ]);
    }
  return new Map(found);
}
