// How many findings are open in the file, in the language's own corner of the status bar. A number, and no verdict.

import { DiagnosticSeverity, l10n, languages, LanguageStatusSeverity, window, type Disposable } from "vscode";

export function showStatus(): Disposable[] {
  const item = languages.createLanguageStatusItem("stripdown.findings", { language: "strip" });
  item.name = l10n.t("Findings");
  item.command = { command: "stripdown.showFindings", title: l10n.t("Show") };
  const update = (): void => {
    const uri = window.activeTextEditor?.document.uri,
      found = uri ? languages.getDiagnostics(uri).filter((one) => one.severity !== DiagnosticSeverity.Hint) : [];
    item.text = found.length === 1 ? l10n.t("1 finding open") : l10n.t("{0} findings open", found.length);
    item.severity = found.some((one) => one.severity === DiagnosticSeverity.Error)
      ? LanguageStatusSeverity.Error
      : found.length > 0
        ? LanguageStatusSeverity.Warning
        : LanguageStatusSeverity.Information;
  };
  update();
  return [item, languages.onDidChangeDiagnostics(update), window.onDidChangeActiveTextEditor(update)];
}
