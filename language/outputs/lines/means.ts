// With what, and by how many: said under a line whose sentence has no place for it.

import type { Act } from "../../model/act.ts";
import { toolName, type LineContext } from "./context.ts";
import type { LineDraft } from "./draft.ts";
import type { Detail } from "./line.ts";

/** As words of its own, whatever case the sentence gave its first letter: "rig" is not in "upright". */
function holdsName(text: string, name: string): boolean {
  const where = text.toLowerCase(),
    what = name.toLowerCase(),
    isLetter = (sign: string | undefined): boolean => sign !== undefined && /[\p{L}\p{N}]/u.test(sign);
  for (let at = where.indexOf(what); at >= 0; at = where.indexOf(what, at + 1))
    if (!isLetter(where[at - 1]) && !isLetter(where[at + what.length])) return true;
  return false;
}

const sayPeople: ReadonlySet<string> = new Set(["remove", "lift", "fit"]);

/** What an author wrote of an act is never dropped: a tool or people that its sentence has no place for stand under it. */
export function withMeans(context: LineContext, act: Act, drafts: readonly LineDraft[]): readonly LineDraft[] {
  const isPeopleSaid = act.people === undefined || sayPeople.has(act.verb);
  if (act.tools.length === 0 && isPeopleSaid) return drafts;
  const { acts, lines } = context.wording,
    index = drafts.findIndex(({ is }) => is === "action"),
    first = drafts[index];
  if (first?.is !== "action") return drafts;
  const said = drafts.flatMap((draft) =>
    draft.is === "action" ? [draft.says, ...draft.details.map(({ says }) => says)] : [],
  );
  const more: Detail[] = [
    ...act.tools
      .map(({ text }) => toolName(context, text))
      .filter((tool) => !said.some((text) => holdsName(text, tool)))
      .map((tool) => ({ sort: "with" as const, says: lines.withTool(tool) })),
    ...(isPeopleSaid ? [] : [{ sort: "with" as const, says: acts.people(act.people!) }]),
  ];
  return more.length === 0 ? drafts : drafts.with(index, { ...first, details: [...first.details, ...more] });
}
