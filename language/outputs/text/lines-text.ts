// Printed lines as plain text: number, sentence, details under it.

import type { Line, LineGroup } from "../lines/line.ts";
import type { Wording } from "../wording/wording.ts";
import { shownOnOneLine } from "./shown.ts";
import { wrap } from "./wrap.ts";

export function linesText(groups: readonly LineGroup[], wording: Wording): string[] {
  const out: string[] = [];
  for (const group of groups) {
    out.push("", ...wrap(shownOnOneLine(`${group.number}  ${group.title}`), "", "   "));
    for (const line of group.lines) out.push(...lineText(line, wording));
  }
  return out;
}

function lineText(line: Line, wording: Wording): string[] {
  const indent = "         ", lead = `  ${line.id}`.padEnd(9) + (line.id.length > 6 ? " " : "");
  const given = line.given.length > 0 ? `(${line.given.map(shownOnOneLine).join(", ")}) ` : "";
  switch (line.is) {
    case "message": return wrap(shownOnOneLine(`${given}${wording.kinds.signal(line.signal)}: ${line.text}`), lead, indent);
    case "note": return wrap(shownOnOneLine(given + line.says), lead, indent);
    case "photo": return wrap(shownOnOneLine(`${given}${wording.document.picture(line.alt || line.file)}`), lead, indent);
    case "video": return wrap(shownOnOneLine(`${given}${line.says}`), lead, indent);
    case "action": return [
      ...wrap(shownOnOneLine([given + line.says, line.text].filter(Boolean).join(" ")), lead, indent),
      ...line.details.flatMap((detail) => wrap(shownOnOneLine(detail.says), `${indent}- `, `${indent}  `)),
    ];
  }
}
