// The manual of a file beside its source. Both scroll together: the page follows the cursor, the source follows the page; what is in sight
// already stays where it is.

import {
  l10n,
  Range,
  TextEditorRevealType,
  Uri,
  ViewColumn,
  window,
  workspace,
  type Disposable,
  type TextEditor,
  type WebviewPanel,
} from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import { manualRequest, type ManualAnswer, type ManualParams } from "../../shared/protocol.ts";
import { goTo, positionOf } from "../spots.ts";
import { escaped, pageFor } from "./page.ts";

/** Which pictures a page may load: of a folder on a disk, and only once somebody has said that he trusts it. */
function allowed(source: string): NonNullable<ManualParams["pictures"]> {
  if (Uri.parse(source).scheme !== "file") return "no disk";
  return workspace.isTrusted ? "shown" : "untrusted";
}

type FromPage =
  | { readonly kind: "pictures"; readonly loaded: number; readonly failed: number }
  | { readonly kind: "ready" }
  | { readonly kind: "shown"; readonly id: string }
  | { readonly kind: "sees" | "open"; readonly id: string };

/** What the page tells of itself. */
export interface ManualShows {
  readonly id: string | undefined;
  readonly title: string;
  readonly pictures: { readonly loaded: number; readonly failed: number };
  /** Lines of the page that stand in place of a picture. */
  readonly named: readonly string[];
}

export class ManualView implements Disposable {
  private readonly extension: Uri;
  private readonly client: BaseLanguageClient;
  private panel: WebviewPanel | undefined;
  private source: string | undefined;
  private answer: ManualAnswer | null = null;
  private shown: string | undefined;
  private inSight: string | undefined;
  private asked = 0;
  private body = "";
  private mayLoad: ManualParams["pictures"];
  private pictures = { loaded: 0, failed: 0 };

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
    this.source = this.client.code2ProtocolConverter.asUri(editor.document.uri);
    if (!this.panel) {
      this.panel = window.createWebviewPanel(
        "stripdown.manual",
        l10n.t("Manual"),
        { viewColumn: ViewColumn.Beside, preserveFocus: true },
        {
          enableScripts: true,
          enableFindWidget: true,
          localResourceRoots: this.roots("no disk"),
        },
      );
      this.panel.onDidDispose(() => {
        this.panel = undefined;
        this.body = "";
        this.mayLoad = undefined;
      });
      this.panel.webview.onDidReceiveMessage((message: FromPage) => {
        void this.hears(message);
      });
    }
    this.panel.reveal(ViewColumn.Beside, true);
    await this.load(editor);
  }

  again(): void {
    const editor = window.visibleTextEditors.find(
      ({ document }) => this.client.code2ProtocolConverter.asUri(document.uri) === this.source,
    );
    if (this.panel) void this.load(editor);
  }

  follow(editor: TextEditor): void {
    if (!this.panel) return;
    const uri = this.client.code2ProtocolConverter.asUri(editor.document.uri);
    if (uri !== this.source) {
      this.source = uri;
      void this.load(editor);
      return;
    }
    this.show(this.markFor(editor));
  }

  /** The line that the page was asked to show and that it has in sight; `id` is undefined until it has. */
  shows(): ManualShows | undefined {
    return (
      this.panel && {
        id: this.inSight === this.shown ? this.shown : undefined,
        title: this.answer?.title ?? "",
        pictures: this.pictures,
        named: this.body.match(/(?<=<p class="note">)[^<]*(?=<)/g) ?? [],
      }
    );
  }

  /** What the page may load files from: our own, and the workspace where pictures of it may be shown. */
  private roots(pictures: ManualParams["pictures"]): Uri[] {
    return [
      Uri.joinPath(this.extension, "client", "webview"),
      ...(pictures === "shown" ? (workspace.workspaceFolders ?? []).map(({ uri }) => uri) : []),
    ];
  }

  /** The server names pictures by number; the page loads each from the address that the editor gives it. */
  private withPictures({ body, pictures }: ManualAnswer, { webview }: WebviewPanel): string {
    return body.replace(/(?<= (?:src|href)=")picture:(\d+)(?=")/g, (_, number: string) => {
      const uri = pictures[Number(number)];
      return uri === undefined ? "" : escaped(webview.asWebviewUri(Uri.parse(uri)).toString());
    });
  }

  private async load(editor: TextEditor | undefined): Promise<void> {
    const pictures = allowed(this.source!),
      question = ++this.asked,
      answer = await this.client
        .sendRequest<ManualAnswer | null>(manualRequest, { uri: this.source!, pictures } satisfies ManualParams)
        .catch(() => null);
    if (question !== this.asked || !this.panel) return;
    this.answer = answer;
    this.panel.title = l10n.t("Manual");
    if (this.mayLoad !== pictures) {
      this.mayLoad = pictures;
      this.panel.webview.options = { ...this.panel.webview.options, localResourceRoots: this.roots(pictures) };
    }
    const body = answer
      ? this.withPictures(answer, this.panel)
      : `<p>${escaped(l10n.t("This file has no procedure to print"))}</p>`;
    // A page that is there is changed in place, so that it does not lose its place.
    if (this.body === "")
      this.panel.webview.html = pageFor(this.panel.webview, this.extension, {
        title: answer?.title ?? "",
        body,
        style: answer?.style ?? "",
        script: "manual.js",
        styleSheet: "manual.css",
      });
    else if (body !== this.body) void this.panel.webview.postMessage({ kind: "body", body });
    this.body = body;
    this.mark();
    if (editor) this.show(this.markFor(editor));
  }

  private mark(): void {
    void this.panel?.webview.postMessage({ kind: "marks", ids: this.answer?.marks.map(({ id }) => id) ?? [] });
  }

  /** The last printed line whose text begins at or above the cursor. */
  private markFor(editor: TextEditor): string | undefined {
    const { line } = editor.selection.active;
    let best: { id: string; line: number } | undefined;
    for (const { id, spot } of this.answer?.marks ?? []) {
      if (spot.uri !== this.source || spot.start.line > line || (best && spot.start.line < best.line)) continue;
      if (!best || spot.start.line > best.line || /line-/.test(id) !== /line-/.test(best.id))
        best = { id, line: spot.start.line };
    }
    return best?.id;
  }

  private show(id: string | undefined): void {
    this.shown = id;
    if (id !== undefined) void this.panel?.webview.postMessage({ kind: "show", id });
  }

  private async hears(message: FromPage): Promise<void> {
    // What was sent before the page listened is sent again.
    if (message.kind === "ready") {
      this.mark();
      this.show(this.shown);
      return;
    }
    if (message.kind === "pictures") {
      this.pictures = message;
      return;
    }
    if (message.kind === "shown") {
      this.inSight = message.id;
      return;
    }
    const spot = this.answer?.marks.find(({ id }) => id === message.id)?.spot;
    if (!spot) return;
    if (message.kind === "open") {
      await goTo(spot.uri, spot.start);
      return;
    }
    const editor = window.visibleTextEditors.find(
        ({ document }) => this.client.code2ProtocolConverter.asUri(document.uri) === spot.uri,
      ),
      at = positionOf(spot.start);
    if (editor && !editor.visibleRanges.some((range) => range.contains(at)))
      editor.revealRange(new Range(at, at), TextEditorRevealType.AtTop);
  }
}
