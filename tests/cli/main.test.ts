// Commands, options, help and exit status, as a user meets them.

import { execFileSync, spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, test } from "vitest";
import { checkSchema, type CheckJson } from "../../language/outputs/findings/schema.ts";
import { folderWith, stripdown } from "../support/command-line.ts";
import { good, held } from "./machines.ts";

const commands = ["check", "refit", "bill", "manual", "export", "calc", "explain", "format", "new"];

test("the overview names every command and the exit status", async () => {
  const { status, out } = await stripdown("/", ["--help"]);
  expect(status).toBe(0);
  for (const name of commands) expect(out).toMatch(new RegExp(`^ {2}${name} +\\S`, "m"));
  expect(out).toContain("0 clean, 1 findings, 2 could not run");
});

test("without a command the overview comes, and nothing was run", async () => {
  expect((await stripdown("/", [])).status).toBe(2);
});

test.each(commands)("%s --help shows its use, its options and an example", async (name) => {
  const { status, out } = await stripdown("/", [name, "--help"]);
  expect(status).toBe(0);
  expect(out).toContain(`  stripdown ${name}`);
  expect(out).toMatch(new RegExp(`^Example: stripdown ${name} `, "m"));
  expect(out).toContain("--help");
  expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(130);
  expect((await stripdown("/", ["help", name])).out).toBe(out);
});

test("a mistyped command or option is answered with the nearest", async () => {
  expect(await stripdown("/", ["chek"])).toEqual({
    status: 2,
    out: "",
    err: "stripdown: there is no command chek: did you mean check?\n",
  });
  expect((await stripdown("/", ["check", "--strikt"])).err).toBe(
    "stripdown: check has no option --strikt: did you mean --strict?\n",
  );
  expect((await stripdown("/", ["check", "--as"])).err).toContain("--as needs its value");
  expect((await stripdown("/", ["check", "--quiet=yes"])).err).toContain("--quiet takes no value");
  expect((await stripdown("/", ["constructor"])).status).toBe(2);
});

test("a fault of the tool is one line and exit 2, never a stack trace", async () => {
  const folder = folderWith({ "a.strip": good });
  let calls = 0;
  const { status, err } = await stripdown(folder, ["check", "a.strip"], "", {
    out: () => {
      calls++;
      throw new TypeError("x is undefined\n    at somewhere (file.ts:1:1)");
    },
  });
  expect([status, calls]).toEqual([2, 1]);
  expect(err).toMatch(/^stripdown: this is a fault of the tool[^\n]*\n$/);
  expect(err).not.toContain("file.ts");
});

test("exit status: 0 clean, 1 with an error, 1 for a question only with --strict, 2 where it could not run", async () => {
  const question = held
    .replace("undo 2 of lid-screws", "undo lid-screws")
    .replace("fastener", 'part ring o-ring "Ring" { between lid and foot }\n  fastener')
    .replace("remove lid", "remove lid, ring");
  const folder = folderWith({ "good.strip": good, "held.strip": held, "question.strip": question });
  expect((await stripdown(folder, ["check", "good.strip"])).status).toBe(0);
  expect((await stripdown(folder, ["check", "held.strip"])).status).toBe(1);
  expect(await stripdown(folder, ["check", "question.strip"])).toMatchObject({
    status: 0,
    out: expect.stringContaining("question") as unknown,
  });
  expect((await stripdown(folder, ["check", "question.strip", "--strict"])).status).toBe(1);
  expect((await stripdown(folder, ["check", "none.strip"])).status).toBe(2);
});

test("explain knows every code, and the nearest of a mistyped one", async () => {
  const { status, out } = await stripdown("/", ["explain", "sequence/still-held"]);
  expect(status).toBe(0);
  expect(out).toMatch(/^sequence\/still-held {2}\(error\)\n/);
  expect(out).toContain("Mended:");
  expect((await stripdown("/", ["explain", "sequence/stil-held"])).err).toContain("did you mean sequence/still-held");
  const list = (await stripdown("/", ["explain", "--list"])).out.trimEnd().split("\n");
  expect(list.length).toBeGreaterThan(40);
  expect((await stripdown("/", ["explain", "syntax/not-text"])).out).not.toContain("\0");
});

test("--unknowns lists what nobody gave, and is no finding", async () => {
  const { status, out } = await stripdown(folderWith({ "a.strip": good }), ["check", "--unknowns", "--strict"]);
  expect(status).toBe(0);
  expect(out).toMatch(/Box: thread size not given for 1: Lid screws/);
});

test("--unknowns lists what a charge is not waited for by", async () => {
  const charged = (figures: string): string =>
    good.replace(
      "  fastener",
      `  hazard bus electrical danger "Bus" { on lid  source capacitor  ${figures}  precaution prove-dead "Test." }\n  fastener`,
    );
  const list = async (figures: string): Promise<string> =>
    (await stripdown(folderWith({ "a.strip": charged(figures) }), ["check", "--unknowns"])).out;
  const known = "voltage 560 V dc  capacitance 1200 uF";
  expect(await list(known)).toContain(
    "Box: bleeder not given for 1: Bus. It would let the tool check the wait for the charge",
  );
  expect(await list(`${known}  bleeder 22 kohm`)).not.toContain("the wait for the charge");
  expect(await list("bleeder 22 kohm")).toContain("capacitance not given for 1: Bus");
});

test("--unknowns names every thing that lacks a figure, in whatever build it is", async () => {
  const many = Array.from({ length: 15 }, (_, i) => `  part seat-${i} "Seat ${i}" { rests on foot }\n`).join(""),
    text = good.replace(
      "  fastener",
      `${many}  variants small "Small", large "Large"\n  if large { part fan "Fan\u001b" { rests on foot } }\n  fastener`,
    ),
    folder = folderWith({ "a.strip": text });
  const { out } = await stripdown(folder, ["check", "--unknowns"]);
  expect(out).toMatch(
    /Box: mass not given for \d+: .*Seat 0, .*Seat 14, Fan\\u001b\. It would let the tool check lifts/,
  );
  const json = JSON.parse((await stripdown(folder, ["check", "--unknowns", "--json"])).out) as CheckJson;
  expect(checkSchema.safeParse(json).success).toBe(true);
  const [unit] = json.unknowns ?? [];
  expect([unit?.unit, unit?.file]).toEqual(["box", "a.strip"]);
  expect(unit?.figures.find(({ figure }) => figure === "mass")?.of).toContain("Seat 14");
  expect(JSON.parse((await stripdown(folder, ["check", "--json"])).out)).not.toHaveProperty("unknowns");
  expect((await stripdown(folder, ["check", "--unknowns", "--as", "sarif"])).status).toBe(2);
});

test("as a process: results, status and a pipe that closes early", () => {
  const folder = folderWith({ "held.strip": held }),
    entry = join(process.cwd(), "language/cli/start.ts");
  const run = spawnSync(process.execPath, [entry, "check", "held.strip"], { cwd: folder, encoding: "utf8" });
  expect([run.status, run.stderr]).toEqual([1, ""]);
  expect(run.stdout).toContain("held.strip:11:5: error Lid cannot come off");
  expect(run.stdout).not.toContain(String.fromCharCode(27));
  const piped = execFileSync("sh", ["-c", `"$0" "$1" explain --list --json | head -c 1`, process.execPath, entry], {
    encoding: "utf8",
    cwd: folder,
  });
  expect(piped).toBe("[");
});
