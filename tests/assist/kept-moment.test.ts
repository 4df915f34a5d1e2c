// The bench of an older check, taken where the text in front of a place says the same: never another bench than a check of the new text
// finds there.

import { readFileSync, readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { checkProject, keptMoment, loadProject, momentAt, performTexts, newMemo } from "../../language/index.ts";
import { memoryWorld } from "../support/memory-world.ts";
import { numbers } from "../support/numbers.ts";

const roots = (files: ReadonlyMap<string, string>): string[] =>
  [...files.keys()].filter((path) => !path.startsWith("/workshop"));
const checked = (files: ReadonlyMap<string, string>): ReturnType<typeof checkProject> =>
  checkProject(memoryWorld(files), roots(files));
const one = (text: string): ReadonlyMap<string, string> => new Map([["/a.strip", text]]);
const rig = (body: string): string =>
  `unit rig "Rig" {\n  base frame\n  part frame "Frame"\n  part lid "Lid"\n  fastener s bolt "Bolts" { count 4  joins lid to frame }\n}\nprocedure strip "Strip" for rig {\n  aim lid off\n  step "Off" {\n${body}  }\n}\n`;

/** What an older check of `before` keeps for the place in front of `what` in `after`, with what a check of `after` says. */
function kept(
  before: string,
  after: string,
  what: string,
): {
  kept: ReturnType<typeof keptMoment>;
  fresh: ReturnType<typeof momentAt>;
} {
  const older = checked(one(before)),
    now = checked(one(after)),
    at = after.indexOf(what) - 1;
  return {
    kept: keptMoment(older, now.project, now.project.files.get("/a.strip")!, at),
    fresh: momentAt(now, "/a.strip", at),
  };
}

test("blanks, empty lines and comments in front of a place change nothing on the bench", () => {
  const plain = rig("    undo s\n    remove lid\n");
  for (const other of [
    rig("      undo s\n    remove lid\n"),
    rig("    # the cover first\n    undo s\n\n    remove lid\n"),
    rig("    undo s # all four\n    remove lid\n"),
    plain.replace("  part lid", "\n  part lid"),
  ]) {
    const it = kept(plain, other, "remove lid");
    expect(it.kept?.state).toEqual(it.fresh!.state);
    expect(it.kept?.done?.act.verb).toBe("undo");
  }
});

test("a place that stands close behind a brace is that before the line", () => {
  const plain = rig("").replace("{\n  }", "{undo s  remove lid}"),
    it = kept(plain, plain.replace("  part lid", "   part lid"), "undo s");
  expect(it.kept?.state).toEqual(it.fresh!.state);
  expect(it.kept?.done).toBeUndefined();
});

test("what says something else is not taken: another word, a line fewer, a mistake of form", () => {
  const plain = rig("    undo s\n    remove lid\n");
  for (const other of [
    plain.replace("undo s", "undo 2 of s"),
    plain.replace("undo s\n", "undo s of\n"),
    plain.replace("count 4", "count  5"),
    plain.replace('"Off" {', '"Off" {{'),
    plain.replace("    undo s\n", "    # undo s\n"),
  ])
    expect(kept(plain, other, "remove lid").kept, other).toBeUndefined();
});

test(
  "120 edits of the mooring winch in front of a line: kept or not, it is the bench that a check of the new text finds",
  { timeout: 60_000 },
  () => {
    const root = new URL("../../examples/", import.meta.url),
      files: ReadonlyMap<string, string> = new Map(
        ["mooring-winch", "workshop"].flatMap((folder) =>
          readdirSync(new URL(`${folder}/`, root))
            .filter((name) => name.endsWith(".strip"))
            .map((name) => [`/${folder}/${name}`, readFileSync(new URL(`${folder}/${name}`, root), "utf8")] as const),
        ),
      );
    const older = checked(files),
      memo = newMemo(),
      random = numbers(41),
      acts = older.performances.flatMap(({ strip }) => strip).filter(({ act }) => act.at.end > act.at.start);
    let taken = 0;
    for (let i = 0; i < 120; i++) {
      const { act } = acts[random(acts.length)]!,
        path = act.at.file,
        text = files.get(path)!,
        back = text.lastIndexOf("\n", Math.max(0, act.at.start - 1 - random(400))) + 1;
      const put = ["  ", "\n", "# said again\n", "    ", "wait 5 min\n", "}\n", '"'][random(7)]!,
        out = random(5) === 0 ? text.indexOf("\n", back) + 1 - back : 0,
        edited = text.slice(0, back) + put + text.slice(back + out),
        at = act.at.start + put.length - out - 1;
      if (at < back + put.length) continue;
      const edits = new Map(files).set(path, edited),
        project = loadProject(memoryWorld(edits), roots(edits), memo.trees),
        moment = keptMoment(older, project, project.files.get(path)!, at);
      if (!moment) continue;
      taken++;
      const now = performTexts(project, memo);
      expect(moment.state, `${put} at ${back}`).toEqual(momentAt(now, path, at)!.state);
    }
    expect(taken).toBeGreaterThan(30);
  },
);
