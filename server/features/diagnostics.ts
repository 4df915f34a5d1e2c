// Findings as diagnostics: related places, tags, the link to the check's page, the remedies as data.

import { DiagnosticSeverity, DiagnosticTag, type Diagnostic } from "vscode-languageserver";
import type { Checked, Finding } from "../../language/index.ts";
import { locationOf, rangeOf } from "../places.ts";

const severities = { error: DiagnosticSeverity.Error, warning: DiagnosticSeverity.Warning, question: DiagnosticSeverity.Information, hint: DiagnosticSeverity.Hint } as const;

export function diagnosticsOf(checked: Checked, path: string): Diagnostic[] {
  return checked.findings.filter((finding) => finding.at.file === path).map((finding) => diagnosticOf(checked, finding));
}

function diagnosticOf(checked: Checked, finding: Finding): Diagnostic {
  const related = finding.because.flatMap((because) => (because.at ? [{ location: locationOf(checked, because.at), message: because.says }] : []));
  const loose = finding.because.flatMap((because) => (because.at ? [] : [because.says])), builds = finding.builds.length > 0 ? ` (${finding.builds.join(", ")})` : "";
  return {
    range: rangeOf(checked, finding.at), severity: severities[finding.severity], source: "stripdown", code: finding.code,
    message: [`${finding.says}${builds}`, ...loose].join("\n"), relatedInformation: related,
    ...(finding.tag === "unused" ? { tags: [DiagnosticTag.Unnecessary] } : {}),
  };
}
