// Every check keeps its own promise: its failing example gives exactly the finding that is marked in it, its mended example none,
// certain fixes make the one of the other, and formatting changes neither.

import { expect, describe, test } from "vitest";
import { checks } from "../../language/checks/registry.ts";
import { format } from "../../language/syntax/index.ts";
import { defaultSettings, type Settings } from "../../language/world/settings.ts";
import { applied, checkText, expectMarked, joined } from "../support/check-text.ts";
import { marked } from "../support/marked.ts";

const severities = new Set(["error", "warning", "question", "hint", "off"]);

test("codes are readable, each once, and name the family of their folder", () => {
  const codes = checks.map((check) => check.code);
  expect(codes.filter((code) => !/^[a-z]+\/[a-z]+(?:-[a-z]+)*$/.test(code))).toEqual([]);
  expect(codes).toEqual([...new Set(codes)].sort());
});

for (const check of checks)
  describe(check.code, () => {
    // One that is off by default is tried as if somebody asked for it.
    const settings: Settings =
      check.severity === "off" ? { ...defaultSettings, severity: { [check.code]: "warning" } } : defaultSettings;

    test("has its facts in the form that they are printed in", () => {
      expect(severities).toContain(check.severity);
      expect(check.title).toMatch(/^[^.]*[^.\s]$/);
      expect(check.title.length).toBeLessThanOrEqual(80);
      expect(check.why).toMatch(/[.?!]"?$/);
    });

    test("finds what is marked in its failing example, and nothing else", () => {
      expect(marked(check.fails).marks).toHaveLength(1);
      const { found } = expectMarked(check.fails, settings);
      expect(found.map((one) => one.code)).toEqual([check.code]);
      expect(found[0]!.says).toMatch(/[^.]$/);
    });

    test("finds nothing in its mended example", () => {
      expect(marked(check.mended).marks).toEqual([]);
      expectMarked(check.mended, settings);
    });

    test("offers remedies that remove the finding; a certain one gives the mended example", () => {
      const { found, texts } = checkText(check.fails, settings),
        mended = checkText(check.mended, settings).texts;
      for (const fix of found[0]?.finding.fixes ?? []) {
        const after = applied(texts, fix.edits),
          left = checkText(joined(after), settings).found;
        expect(
          left.filter((one) => one.code === check.code && one.says === found[0]!.says),
          fix.title,
        ).toEqual([]);
        if (fix.certain)
          for (const [name, text] of after) expect(format(text), fix.title).toBe(format(mended.get(name) ?? ""));
      }
    });

    test("says the same of a formatted text", () => {
      for (const [text, codes] of [
        [check.fails, [check.code]],
        [check.mended, []],
      ] as const) {
        const { files } = marked(text),
          formatted = new Map([...files].map(([name, body]) => [name, name.endsWith(".strip") ? format(body) : body]));
        expect(checkText(joined(formatted), settings).found.map((one) => one.code)).toEqual(codes);
      }
    });
  });
