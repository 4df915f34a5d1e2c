// Files that the tool writes: whole or not at all, and never over what somebody else made.

import {
  chmodSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { writeOutput } from "../../language/cli/files.ts";
import { format } from "../../language/syntax/index.ts";
import { folderWith, stripdown } from "../support/command-line.ts";
import { good } from "./machines.ts";

const untidy = good.replace("  base foot", "      base    foot");

test("new writes a commented file that checks clean and is formatted", async () => {
  const folder = folderWith({});
  expect(await stripdown(folder, ["new", "sub/fan.strip"])).toMatchObject({
    status: 0,
    out: "Written: sub/fan.strip. Next: stripdown check sub/fan.strip\n",
  });
  const text = readFileSync(join(folder, "sub/fan.strip"), "utf8");
  expect(text).toContain("# ");
  expect(format(text)).toBe(text);
  expect((await stripdown(folder, ["check", "--strict", "sub/fan.strip"])).status).toBe(0);
});

test("new leaves a file that is there, unless it is told to", async () => {
  const folder = folderWith({ "fan.strip": "# mine\n" });
  expect(await stripdown(folder, ["new", "fan.strip"])).toMatchObject({
    status: 2,
    err: expect.stringContaining("is there already") as unknown,
  });
  expect(readFileSync(join(folder, "fan.strip"), "utf8")).toBe("# mine\n");
  expect((await stripdown(folder, ["new", "fan.strip", "--force"])).status).toBe(0);
  expect((await stripdown(folder, ["new", "fan.txt"])).status).toBe(2);
});

test("format changes blanks and keeps comments; --check changes nothing", async () => {
  const folder = folderWith({ "a.strip": `# kept\n${untidy}`, "b.strip": good });
  const checked = await stripdown(folder, ["format", "--check"]);
  expect([checked.status, checked.out]).toEqual([1, "would change: a.strip\n"]);
  expect(readFileSync(join(folder, "a.strip"), "utf8")).toBe(`# kept\n${untidy}`);
  expect((await stripdown(folder, ["format"])).out).toBe("formatted: a.strip\n");
  expect(readFileSync(join(folder, "a.strip"), "utf8")).toBe(`# kept\n${good}`);
  expect(await stripdown(folder, ["format", "--check"])).toMatchObject({ status: 0, out: "" });
  expect((await stripdown(folder, ["format", "-"], untidy)).out).toBe(good);
});

test("format leaves a file whose braces do not pair", async () => {
  const folder = folderWith({ "a.strip": `${untidy}}` });
  await stripdown(folder, ["format"]);
  expect(readFileSync(join(folder, "a.strip"), "utf8")).toBe(`${untidy}}`);
});

test("an output is written beside and renamed; a file of somebody else stays, unless forced", async () => {
  const folder = folderWith({ "a.strip": good, "out/refit.txt": "my own notes\n" });
  expect(await stripdown(folder, ["refit", "a.strip", "--to", "out/refit.txt"])).toMatchObject({
    status: 2,
    err: expect.stringContaining("was not made by this tool") as unknown,
  });
  expect(readFileSync(join(folder, "out/refit.txt"), "utf8")).toBe("my own notes\n");
  expect((await stripdown(folder, ["refit", "a.strip", "--to", "out/refit.txt", "--force"])).status).toBe(0);
  const first = readFileSync(join(folder, "out/refit.txt"), "utf8");
  expect(first).toContain("Remove the lid.");
  // Made by the tool now: written again without asking, until somebody changes it.
  writeFileSync(join(folder, "a.strip"), good.replaceAll('"Lid"', '"Cover"'));
  expect((await stripdown(folder, ["refit", "a.strip", "--to", "out/refit.txt"])).status).toBe(0);
  expect(readFileSync(join(folder, "out/refit.txt"), "utf8")).toContain("Remove the cover.");
  writeFileSync(join(folder, "out/refit.txt"), "changed by hand\n");
  expect((await stripdown(folder, ["refit", "a.strip", "--to", "out/refit.txt"])).status).toBe(2);
  expect(readdirSync(join(folder, "out")).sort()).toEqual([".stripdown-made.json", "refit.txt"]);
});

test("what a paper is made from is never written over, forced or not, by its name or by a link", async () => {
  const folder = folderWith({ "a.strip": good });
  symlinkSync("a.strip", join(folder, "link.txt"));
  for (const argv of [
    ["refit", "a.strip", "--to", "a.strip"],
    ["refit", "a.strip", "--to", "link.txt"],
    ["text", "export", "a.strip", "--lang", "de", "--to", "a.strip"],
  ])
    expect(await stripdown(folder, [...argv, "--force"])).toMatchObject({
      status: 2,
      out: "",
      err: `stripdown: ${argv.at(-1)!} is what this is made from, and is not written over: give another name\n`,
    });
  expect(readFileSync(join(folder, "a.strip"), "utf8")).toBe(good);
});

test("what cannot be written is said, and nothing is left behind", async () => {
  const folder = folderWith({ "a.strip": good });
  mkdirSync(join(folder, "out.txt"));
  const { status, err } = await stripdown(folder, ["refit", "a.strip", "--to", "out.txt", "--force"]);
  expect([status, err]).toEqual([
    2,
    "stripdown: out.txt cannot be written: a folder of this name stands there: give the name of a file\n",
  ]);
  expect((await stripdown(folder, ["refit", "a.strip", "--to", "a.strip/refit.txt"])).status).toBe(2);
  expect(readdirSync(folder).sort()).toEqual(["a.strip", "out.txt"]);
});

test("papers that are written side by side are all known as made by the tool", async () => {
  const out = join(folderWith({}), "out"),
    papers = ["refit", "bill", "export", "labels", "manual"];
  const write = (text: string): Promise<void[]> =>
    Promise.all(papers.map((one) => writeOutput(join(out, one), `${one} ${text}`, false, one)));
  await write("as first made");
  await write("as made of another text");
  expect(readFileSync(join(out, "bill"), "utf8")).toBe("bill as made of another text");
  expect(readdirSync(out).sort()).toEqual([".stripdown-made.json", ...papers].sort());
});

test("a run that was broken off does not hold up the next one", async () => {
  const left = "out/.stripdown-made.json.lock",
    folder = folderWith({ "a.strip": good, [left]: "" }),
    before = new Date(Date.now() - 60_000);
  utimesSync(join(folder, left), before, before);
  expect((await stripdown(folder, ["refit", "a.strip", "--to", "out/refit.txt"])).status).toBe(0);
  expect(readdirSync(join(folder, "out")).sort()).toEqual([".stripdown-made.json", "refit.txt"]);
});

test.skipIf(process.platform === "win32")("who may read a file stays as it was when it is written anew", async () => {
  const folder = folderWith({ "a.strip": untidy }),
    modeOf = (name: string): number => statSync(join(folder, name)).mode & 0o777;
  chmodSync(join(folder, "a.strip"), 0o600);
  await stripdown(folder, ["format"]);
  expect([readFileSync(join(folder, "a.strip"), "utf8"), modeOf("a.strip")]).toEqual([good, 0o600]);
  await stripdown(folder, ["bill", "a.strip", "--to", "bill.txt"]);
  chmodSync(join(folder, "bill.txt"), 0o640);
  await stripdown(folder, ["bill", "a.strip", "--units", "2", "--to", "bill.txt"]);
  expect(modeOf("bill.txt")).toBe(0o640);
});

test.skipIf(process.platform === "win32")("a device is not read to its end, and no file takes its place", async () => {
  const folder = folderWith({ "a.strip": good });
  for (const [device, more] of [
    ["/dev/zero", []],
    ["/dev/null", ["--force"]],
  ] as const)
    expect(await stripdown(folder, ["refit", "a.strip", "--to", device, ...more])).toMatchObject({
      status: 2,
      err: expect.stringContaining(
        `${device} is no plain file: leave --to out, and send standard output there`,
      ) as unknown,
    });
  expect(statSync("/dev/null").isCharacterDevice()).toBe(true);
});

test("- is standard output, not a file of that name", async () => {
  const folder = folderWith({ "a.strip": good }),
    plain = await stripdown(folder, ["refit", "a.strip"]);
  expect(await stripdown(folder, ["refit", "a.strip", "--to", "-"])).toEqual(plain);
  expect((await stripdown(folder, ["text", "export", "a.strip", "--lang", "de", "--to", "-"])).out).toMatch(/^<\?xml/);
  expect(readdirSync(folder)).toEqual(["a.strip"]);
});

test("a folder of that name is said, with and without --force", async () => {
  for (const more of [[], ["--force"]]) {
    const folder = folderWith({ "box.strip": good, "papers/keep.txt": "mine" });
    const { status, err } = await stripdown(folder, ["refit", "box.strip", "--to", "papers", ...more]);
    expect(status).toBe(2);
    expect(err).toMatch(/papers cannot be written: a folder of this name stands there: give the name of a file/);
    expect(readFileSync(join(folder, "papers/keep.txt"), "utf8")).toBe("mine");
  }
});
