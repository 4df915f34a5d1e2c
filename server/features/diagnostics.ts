// Findings as the protocol's diagnostics: pulled where the client can, else pushed, never both. The open document comes first, the
// rest of the folder after it.

import {
  DiagnosticRefreshRequest,
  DiagnosticSeverity,
  DiagnosticTag,
  DocumentDiagnosticReportKind,
  type Diagnostic,
  type DocumentDiagnosticReport,
  type WorkspaceDocumentDiagnosticReport,
} from "vscode-languageserver";
import type { Checked, Finding } from "../../language/index.ts";
import { changedNotification, checkScheme } from "../../shared/protocol.ts";
import { feature } from "../feature.ts";
import type { Project } from "../project.ts";
import type { Session } from "../session.ts";
import { isBelow, uriOf } from "../uris.ts";

const severities = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  question: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
} as const;
/** In ms: behind a key or an answer, and in all behind a key. */
const longestWait = 40,
  longestPut = 250;
/** So many links of a chain are shown beside the finding. */
const mostRelated = 20;

export function diagnosticOf(session: Session, checked: Checked, finding: Finding): Diagnostic {
  const related = finding.because.filter((link) => link.at !== undefined).slice(0, mostRelated),
    where =
      finding.builds.length > 0
        ? ` (${finding.builds.slice(0, 3).join("; ")}${finding.builds.length > 3 ? " …" : ""})`
        : "";
  // What has no place of its own follows the sentence.
  const more = finding.because
    .filter((link) => link.at === undefined)
    .slice(0, 8)
    .map((link) => `\n  ${link.says}`)
    .join("");
  return {
    range: session.range(checked, finding.at),
    severity: severities[finding.severity],
    source: "stripdown",
    code: finding.code,
    message: `${finding.says}${where}${more}`,
    ...(session.client.workspace?.textDocumentContent
      ? { codeDescription: { href: `${checkScheme}:/${finding.code}.md` } }
      : {}),
    ...(finding.tag === "unused" ? { tags: [DiagnosticTag.Unnecessary] } : {}),
    ...(related.length > 0 && session.client.textDocument?.publishDiagnostics?.relatedInformation !== false
      ? {
          relatedInformation: related.map(({ says, at }) => ({
            location: session.location(checked, at!),
            message: says,
          })),
        }
      : {}),
    ...(finding.fixes.length > 0
      ? { data: { fixes: finding.fixes.map(({ title, certain }) => ({ title, certain })) } }
      : {}),
  };
}

/** The findings of one file; those of stripdown.json stand in it. */
function diagnosticsFor(session: Session, project: Project, checked: Checked, path: string): Diagnostic[] {
  const own = project.settingsFile();
  if (own?.path === path) {
    const whole = { file: path, start: 0, end: 0 };
    return [
      ...(own.problem === undefined
        ? []
        : [
            {
              range: session.range(checked, whole),
              severity: DiagnosticSeverity.Error,
              source: "stripdown",
              message: `These settings are not read: ${own.problem}`,
            },
          ]),
      ...own.findings.map((finding) => diagnosticOf(session, checked, finding)),
    ];
  }
  return checked.findings
    .filter((finding) => finding.at.file === path)
    .map((finding) => diagnosticOf(session, checked, finding));
}

export default feature({
  name: "findings",
  abilities: (session) =>
    pulls(session)
      ? { diagnosticProvider: { identifier: "stripdown", interFileDependencies: true, workspaceDiagnostics: true } }
      : {},
  start(session, answer) {
    const { connection } = session;
    /** What was told last of a file, so that the same is not sent again. */
    const told = new Map<string, { readonly json: string; readonly id: string }>(),
      /** What a client shows of an open file: what it last pulled for that alone, whatever it was told of it with the whole folder. */
      shown = new Map<string, string>();
    let ids = 0,
      timer: ReturnType<typeof setTimeout> | undefined,
      changedAt = 0,
      took = 0;

    const idOf = (path: string, items: readonly Diagnostic[]): string => {
      const json = JSON.stringify(items),
        had = told.get(path);
      if (had?.json === json) return had.id;
      const id = String(++ids);
      told.set(path, { json, id });
      return id;
    };

    // Keys that come in one burst are answered once: as long as a check takes, and no longer than the eye sees. Where findings are pulled
    // nothing of the open text waits for this, so that what the client asks behind a key goes first and needs no check if it asks for names.
    const settleIn = (ms: number): void => {
      clearTimeout(timer);
      timer = setTimeout(() => {
        timer = undefined;
        void settle();
      }, ms);
    };
    session.onChange.push(() => {
      changedAt = performance.now();
      settleIn(pulls(session) ? longestWait : Math.min(longestWait, took));
    });
    // Where the client asks one thing after the other behind a key, the check of the folder does not come in between.
    session.onAnswer.push(() => {
      if (timer === undefined || !pulls(session)) return;
      settleIn(Math.max(0, Math.min(longestWait, changedAt + longestPut - performance.now())));
    });

    async function settle(): Promise<void> {
      try {
        if (session.ended) return;
        const from = performance.now();
        if (!pulls(session))
          for (const document of session.documents.values()) {
            const project = session.projectOf(document.path);
            push(project, project.best(), document.path);
          }
        took = performance.now() - from;
        await Promise.all(
          session.projects().map(async (project) => {
            await shownWhenLong(session, project.complete(project.isHalted), () => project.halt());
            const checked = project.whole();
            if (!checked || session.ended) return;
            if (!pulls(session)) {
              for (const path of checked.project.files.keys()) push(project, checked, path);
              for (const path of gone(project, checked)) push(project, checked, path);
            } else if (session.client.workspace?.diagnostics?.refreshSupport && changedUnseen(project, checked))
              await connection.sendRequest(DiagnosticRefreshRequest.type);
            await connection.sendNotification(changedNotification);
          }),
        );
      } catch (error) {
        if (!session.ended)
          connection.console.error(
            `findings: ${error instanceof Error ? `${error.message}\n${error.stack ?? ""}` : String(error)}`,
          );
      }
    }

    /** Files of the folder that something was told of and that are there no more. */
    function gone(project: Project, checked: Checked): string[] {
      const settings = project.settingsFile()?.path;
      return [...told.keys()].filter(
        (path) =>
          isBelow(path, project.folder) &&
          path !== settings &&
          !checked.project.files.has(path) &&
          !session.documents.has(path),
      );
    }

    /** Does an open file have other findings than the client was last told? */
    function changedUnseen(project: Project, checked: Checked): boolean {
      return [...session.documents.keys()].some(
        (path) =>
          session.projectOf(path) === project &&
          shown.has(path) &&
          shown.get(path) !== JSON.stringify(diagnosticsFor(session, project, checked, path)),
      );
    }

    function push(project: Project, checked: Checked, path: string): void {
      const document = session.documents.get(path),
        items = diagnosticsFor(session, project, checked, path),
        had = told.get(path);
      const id = idOf(path, items);
      if (had?.id === id && document === undefined) return;
      if (!had && document === undefined && items.length === 0) return;
      void connection.sendDiagnostics({
        uri: document?.uri ?? uriOf(path),
        diagnostics: items,
        ...(document ? { version: document.version } : {}),
      });
    }

    connection.languages.diagnostics.on(
      answer("Findings", ({ textDocument: { uri }, previousResultId }): DocumentDiagnosticReport => {
        const looked = session.look(uri);
        if (!looked) return { kind: DocumentDiagnosticReportKind.Full, items: [] };
        const items = diagnosticsFor(session, looked.project, looked.checked, looked.path),
          resultId = idOf(looked.path, items);
        shown.set(looked.path, told.get(looked.path)!.json);
        return resultId === previousResultId
          ? { kind: DocumentDiagnosticReportKind.Unchanged, resultId }
          : { kind: DocumentDiagnosticReportKind.Full, resultId, items };
      }),
    );
    connection.languages.diagnostics.onWorkspace(
      answer("Findings of the folder", async ({ previousResultIds }, token) => {
        const before = new Map(previousResultIds.map(({ uri, value }) => [uri, value])),
          reported = new Set<string>(),
          items: WorkspaceDocumentDiagnosticReport[] = [];
        for (const project of session.projects()) {
          const isEnough = (): boolean => token.isCancellationRequested || project.isHalted();
          while (!project.whole() && !isEnough()) await project.complete(isEnough);
          const checked = project.whole(),
            settings = project.settingsFile();
          if (!checked) continue;
          for (const path of [...checked.project.files.keys(), ...(settings ? [settings.path] : [])]) {
            const document = session.documents.get(path),
              uri = document?.uri ?? uriOf(path),
              list = diagnosticsFor(session, project, checked, path),
              resultId = idOf(path, list),
              version = document?.version ?? null;
            reported.add(uri);
            items.push(
              before.get(uri) === resultId
                ? { kind: DocumentDiagnosticReportKind.Unchanged, uri, version, resultId }
                : { kind: DocumentDiagnosticReportKind.Full, uri, version, resultId, items: list },
            );
          }
          // A client keeps what it was told of a file until it is told something else.
          for (const path of gone(project, checked)) {
            told.delete(path);
            const uri = uriOf(path);
            if (!reported.has(uri))
              items.push({ kind: DocumentDiagnosticReportKind.Full, uri, version: null, items: [] });
          }
        }
        return { items };
      }),
    );
  },
});

/** Work of more than a second is shown to the one who waits, and can be broken off. */
async function shownWhenLong(session: Session, work: Promise<void>, halt: () => void): Promise<void> {
  if (!session.client.window?.workDoneProgress) return await work;
  const shown = new Promise<"long">((resolve) => {
    setTimeout(() => resolve("long"), 1000);
  });
  if ((await Promise.race([work, shown])) !== "long" || session.ended) return;
  const progress = await session.connection.window.createWorkDoneProgress();
  progress.begin("Stripdown", undefined, "Performing the procedures of the folder", true);
  progress.token.onCancellationRequested(halt);
  try {
    await work;
  } finally {
    progress.done();
  }
}

const pulls = (session: Session): boolean => session.client.textDocument?.diagnostic !== undefined;
