// The language of the built-in words on the command line: on every command that writes a paper, and a tag that nobody answers.

import { expect, test } from "vitest";
import { commandNames, loadCommand } from "../../language/cli/main.ts";
import { wordings } from "../../language/outputs/wording/languages.ts";
import { stripdown } from "../support/command-line.ts";

const project = process.cwd(),
  pump = "examples/dairy-pump";

const papers = [
  ["manual"],
  ["refit"],
  ["bill"],
  ["draw", "strip"],
  ["draw", "pattern"],
  ["draw", "path"],
  ["labels"],
  ["sheet", "torque"],
  ["sheet", "layout"],
];

test.each(papers)("%s %s is written in each language, and says which it is", async (...command) => {
  const made = new Set<string>();
  for (const tag of Object.keys(wordings)) {
    const { status, out, err } = await stripdown(project, [...command, pump, "--quiet", "--lang", tag.toUpperCase()]);
    expect([status, err]).toEqual([0, ""]);
    if (out.startsWith("<!DOCTYPE html>")) expect(out).toContain(`<html lang="${tag}">`);
    made.add(out);
  }
  expect(made.size).toBeGreaterThanOrEqual(4);
});

test("a language that is not there is answered with those that are", async () => {
  for (const command of papers) {
    const { status, out, err } = await stripdown(project, [...command, pump, "--lang", "tlh"]);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toBe(
      "stripdown: --lang tlh: there is no built-in wording in that language; there is en-GB (English (United Kingdom)), en-US (English (United States)), de (Deutsch), fr (Français), es (Español)\n",
    );
  }
});

test("every command that takes a file to write to takes a language", async () => {
  for (const name of commandNames) {
    const { options } = await loadCommand(name);
    if (options.some((option) => option.name === "system") && options.some((option) => option.name === "to"))
      expect(
        options.map((option) => option.name),
        name,
      ).toContain("lang");
  }
});
