// The commands of the extension, one entry each.

import {
  commands,
  env,
  l10n,
  Position,
  Uri,
  ViewColumn,
  window,
  workspace,
  type Disposable,
  type ExtensionContext,
} from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import {
  commandNames,
  refitOfStepRequest,
  refitScheme,
  type AtPlace,
  type Point,
  type RefitOfStepAnswer,
} from "../shared/protocol.ts";
import { writeDocuments, type WriteAsked } from "./documents.ts";
import { goTo } from "./spots.ts";
import type { BenchView } from "./views/bench-view.ts";
import type { DiagramView } from "./views/diagram-view.ts";
import type { ManualView } from "./views/manual-view.ts";

interface Views {
  readonly bench: BenchView;
  readonly manual: ManualView;
  readonly diagram: DiagramView;
}

export function registerCommands(
  context: ExtensionContext,
  client: BaseLanguageClient,
  { bench, manual, diagram }: Views,
): Disposable[] {
  const here = () => (window.activeTextEditor?.document.languageId === "strip" ? window.activeTextEditor : undefined);
  const all: Readonly<Record<string, (...args: never[]) => unknown>> = {
    "stripdown.restart": async () => {
      await client.stop();
      await client.start();
    },
    "stripdown.showManual": () => manual.open(here()),
    "stripdown.showDiagram": () => diagram.open(here()),
    "stripdown.showBench": () => commands.executeCommand("stripdown.bench.focus"),
    "stripdown.copyBench": async () => {
      const text = await bench.text();
      await env.clipboard.writeText(text);
      return text;
    },
    "stripdown.writeDocuments": (asked?: WriteAsked) =>
      writeDocuments(client, here(), asked instanceof Uri ? {} : asked),
    "stripdown.refitOfStep": async () => {
      const editor = here();
      if (!editor) return;
      const { line, character } = editor.selection.active,
        answer = await client.sendRequest<RefitOfStepAnswer | null>(refitOfStepRequest, {
          uri: client.code2ProtocolConverter.asUri(editor.document.uri),
          position: { line, character },
        } satisfies AtPlace);
      if (!answer || answer.lines.length === 0) {
        void window.showInformationMessage(l10n.t("No step of a computed way back belongs to this place"));
        return;
      }
      const picked = await window.showQuickPick(
        answer.lines.map((one) => ({ label: `${one.id}  ${one.says}`, spot: one.spot })),
        {
          title: l10n.t("What undoes {0}", answer.step),
          placeHolder: l10n.t("Choose a line to go to the act that it comes from"),
        },
      );
      if (picked) await goTo(picked.spot.uri, picked.spot.start, picked.spot.end);
    },
    [commandNames.goTo]: (uri: string, at: Point) => goTo(uri, at),
    [commandNames.showFindings]: () => commands.executeCommand("workbench.actions.view.problems"),
    [commandNames.showUses]: async (source: string, at: Point) => {
      const uri = client.protocol2CodeConverter.asUri(source),
        position = new Position(at.line, at.character);
      const places = await commands.executeCommand("vscode.executeReferenceProvider", uri, position);
      await commands.executeCommand("editor.action.showReferences", uri, position, places);
    },
    [commandNames.showRefit]: async (uri?: string) => {
      const source = uri ?? (here() && client.code2ProtocolConverter.asUri(here()!.document.uri));
      if (source === undefined) return;
      const name = Uri.parse(source).path.replace(/\.strip$/, ""),
        page = Uri.from({ scheme: refitScheme, path: `${name} (way back).txt`, query: source });
      await window.showTextDocument(await workspace.openTextDocument(page), {
        viewColumn: ViewColumn.Beside,
        preview: true,
        preserveFocus: true,
      });
    },
    "stripdown.openSample": async () => {
      const text = new TextDecoder().decode(
        await workspace.fs.readFile(Uri.joinPath(context.extensionUri, "client", "walkthrough", "sample.strip")),
      );
      return await window.showTextDocument(await workspace.openTextDocument({ language: "strip", content: text }));
    },
  };
  return Object.entries(all).map(([name, run]) => commands.registerCommand(name, run));
}
