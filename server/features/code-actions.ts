// Remedies of findings, all certain ones at once, and changes that an author asks for. What is costly is worked out when it is chosen.

import { CodeActionKind, CodeActionTriggerKind, type CodeAction, type Diagnostic } from "vscode-languageserver";
import {
  convertUnits,
  freeingSteps,
  reverseSteps,
  typeOfFasteners,
  type Fix,
  type Rework,
  type TextEdit,
} from "../../language/index.ts";
import { commandNames } from "../../shared/protocol.ts";
import { feature } from "../feature.ts";
import type { Looked, Session } from "../session.ts";
import { diagnosticOf } from "./diagnostics.ts";

const fixAll = `${CodeActionKind.SourceFixAll}.stripdown`;
const freeing: ReadonlySet<string> = new Set([
  "sequence/still-held",
  "sequence/blocked",
  "sequence/wrong-position",
  "sequence/fluid-aboard",
  "sequence/falls",
  "hazard/not-yet",
  "hazard/lapsed",
]);

interface Late {
  readonly uri: string;
  readonly offset: number;
  readonly rework: "free";
}

export default feature({
  name: "remedies",
  abilities: () => ({
    codeActionProvider: {
      codeActionKinds: [
        CodeActionKind.QuickFix,
        CodeActionKind.RefactorRewrite,
        CodeActionKind.RefactorExtract,
        fixAll,
      ],
      resolveProvider: true,
    },
  }),
  start(session, answer) {
    session.connection.onCodeAction(
      answer("Remedies", ({ textDocument: { uri }, range, context }): CodeAction[] => {
        const looked = session.look(uri),
          actions: CodeAction[] = [];
        if (!looked) return [];
        const { checked, file, path } = looked,
          from = session.offset(file, range.start),
          to = session.offset(file, range.end);
        const wants = (kind: string): boolean =>
          context.only === undefined || context.only.some((only) => kind === only || kind.startsWith(`${only}.`));
        if (wants(CodeActionKind.QuickFix)) {
          const late = session.client.textDocument?.codeAction?.resolveSupport?.properties.includes("edit") === true,
            freed = new Set<number>();
          for (const finding of checked.findings) {
            if (finding.at.file !== path || finding.at.start > to || finding.at.end < from) continue;
            const diagnostics = [diagnosticOf(session, checked, finding)];
            finding.fixes.forEach((fix, i) =>
              actions.push({ ...fixAction(session, looked, fix, diagnostics), isPreferred: fix.certain && i === 0 }),
            );
            if (freeing.has(finding.code) && !freed.has(finding.at.start)) {
              freed.add(finding.at.start);
              const offset = finding.at.start;
              if (late)
                actions.push({
                  title: "Insert all that has to come before this",
                  kind: CodeActionKind.QuickFix,
                  diagnostics,
                  data: { uri, offset, rework: "free" } satisfies Late,
                });
              else {
                const rework = freeingSteps(checked, file, offset);
                if (rework)
                  actions.push({ ...reworkAction(session, looked, rework, CodeActionKind.QuickFix), diagnostics });
              }
            }
          }
        }
        if (wants(CodeActionKind.RefactorRewrite))
          for (const rework of [
            reverseSteps(file, from),
            // Of the whole file, and so of every line: offered to who asks, not by a sign beside each line that the cursor comes to.
            ...(context.triggerKind === CodeActionTriggerKind.Automatic
              ? []
              : (["metric", "us"] as const).map((system) => convertUnits(file, system))),
          ])
            if (rework) actions.push(reworkAction(session, looked, rework, CodeActionKind.RefactorRewrite));
        if (wants(CodeActionKind.RefactorExtract)) {
          const rework = typeOfFasteners(file, from);
          if (rework) actions.push(reworkAction(session, looked, rework, CodeActionKind.RefactorExtract));
        }
        if (wants(fixAll)) {
          const edits = certainEdits(
            checked.findings
              .filter((finding) => finding.at.file === path)
              .flatMap((finding) => finding.fixes.find((fix) => fix.certain) ?? []),
            path,
          );
          if (edits.length > 0)
            actions.push({
              title: "Apply every certain remedy in this file",
              kind: fixAll,
              edit: session.edit(checked, edits),
            });
        }
        return actions;
      }),
    );
    session.connection.onCodeActionResolve(
      answer("Remedies", (action: CodeAction): CodeAction => {
        const late = action.data as Late | undefined,
          looked = late && session.look(late.uri),
          rework = looked && freeingSteps(looked.checked, looked.file, late.offset);
        if (!looked || !rework)
          return { ...action, disabled: { reason: "The bench knows no way that frees this part" } };
        return { ...action, title: rework.title, edit: session.edit(looked.checked, rework.edits) };
      }),
    );
  },
});

function fixAction(session: Session, { checked }: Looked, fix: Fix, diagnostics: Diagnostic[]): CodeAction {
  const first = fix.edits[0],
    action: CodeAction = {
      title: fix.title,
      kind: CodeActionKind.QuickFix,
      diagnostics,
      edit: session.edit(checked, fix.edits),
    };
  if (fix.cursor === undefined || !first || !session.start.commands) return action;
  // Where the author goes on, counted after the edits.
  const text = checked.texts.get(first.file) ?? "",
    after = applied(
      text,
      fix.edits.filter((edit) => edit.file === first.file),
    );
  const { uri } = session.location(checked, { file: first.file, start: 0, end: 0 });
  return {
    ...action,
    command: { title: fix.title, command: commandNames.goTo, arguments: [uri, session.position(after, fix.cursor)] },
  };
}

const reworkAction = (session: Session, { checked }: Looked, { title, edits }: Rework, kind: string): CodeAction => ({
  title,
  kind,
  edit: session.edit(checked, edits),
});

/** Edits of one file that do not touch each other, in order. */
function certainEdits(fixes: readonly Fix[], path: string): TextEdit[] {
  const taken: TextEdit[] = [];
  for (const fix of fixes) {
    const touches = fix.edits.some(
      (edit) => edit.file !== path || taken.some((had) => edit.start <= had.end && had.start <= edit.end),
    );
    if (!touches) taken.push(...fix.edits);
  }
  return taken.sort((a, b) => a.start - b.start);
}

function applied(text: string, edits: readonly TextEdit[]): string {
  let out = "",
    done = 0;
  for (const edit of [...edits].sort((a, b) => a.start - b.start)) {
    out += text.slice(done, edit.start) + edit.text;
    done = edit.end;
  }
  return out + text.slice(done);
}
