// What must come off before what, drawn in rows beside the source; a node leads to the line that does it.

import { l10n, Uri, ViewColumn, window, type Disposable, type TextEditor, type WebviewPanel } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import { stripDiagramRequest, type AtPlace, type StripDiagramAnswer } from "../../shared/protocol.ts";
import { goTo } from "../spots.ts";
import { escaped, pageFor } from "./page.ts";

export class DiagramView implements Disposable {
  private readonly extension: Uri;
  private readonly client: BaseLanguageClient;
  private panel: WebviewPanel | undefined;
  private editor: TextEditor | undefined;
  private answer: StripDiagramAnswer | null = null;
  private pending: Promise<void> = Promise.resolve();
  private asked = 0;
  private json = "";

  constructor(extension: Uri, client: BaseLanguageClient) {
    this.extension = extension;
    this.client = client;
  }

  dispose(): void {
    this.panel?.dispose();
  }

  async open(editor: TextEditor | undefined): Promise<void> {
    if (!editor) {
      void window.showInformationMessage(l10n.t("Open a .strip file first"));
      return;
    }
    this.editor = editor;
    if (!this.panel) {
      this.panel = window.createWebviewPanel(
        "stripdown.diagram",
        l10n.t("What comes off before what"),
        { viewColumn: ViewColumn.Beside, preserveFocus: true },
        { enableScripts: true, localResourceRoots: [Uri.joinPath(this.extension, "client", "webview")] },
      );
      this.panel.onDidDispose(() => {
        this.panel = undefined;
        this.json = "";
      });
      this.panel.webview.onDidReceiveMessage(({ kind, number }: { kind: string; number?: number }) => {
        if (kind === "ready") {
          this.json = "";
          this.draw();
          return;
        }
        const node = this.answer?.nodes.find((one) => one.number === number);
        if (node) void goTo(node.spot.uri, node.spot.start, node.spot.end);
      });
      this.panel.webview.html = pageFor(this.panel.webview, this.extension, {
        title: l10n.t("What comes off before what"),
        style: "",
        script: "diagram.js",
        styleSheet: "diagram.css",
        body: `<h1 id="title"></h1><p>${escaped(l10n.t("A row needs what it hangs from in the rows above. Tab goes from one to the next, Enter goes to its line."))}</p><p><label><input type="checkbox" id="around"> ${escaped(l10n.t("Only what the line at the cursor waits for, and what waits for it"))}</label></p><div id="drawing" role="group" aria-labelledby="title"></div>`,
      });
    }
    this.panel.reveal(ViewColumn.Beside, true);
    await this.load();
  }

  again(): void {
    if (this.panel) void this.load();
  }

  follow(editor: TextEditor): void {
    if (!this.panel) return;
    this.editor = editor;
    void this.load();
  }

  /** The nodes with what comes right before each, a line each. */
  async text(): Promise<string> {
    await this.pending;
    const names = new Map(this.answer?.nodes.map((node) => [node.number, node.name]) ?? []);
    return (this.answer?.nodes ?? [])
      .map(
        (node) =>
          `${node.row} ${node.name}${
            node.after.length > 0 ? ` after ${node.after.map((n) => names.get(n)).join(", ")}` : ""
          }`,
      )
      .join("\n");
  }

  private load(): Promise<void> {
    const { editor } = this,
      question = ++this.asked;
    if (!editor) return Promise.resolve();
    const { line, character } = editor.selection.active;
    return (this.pending = this.client
      .sendRequest<StripDiagramAnswer | null>(stripDiagramRequest, {
        uri: this.client.code2ProtocolConverter.asUri(editor.document.uri),
        position: { line, character },
      } satisfies AtPlace)
      .then(
        (answer) => {
          if (question !== this.asked) return;
          this.answer = answer;
          this.draw();
        },
        () => undefined,
      ));
  }

  private draw(): void {
    const { answer, editor } = this,
      at = editor?.selection.active.line ?? -1,
      uri = editor && this.client.code2ProtocolConverter.asUri(editor.document.uri);
    const nodes =
      answer?.nodes.map(({ spot, ...node }) => ({
        ...node,
        here: spot.uri === uri && spot.start.line <= at && at <= spot.end.line,
      })) ?? [];
    const message = { kind: "draw", title: answer?.title ?? l10n.t("No procedure stands here"), nodes },
      json = JSON.stringify(message);
    if (json === this.json) return;
    this.json = json;
    void this.panel?.webview.postMessage(message);
  }
}
