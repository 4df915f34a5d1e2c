// A hazard at the top of a file, which consumables bring with them.

import type { Declaration, Project } from "../names/project.ts";
import { cursorOf, linesIn, takeName, takeNames, takeString, wordOf, type Line } from "./cursor.ts";
import type { HazardType } from "./model.ts";

/** With what the type that it is like says, where it says nothing of that itself. */
export function readHazardType(
  project: Project,
  file: string,
  declaration: Declaration,
  asked: readonly string[] = [],
): HazardType {
  const { id, item } = declaration,
    source = project.files.get(declaration.file)!,
    lines = linesIn({ item, source });
  const named = first(lines, "like", (line) => takeName(cursorOf(line)))?.text;
  const other =
    named === undefined || named === id || asked.includes(named)
      ? undefined
      : project
          .seen(file)
          .get(named)
          ?.find(({ word }) => word === "hazard");
  const like = other && readHazardType(project, file, other, [...asked, id]);
  const word = (slot: string): string | undefined => {
    const argument = item.arguments.find((one) => one.slot === slot);
    return argument && source.tree.scan.tokens[argument.first]!.text;
  };
  const signal = word("kind:signal"),
    wear = lines.filter((line) => wordOf(line) === "wear").flatMap((line) => takeNames(cursorOf(line))),
    precautions = lines.filter((line) => wordOf(line) === "precaution").map(precautionOf);
  return {
    id,
    name: declaration.name || like?.name || id.replaceAll("-", " "),
    kind: word("kind:hazard") ?? like?.kind ?? "",
    signal:
      signal === "danger" || signal === "warning" || signal === "caution" || signal === "notice"
        ? signal
        : like?.signal,
    about: first(lines, "about", (line) => takeString(cursorOf(line))) ?? like?.about ?? "",
    wear: wear.length > 0 ? wear : (like?.wear ?? []),
    precautions: precautions.length > 0 ? precautions : (like?.precautions ?? []),
    at: declaration.at,
  };
}

function first<T>(lines: readonly Line[], word: string, take: (line: Line) => T | undefined): T | undefined {
  const line = lines.find((one) => wordOf(one) === word);
  return line && take(line);
}

/** Its kind and its own words. */
function precautionOf({ item, source }: Line): { kind: string; text: string } {
  const { tokens } = source.tree.scan,
    kind = item.arguments.find((one) => one.slot === "kind:precaution"),
    text = item.arguments.find((one) => one.slot === "string");
  const cursor = cursorOf({ item, source });
  if (text) cursor.at = text.first;
  return {
    kind: kind ? tokens[kind.first]!.text : "other",
    text: (text && takeString(cursor)) ?? "",
  };
}
