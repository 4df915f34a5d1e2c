// Procedures that do each other in a ring, or that each need the other first.

import { cursorOf, takeNames } from "../../model/cursor.ts";
import type { Declaration, Project } from "../../names/project.ts";
import { eachItem } from "../../syntax/index.ts";
import { check } from "../check.ts";
import { holdsWord } from "../items-of.ts";

export default check({
  code: "names/call-cycle",
  title: "Procedures that do each other in a ring",
  severity: "error",
  why: "A procedure that does itself never ends, and two that each need the other first can never be begun. To go back to a step there is repeat from.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure open "Open" for box {
      aim lid off
      step "Lid" {
        remove lid
        do look
    #      ^^^^ open does look does open: it would never end
      }
    }
    procedure look "Look" for box {
      step "Inside" { do open }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure open "Open" for box {
      aim lid off
      step "Lid" {
        remove lid
        do look
      }
    }
    procedure look "Look" for box {
      step "Inside" { inspect foot "No rust" }
    }
  `,
  file(file, say, { project }) {
    for (const word of ["do", "needs"] as const) {
      if (!holdsWord(file, word)) continue;
      for (const one of file.declarations) {
        if (one.word !== "procedure") continue;
        const ring = ringFrom(one, word, project);
        // The first of the ring speaks for it.
        if (!ring || ring.some(({ to }) => isBefore(to, one))) continue;
        const names = [one.id, ...ring.map(({ to }) => to.id)];
        say({
          at: ring[0]!.at,
          says:
            word === "do"
              ? `${names.join(" does ")}: it would never end`
              : `${names.join(" needs ")}: ${ring.length === 1 ? "it can never" : "none of them can ever"} be begun`,
          because: ring
            .slice(1)
            .map(({ to, at }) => ({ says: `${word === "do" ? "does" : "needs"} ${to.id} here`, at })),
        });
      }
    }
  },
});

interface Call {
  readonly to: Declaration;
  readonly at: { readonly file: string; readonly start: number; readonly end: number };
}

const isBefore = (a: Declaration, b: Declaration): boolean =>
  a.file === b.file ? a.at.start < b.at.start : a.file < b.file;

/** The shortest way from a procedure back to itself. */
function ringFrom(start: Declaration, word: "do" | "needs", project: Project): readonly Call[] | undefined {
  const queue: { readonly of: Declaration; readonly path: readonly Call[] }[] = [{ of: start, path: [] }],
    seen = new Set<Declaration["item"]>();
  for (const { of, path } of queue)
    for (const call of callsOf(of, word, project)) {
      if (call.to.item === start.item) return [...path, call];
      if (seen.has(call.to.item)) continue;
      seen.add(call.to.item);
      queue.push({ of: call.to, path: [...path, call] });
    }
  return undefined;
}

function callsOf(of: Declaration, word: "do" | "needs", project: Project): Call[] {
  const source = project.files.get(of.file),
    calls: Call[] = [];
  if (!source) return calls;
  eachItem(of.item.block?.items ?? [], (item) => {
    if (item.entry?.word !== word) return;
    const c = cursorOf({ item, source });
    for (const { text, start, end } of takeNames(c))
      for (const to of project.seen(of.file).get(text) ?? [])
        if (to.word === "procedure") calls.push({ to, at: { file: of.file, start, end } });
  });
  return calls;
}
