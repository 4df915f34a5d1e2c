// The same input gives the same bytes: twice, in another time zone and locale, with files in another order.

import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { bill } from "../../language/outputs/bill/bill.ts";
import { write } from "../../language/outputs/output.ts";
import { outputs } from "../../language/outputs/registry.ts";
import { defaultWording, wordings } from "../../language/outputs/wording/languages.ts";
import { sha256 } from "../../language/outputs/text/sha256.ts";
import { compiledExample, options } from "./outputs-of.ts";

const all = (): string[] => {
  const input = compiledExample("mooring-winch/strip.strip", "mooring-winch/insulation.strip");
  return outputs.flatMap((output) =>
    Object.keys(output.formats).map((format) => write(output, format, input, options)),
  );
};

test("made twice, every format of every output is the same", () => {
  expect(all()).toEqual(all());
});

test.each(Object.keys(wordings))("%s: made again with the files in another order, every paper is the same", (tag) => {
  const input = compiledExample("mooring-winch/strip.strip"),
    turned = { ...input, texts: new Map([...input.texts].reverse()) },
    with_ = { ...options, wording: wordings[tag]! };
  for (const output of outputs)
    for (const format of Object.keys(output.formats)) {
      expect(write(output, format, turned, with_)).toBe(write(output, format, input, with_));
    }
});

test("line ends and a byte order mark do not change the content hash, a changed figure does", () => {
  const input = compiledExample("dairy-pump/pump.strip"),
    hash = (change: (text: string) => string): string =>
      bill.data({ ...input, texts: new Map([...input.texts].map(([path, text]) => [path, change(text)])) }, options)
        .provenance.hash;
  expect(hash((text) => `\uFEFF${text.replaceAll("\n", "\r\n")}`)).toBe(hash((text) => text));
  expect(hash((text) => text.replace("30 N·m", "31 N·m"))).not.toBe(hash((text) => text));
});

test("another time zone and locale give the same bytes", () => {
  const root = join(import.meta.dirname, "../.."),
    // As users have it, where it is built: it starts in a third of the time.
    bundle = join(root, "dist/cli/stripdown.mjs"),
    main = existsSync(bundle) ? bundle : join(root, "language/cli/process-io.ts");
  const runs = [
    ["manual"],
    ["refit"],
    ["bill"],
    ["export"],
    ["labels"],
    ["sheet", "handover"],
    ["sheet", "isolation"],
    ["draw", "strip"],
    ...Object.keys(wordings)
      .filter((tag) => tag !== defaultWording.tag)
      .map((tag) => ["manual", "--lang", tag, "--date", "3 May"]),
  ];
  const made = (env: Record<string, string>): string[] =>
    runs.map((command) => {
      const { stdout, status, stderr } = spawnSync(
        process.execPath,
        [main, ...command, "examples/dairy-pump", "--quiet"],
        { cwd: root, env: { ...process.env, ...env }, encoding: "utf8", maxBuffer: 1e8 },
      );
      expect([status, stderr]).toEqual([0, ""]);
      return createHash("sha256").update(stdout).digest("hex");
    });
  expect(made({ TZ: "Pacific/Auckland", LC_ALL: "de_DE.UTF-8", LANG: "de_DE.UTF-8" })).toEqual(
    made({ TZ: "UTC", LC_ALL: "C", LANG: "C" }),
  );
}, 120_000);

// FIPS 180-4, examples of SHA-256: "abc" and the text of 448 bits; Node's own implementation for the rest.
test("our SHA-256 is the published one", () => {
  expect(sha256("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  expect(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")).toBe(
    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
  );
  for (const text of ["", "x".repeat(55), "x".repeat(56), "x".repeat(64), "ü€😀".repeat(100)])
    expect(sha256(text)).toBe(createHash("sha256").update(text).digest("hex"));
});
