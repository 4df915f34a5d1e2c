// Printed lines as plain text: number, sentence, details under it.

import { hazardFacts, hazardHead, mustStand } from "../lines/hazard-facts.ts";
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
  const indent = "         ",
    lead = line.is === "action" ? `  ${line.id}`.padEnd(9) + (line.id.length > 6 ? " " : "") : "   ".padEnd(9);
  const given = line.given.length > 0 ? `(${line.given.map(shownOnOneLine).join(", ")}) ` : "";
  switch (line.is) {
    case "message":
      return wrap(
        shownOnOneLine(
          given +
            wording.document.titled(
              wording.kinds.signal(line.signal),
              [line.on && wording.document.on(line.on), line.text].filter(Boolean).join(" "),
            ),
        ),
        lead,
        indent,
      );
    case "hazard":
      return [
        ...wrap(shownOnOneLine(given + hazardHead(line.hazard, wording)), lead, indent),
        ...[
          ...hazardFacts(line.hazard, wording),
          ...(line.half === "strip" ? [] : mustStand(line.hazard, wording)),
        ].flatMap((fact) => wrap(shownOnOneLine(fact), `${indent}- `, `${indent}  `)),
      ];
    case "note":
      return wrap(shownOnOneLine(given + line.says), lead, indent);
    case "photo":
      return wrap(shownOnOneLine(`${given}${wording.document.picture(line.alt || line.file)}`), lead, indent);
    case "video":
      return wrap(shownOnOneLine(`${given}${line.says}`), lead, indent);
    case "action":
      return [
        ...wrap(shownOnOneLine([given + line.says, line.text].filter(Boolean).join(" ")), lead, indent),
        ...line.details.flatMap((detail) => wrap(shownOnOneLine(detail.says), `${indent}- `, `${indent}  `)),
      ];
  }
}
