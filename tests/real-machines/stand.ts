// What a small text means, from end to end: its findings, the printed strip and refit, the stores list, its text when formatted.

import { expect } from "vitest";
import type { Performance } from "../../language/bench/trace.ts";
import { billOf, type BillLine } from "../../language/bill/bill.ts";
import type { Finding } from "../../language/findings/finding.ts";
import { linesOf, type Lines } from "../../language/outputs/lines/groups.ts";
import type { LineGroup } from "../../language/outputs/lines/line.ts";
import { manualDocument } from "../../language/outputs/manual/build.ts";
import { manual } from "../../language/outputs/manual/manual.ts";
import { defaultWording } from "../../language/outputs/wording/languages.ts";
import { format, parse } from "../../language/syntax/index.ts";
import { checkProject, type Checked } from "../../language/workspace/check-project.ts";
import { findings as aboutTheWork, worldOf } from "../bench/refit/stage.ts";

export { codes, refit as order, perform, stage } from "../bench/refit/stage.ts";

export interface Stand {
  readonly checked: Checked;
  /** `code: words`, hints and questions about what was not told left out. */
  readonly findings: readonly string[];
  readonly performance: Performance;
  /** Printed lines, each with its author's words and details, " · " between. */
  readonly strip: readonly string[];
  readonly refit: readonly string[];
  readonly finish: readonly string[];
  readonly bill: readonly BillLine[];
  readonly lines: Lines;
}

const units = { wording: defaultWording, system: "metric" } as const;

const told = (groups: readonly LineGroup[]): string[] =>
  groups
    .flatMap((group) => group.lines)
    .map((line) => {
      const given = line.given.length > 0 ? `(${line.given.join(", ")}) ` : "";
      switch (line.is) {
        case "action":
          return (
            given + [line.says, line.text, ...line.details.map((detail) => detail.says)].filter(Boolean).join(" · ")
          );
        case "message":
          return `${given}${line.signal}: ${line.text}`;
        case "hazard":
          return `${given}hazard: ${line.hazard.name}`;
        case "photo":
          return `${given}photo: ${line.alt} [${line.points.map((point) => `${point.name} ${point.across} ${point.down}`).join(", ")}]`;
        case "note":
        case "video":
          return given + line.says;
      }
    });

/** Checks and performs one text; `procedure` in the build of that name, the plain one if left out. */
export function stand(text: string, procedure = "p", build?: string): Stand {
  const checked = checkProject(worldOf({ "stage.strip": text }), ["stage.strip"]),
    all = checked.performances.filter((p) => p.procedure.id === procedure);
  const performance = build === undefined ? all[0] : all.find((p) => p.model.build === build);
  if (!performance)
    throw new Error(
      `no ${procedure} in ${build ?? "any build"}: ${all.map((p) => p.model.build).join(", ")}; ${checked.findings.map((f) => f.says).join("; ")}`,
    );
  const lines = linesOf(performance, units),
    bill = billOf([performance], { units: 1, beadWaste: 0 });
  return {
    checked,
    findings: aboutTheWork(text).map((f: Finding) => `${f.code}: ${f.says}`),
    performance,
    strip: told(lines.strip),
    refit: told(lines.refit),
    finish: told(lines.finish),
    bill: bill.lines,
    lines,
  };
}

/** The builds that a procedure is performed in. */
export const buildsIn = (text: string, procedure = "p"): string[] =>
  checkProject(worldOf({ "stage.strip": text }), ["stage.strip"])
    .performances.filter((p) => p.procedure.id === procedure)
    .map((p) => p.model.build);

/** The manual of one procedure as its document and as its page. */
export function manualOf(of: Stand): { readonly document: ReturnType<typeof manualDocument>; readonly page: string } {
  const input = { performances: [of.performance], texts: new Map<string, string>(), openFindings: 0 };
  const document = manualDocument(input, units);
  return { document, page: Object.values(manual.formats)[0]!.write(document, units) };
}

/** Parses without error, and formatting what was formatted changes nothing, neither form nor meaning. */
export function expectFormatted(text: string): string {
  const tree = parse(text);
  expect(tree.errors.map((error) => error.says)).toEqual([]);
  const once = format(text),
    again = format(once);
  expect(again).toBe(once);
  return once;
}
