// The tour, step by step: the text so far in a folder of its own, the commands that the page shows, and the answers that it prints.

import { existsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { folderWith, stripdown } from "../support/command-line.ts";
import { read } from "./fences.ts";

interface Session {
  readonly command: string;
  readonly answer: readonly string[];
}

type Block = { readonly is: "text"; readonly text: string } | ({ readonly is: "session" } & Session);

/** Texts and sessions of the page, in order. */
function blocks(): Block[] {
  return [...read("language/reference/tour.md").matchAll(/```(strip|console)\n([\s\S]*?)```/g)].map(
    ([, kind, body = ""]): Block => {
      if (kind === "strip") return { is: "text", text: body };
      const [first = "", ...answer] = body.trimEnd().split("\n");
      return { is: "session", command: first.replace(/^\$ stripdown /, ""), answer };
    },
  );
}

/** The answer as the page shows it, with `…` where it leaves lines out. */
function shown(answer: readonly string[], page: readonly string[]): readonly string[] {
  if (page[0] === "…") {
    const from = answer.indexOf(page[1] ?? "");
    return ["…", ...(from < 0 ? answer : answer.slice(from))];
  }
  return answer;
}

test("every step of the tour answers as its page says", async () => {
  const folder = folderWith({}),
    path = join(folder, "mixer.strip");
  let sessions = 0;
  for (const block of blocks()) {
    if (block.is === "text") {
      writeFileSync(path, block.text);
      continue;
    }
    sessions++;
    const { out, err } = await stripdown(folder, block.command.split(" "));
    expect(shown(`${out}${err}`.trimEnd().split("\n"), block.answer), block.command).toEqual(
      block.answer.length === 0 ? [""] : block.answer,
    );
  }
  expect(sessions).toBe(11);
  expect(existsSync(join(folder, "mixer.html"))).toBe(true);
});

test("the last text of the tour is without findings that ask for an answer, the ones before each ask for something", async () => {
  const texts = blocks().filter((block) => block.is === "text"),
    status: number[] = [];
  for (const { text } of texts)
    status.push((await stripdown(folderWith({ "mixer.strip": text }), ["check", "mixer.strip", "--strict"])).status);
  expect(status).toEqual([...texts.slice(1).map(() => 1), 0]);
});
