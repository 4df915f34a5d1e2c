// What a disk may hold: folders, globs, links in a circle, files that are no text. A clear word for each, never a trace, never a hang.

import { chmodSync, lstatSync, mkdirSync, readFileSync, symlinkSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { findFiles } from "../../language/cli/files.ts";
import { folderWith, stripdown } from "../support/command-line.ts";
import { good, held } from "./machines.ts";

const rename = (text: string, id: string): string =>
  text.replaceAll("box", id).replaceAll("procedure strip", `procedure ${id}-strip`);

test("files, folders and globs give the same result in any order, each file once", async () => {
  const folder = folderWith({
    "a.strip": held,
    "sub/b.strip": rename(held, "case"),
    "sub/deep/c.strip": rename(good, "rack"),
    "sub/readme.txt": "no procedure",
    "node_modules/x.strip": "nonsense",
  });
  const whole = await stripdown(folder, ["check"]);
  expect(whole.out.match(/still-held/g)).toHaveLength(2);
  expect(whole.out).toContain("3 procedures performed, 3 files read");
  for (const given of [
    ["."],
    ["sub", "a.strip"],
    ["a.strip", "sub/deep", "sub", "a.strip"],
    ["**/*.strip"],
    ["a.strip", "sub/**/*.strip"],
  ])
    expect((await stripdown(folder, ["check", ...given])).out).toBe(whole.out);
  expect(findFiles(["sub"], folder).map((path) => path.slice(folder.length))).toEqual([
    "/sub/b.strip",
    "/sub/deep/c.strip",
  ]);
});

test("standard input is checked under a name of its own", async () => {
  const { status, out } = await stripdown(folderWith({}), ["check", "-"], held);
  expect(status).toBe(1);
  expect(out).toContain("standard-input.strip:11:5: error");
});

test.each<[string, string | Uint8Array, RegExp]>([
  ["a byte order mark", `\ufeff${good}`, /nothing found/],
  ["CRLF line ends", good.replaceAll("\n", "\r\n"), /nothing found/],
  ["tabs", good.replaceAll("  ", "\t"), /nothing found/],
  ["UTF-16 with its mark", Buffer.from(`\ufeff${good}`, "utf16le"), /nothing found/],
])("%s is read", async (_, content, says) => {
  const { status, out } = await stripdown(folderWith({ "a.strip": content }), ["check", "a.strip"]);
  expect(out).toMatch(says);
  expect(status).toBe(0);
});

test.each<[string, Uint8Array, RegExp]>([
  [
    "a binary file",
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 1]),
    /a\.strip: error cannot be read: it is no text file/,
  ],
  ["a NUL byte in a text", Buffer.from(`${good}\0`), /cannot be read: it is no text file/],
  ["bytes that are no UTF-8", Buffer.from([0x70, 0xe4, 0x72, 0x74]), /cannot be read: it is no UTF-8 text/],
])("%s is refused in words", async (_, content, says) => {
  const { status, out, err } = await stripdown(folderWith({ "a.strip": content }), ["check", "a.strip"]);
  expect([status, err]).toEqual([2, ""]);
  expect(out).toMatch(says);
});

test("50 MB are refused before they are read", async () => {
  const folder = folderWith({ "a.strip": "" });
  truncateSync(join(folder, "a.strip"), 50 * 1024 * 1024);
  const { status, out } = await stripdown(folder, ["check", "a.strip"]);
  expect([status, /too large \(50 MB, at most 20 MB are read\)/.test(out)]).toEqual([2, true]);
});

test("a missing file is named, the others are still checked", async () => {
  const { status, out } = await stripdown(folderWith({ "held.strip": held }), [
    "check",
    "held.strip",
    "gone.strip",
    "none/*.strip",
  ]);
  expect(status).toBe(2);
  expect(out).toContain("gone.strip: error cannot be read: there is no such file");
  expect(out).toContain("none/*.strip: error cannot be read: no file matches this pattern");
  expect(out).toContain("still-held");
});

test("only an argument is a pattern: a name in brackets that a file uses, or that a folder has, is meant as it stands", async () => {
  const use = (name: string): string => `use "${name}"\n${held}`;
  const { out } = await stripdown(folderWith({ "held.strip": use("a[1].strip") }), ["check", "held.strip"]);
  expect(out).toContain(
    'error "a[1].strip" cannot be used: there is no such file, seen from the folder of this one: mend the name, or put it there',
  );
  expect(out).not.toContain("pattern");
  const several = await stripdown(folderWith({ "held.strip": use("parts/*.strip") }), ["check", "held.strip"]);
  expect(several.out).toContain(
    "there is no such file, seen from the folder of this one: name each file in a line of its own",
  );
  // A file of that very name is read, and its own folder is the one whose settings hold.
  const folder = folderWith({
    "rev[2]/held.strip": use("a[1].strip"),
    "rev[2]/a[1].strip": 'tool mallet "Mallet"\n',
    "rev[2]/stripdown.json": '{ "severity": { "sequence/still-held": "warning" } }',
  });
  for (const [from, given] of [
    [folder, "rev[2]/held.strip"],
    [join(folder, "rev[2]"), "held.strip"],
  ] as const) {
    const { status, out: said } = await stripdown(from, ["check", given]);
    expect([status, /warning .*still held/.test(said), /cannot be (?:used|read)/.test(said)], given).toEqual([
      1,
      true,
      false,
    ]);
  }
  // Without settings in such a folder nothing is amiss with them.
  const plain = folderWith({ "rev[2]/held.strip": held });
  expect((await stripdown(plain, ["check", "rev[2]/held.strip"])).status).toBe(1);
  const formatted = await stripdown(folderWith({ "held.strip": held }), ["format", "x[1].strip"]);
  expect(formatted.err).toContain("no file matches this pattern");
});

test("a folder named like a file, and a folder without procedures", async () => {
  const folder = folderWith({ "sub/x.txt": "" });
  mkdirSync(join(folder, "a.strip"));
  expect((await stripdown(folder, ["check", "sub"])).err).toBe(
    "stripdown: sub: there is no .strip file in this folder\n",
  );
  expect((await stripdown(folder, ["check", "a.strip/b.strip"])).status).toBe(2);
});

test.each([
  ["an empty file", ""],
  ["blanks alone", " \n\n"],
  ["a byte order mark alone", "\ufeff"],
  ["comments alone", "# later\n"],
])("%s is told", async (_, content) => {
  const { status, out } = await stripdown(folderWith({ "a.strip": content }), ["check", "a.strip", "--quiet"]);
  expect(out).toMatch(/^a\.strip:1:1: warning Nothing stands in this file {2}syntax\/empty/);
  expect(status).toBe(1);
});

test("where a file could not be read, the summary does not say that nothing is found", async () => {
  const folder = folderWith({ "a.strip": Buffer.from([0, 1, 2]), "b.strip": good });
  const alone = await stripdown(folder, ["check", "a.strip"]);
  expect(alone.out).toContain("0 files read, 1 that could not be read\n");
  expect(alone.out).not.toContain("nothing found");
  expect((await stripdown(folder, ["check"])).out).toContain("1 file read, 1 that could not be read: nothing found");
});

test("a link out of the project that lies in a folder is neither read nor laid out anew", async () => {
  const folder = folderWith({
    "secret/notes.strip": "part   oops",
    "shop/stripdown.json": "{}",
    "shop/a.strip": good,
  });
  symlinkSync("../secret/notes.strip", join(folder, "shop", "linked.strip"));
  for (const argv of [
    ["check"],
    ["check", "linked.strip"],
    ["format", "--check"],
    ["format"],
    ["manual"],
    ["export"],
  ]) {
    const { status, out, err } = await stripdown(join(folder, "shop"), argv);
    expect(out + err).not.toContain("oops");
    expect(out + err).toContain("its link leads out of the project");
    expect(status).toBe(2);
  }
  expect(readFileSync(join(folder, "secret", "notes.strip"), "utf8")).toBe("part   oops");
});

test("a link inside the project is followed, and stays a link when its file is laid out anew", async () => {
  const folder = folderWith({ "stripdown.json": "{}", "parts/lib.strip": 'role   fitter "Fitter"\n' });
  mkdirSync(join(folder, "shop"));
  symlinkSync("../parts/lib.strip", join(folder, "shop", "lib.strip"));
  expect((await stripdown(folder, ["format", "shop/lib.strip"])).status).toBe(0);
  expect(lstatSync(join(folder, "shop", "lib.strip")).isSymbolicLink()).toBe(true);
  expect(readFileSync(join(folder, "parts", "lib.strip"), "utf8")).toBe('role fitter "Fitter"\n');
});

test("format says of a text that is too large that it is left as it is", async () => {
  const { err } = await stripdown(folderWith({}), ["format", "-"], "# x\n".repeat(2_100_000));
  expect(err).toBe("standard input: left as it is, it is too large\n");
});

test("links in a circle end", async () => {
  const folder = folderWith({ "sub/a.strip": good });
  symlinkSync("..", join(folder, "sub", "up"));
  symlinkSync("round.strip", join(folder, "round.strip"));
  const whole = await stripdown(folder, ["check", "sub"]);
  expect(whole.out).toContain("1 procedure performed");
  expect(await stripdown(folder, ["check", "round.strip"])).toMatchObject({ status: 2, err: "" });
  expect((await stripdown(folder, ["check", "round.strip"])).out).toMatch(
    /round\.strip: error cannot be read: (?:its link leads in a circle|there is no such file)/,
  );
});

test("nothing outside the project is read, by a path or by a link", async () => {
  const folder = folderWith({
    "secret/lib.strip": 'part oops "Oops"',
    "shop/stripdown.json": "{}",
    "shop/a.strip": `use "../secret/lib.strip"\n${good}`,
    "shop/b.strip": `use "linked.strip"\n${rename(good, "case")}`,
  });
  symlinkSync("../secret/lib.strip", join(folder, "shop", "linked.strip"));
  for (const file of ["a.strip", "b.strip"]) {
    const { out } = await stripdown(join(folder, "shop"), ["check", file]);
    expect(out).not.toContain("secret/lib.strip:");
    expect(out).toContain("1 file read");
  }
});

test("settings that cannot be read end the run; those that loosen a hazard are a finding", async () => {
  const folder = folderWith({ "stripdown.json": "{ severity: 1 }", "a.strip": good });
  expect((await stripdown(folder, ["check"])).err).toMatch(/^stripdown: .*stripdown\.json: it is no JSON/);
  writeFileSync(join(folder, "stripdown.json"), '{ "severity": { "hazard/not-yet": "hint" } }');
  const { status, out } = await stripdown(folder, ["check"]);
  expect(status).toBe(1);
  expect(out).toMatch(
    /^stripdown\.json:1:17: warning hazard\/not-yet stays an error: it cannot be made milder {2}settings\/only-stricter/m,
  );
  writeFileSync(join(folder, "stripdown.json"), '{ "sverity": {} }');
  expect((await stripdown(folder, ["check"])).status).toBe(2);
});

test.each([
  ["", "it is no JSON: it ends too early"],
  [
    '{\n  "system": "us",\n}',
    "it is no JSON in line 3: look for a missing or doubled comma, quote or bracket, or a comment",
  ],
  ["[]", "a group in braces is due, and a list stands there"],
  ['{ "system": "imperial" }', 'system: one of metric, us is due, and "imperial" stands there'],
  ['{ "severity": [] }', "severity: a group in braces is due, and a list stands there"],
  [
    '{ "severity": { "sequence/blocked": "fatal" } }',
    'severity.sequence/blocked: one of error, warning, question, hint, off is due, and "fatal" stands there',
  ],
  ['{ "severity": { "blocked": "hint" } }', "severity.blocked: a code such as sequence/blocked is due as its name"],
  [
    '{ "assumptions": { "yield-share": null } }',
    "assumptions.yield-share: a number or a text in quotes is due, and null stands there",
  ],
  ['{ "colour": 1 }', '"colour" is not known here'],
])("settings %j: what is due and where, in words", async (text, says) => {
  const { status, out, err } = await stripdown(folderWith({ "stripdown.json": text, "a.strip": good }), ["check"]);
  expect([status, out]).toEqual([2, ""]);
  expect(err).toMatch(/stripdown\.json: /);
  expect(err.slice(err.indexOf("stripdown.json: ") + 16)).toBe(`${says}\n`);
});

test("each file is checked under the settings of its own project, whatever is named and in whatever order", async () => {
  const hint = '{ "severity": { "sequence/still-held": "hint" } }',
    folder = folderWith({
      "a/stripdown.json": hint,
      "a/sub/a.strip": held,
      "b/stripdown.json": "{}",
      "b/b.strip": held,
      "c/c.strip": rename(held, "chest"),
    });
  // Those of the files, also where a folder above is named.
  for (const [cwd, given] of [
    [folder, "a"],
    [folder, "a/sub/*.strip"],
    [join(folder, "a"), "."],
  ] as const)
    expect((await stripdown(cwd, ["check", given])).status).toBe(0);
  // The same slip in two projects is two: the first one must not take the other with it.
  const all = await stripdown(folder, ["check", "--quiet"]),
    heads = all.out.split("\n").filter((line) => /^[abc]\//.test(line));
  expect(heads.map((line) => line.replace(/:\d+:\d+: (\w+) .* {2}/, " $1 "))).toEqual([
    "a/sub/a.strip hint sequence/still-held",
    "b/b.strip error sequence/still-held",
    "c/c.strip error sequence/still-held",
  ]);
  expect([all.status, all.err]).toEqual([1, ""]);
  for (const given of [["."], ["c", "a", "b"], ["b", "**/c.strip", "a/sub/a.strip"]])
    expect(await stripdown(folder, ["check", "--quiet", ...given])).toEqual(all);
  expect((await stripdown(folder, ["check"])).out).toContain(
    "3 procedures performed, 3 files read: 2 errors, 1 hint\n",
  );
  expect((await stripdown(folder, ["check", "c"])).status).toBe(1);
});

test("odd settings of one project are said, and those that cannot be read end the run", async () => {
  const folder = folderWith({
    "a/stripdown.json": '{ "severity": { "hazard/not-yet": "hint" } }',
    "a/a.strip": good,
    "b/b.strip": good,
  });
  expect((await stripdown(folder, ["check"])).out).toMatch(
    /^a\/stripdown\.json:1:17: warning .*settings\/only-stricter$/m,
  );
  writeFileSync(join(folder, "b/stripdown.json"), "{");
  expect(await stripdown(folder, ["check"])).toMatchObject({ status: 2, out: "" });
});

test("a file that two projects use is judged once, under the settings of its own, and what is allowed in it is", async () => {
  const folder = folderWith({
    "stripdown.json": "{}",
    "pump.strip": `use "inside/lib.strip"\n${rename(good, "pump")}`,
    "inside/stripdown.json": '{ "severity": { "sequence/still-held": "hint" } }',
    "inside/lib.strip": held,
  });
  const { out, status } = await stripdown(folder, ["check"]);
  expect(out.match(/sequence\/still-held/g)).toHaveLength(1);
  expect(out).toContain("2 procedures performed, 2 files read");
  expect([status, /inside\/lib\.strip:.* hint /.test(out)]).toEqual([0, true]);
});

test("a paper is made of the files of one project, or the run ends", async () => {
  const folder = folderWith({
    "a/stripdown.json": "{}",
    "a/a.strip": good,
    "b/stripdown.json": "{}",
    "b/b.strip": rename(good, "case"),
    "c/c.strip": rename(good, "chest"),
  });
  for (const given of [
    ["a", "b"],
    ["b", "a"],
  ])
    expect(await stripdown(folder, ["export", ...given])).toEqual({
      status: 2,
      out: "",
      err: "stripdown: these files have not one and the same settings: a/stripdown.json, b/stripdown.json. Name the files of one project at a time\n",
    });
  for (const given of [[], ["."], ["c", "a", "b"]])
    expect((await stripdown(folder, ["export", ...given])).err).toContain(
      "a/stripdown.json, b/stripdown.json, and some have none.",
    );
});

test("a severity of the settings holds, off included", async () => {
  const folder = folderWith({ "stripdown.json": '{ "severity": { "sequence/still-held": "hint" } }', "a.strip": held });
  expect(await stripdown(folder, ["check"])).toMatchObject({
    status: 0,
    out: expect.stringContaining("hint Lid cannot come off") as unknown,
  });
  writeFileSync(join(folder, "stripdown.json"), '{ "severity": { "sequence/still-held": "off" } }');
  expect((await stripdown(folder, ["check", "--strict"])).status).toBe(0);
});

test.skipIf(process.platform === "win32" || process.getuid?.() === 0)(
  "a folder that nobody may look into is said, and not passed over",
  async () => {
    const folder = folderWith({ "a.strip": good, "shut/b.strip": good });
    chmodSync(join(folder, "shut"), 0);
    onTestFinished(() => chmodSync(join(folder, "shut"), 0o755));
    for (const given of [[], ["shut"]])
      expect(await stripdown(folder, ["check", ...given])).toEqual({
        status: 2,
        out: "",
        err: "stripdown: shut: no permission to look into this folder\n",
      });
  },
);
