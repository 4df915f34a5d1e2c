// Findings as SARIF 2.1.0 (OASIS), for services that show results beside a change.

import type { CheckFacts } from "../../findings/surveyed.ts";
import { noAssessment, notConsidered, type Place, type Report, type Reported } from "./report.ts";

const levels = { error: "error", warning: "warning", question: "note", hint: "note" } as const;

export function findingsAsSarif(
  report: Report,
  checkOf: (code: string) => CheckFacts | undefined,
  version: string,
): string {
  const codes = [...new Set(report.findings.map((f) => f.code))].sort(),
    index = new Map(codes.map((code, i) => [code, i]));
  const log = {
    $schema: "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
    version: "2.1.0",
    runs: [
      {
        tool: {
          driver: {
            name: "stripdown",
            semanticVersion: version,
            rules: codes.map((code) => rule(code, checkOf(code))),
          },
        },
        columnKind: "utf16CodeUnits",
        results: report.findings.map((finding) => result(finding, index.get(finding.code)!)),
        invocations: [
          {
            executionSuccessful: report.unreadable.length === 0,
            toolExecutionNotifications: [
              ...report.unreadable.map(({ file, says }) => ({ level: "error", message: { text: `${file}: ${says}` } })),
              ...[...notConsidered(report), noAssessment].map((says) => ({ level: "note", message: { text: says } })),
            ],
          },
        ],
      },
    ],
  };
  return `${JSON.stringify(log, null, 2)}\n`;
}

function rule(id: string, check: CheckFacts | undefined): object {
  if (!check) return { id };
  const level = check.severity === "off" ? "none" : levels[check.severity];
  return {
    id,
    shortDescription: { text: check.title },
    fullDescription: { text: check.why },
    defaultConfiguration: { level },
  };
}

function result(finding: Reported, ruleIndex: number): object {
  const related = finding.because.flatMap((b, id) =>
    b.at ? [{ id, message: { text: b.says }, physicalLocation: location(b.at) }] : [],
  );
  return {
    ruleId: finding.code,
    ruleIndex,
    level: levels[finding.severity],
    message: { text: finding.builds.length > 0 ? `${finding.says} (${finding.builds.join(", ")})` : finding.says },
    locations: [{ physicalLocation: location(finding.at) }],
    ...(related.length > 0 ? { relatedLocations: related } : {}),
    ...(finding.fixes.length > 0
      ? {
          fixes: finding.fixes.map((fix) => ({
            description: { text: fix.title },
            artifactChanges: fix.edits.map(({ at, text }) => ({
              artifactLocation: { uri: uri(at.file) },
              replacements: [{ deletedRegion: region(at), insertedContent: { text } }],
            })),
          })),
        }
      : {}),
  };
}

const region = (at: Place): object => ({
  startLine: at.line,
  startColumn: at.column,
  endLine: at.endLine,
  endColumn: at.endColumn,
});
const location = (at: Place): object => ({ artifactLocation: { uri: uri(at.file) }, region: region(at) });
/** A relative reference: every part of the path escaped, a leading drive or dash never read as a scheme. */
const uri = (file: string): string => file.split("/").map(encodeURIComponent).join("/");
