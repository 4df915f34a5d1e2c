// The bench at the cursor, as a tree: what is on, off, still in, which precautions stand. A click goes to the declaration.

import { EventEmitter, l10n, Position, Range, TreeItem, TreeItemCollapsibleState, Uri, type TextEditor, type TreeDataProvider } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import { benchRequest, type BenchAnswer, type BenchItem, type BenchParams, type BenchSection } from "../../shared/protocol.ts";

type Node = { readonly label: string; readonly section?: BenchSection; readonly item?: BenchItem };

export class BenchView implements TreeDataProvider<Node> {
  private readonly client: BaseLanguageClient;
  private readonly changes = new EventEmitter<void>();
  private answer: BenchAnswer | null = null;
  private asked = 0;
  readonly onDidChangeTreeData = this.changes.event;

  constructor(client: BaseLanguageClient) {
    this.client = client;
  }

  /** Asks for the bench at the editor's cursor; an answer that a later question overtook is dropped. */
  follow(editor: TextEditor): void {
    if (!this.client.isRunning()) return;
    const question = ++this.asked, { line, character } = editor.selection.active, params: BenchParams = { uri: this.client.code2ProtocolConverter.asUri(editor.document.uri), line, character };
    void this.client.sendRequest<BenchAnswer | null>(benchRequest, params).then((answer) => {
      if (question !== this.asked) return;
      this.answer = answer;
      this.changes.fire();
    }, () => undefined);
  }

  getChildren(node?: Node): Node[] {
    if (node?.section) return node.section.items.map((item) => ({ label: item.name, item }));
    if (node) return [];
    const { answer } = this;
    if (!answer) return [{ label: l10n.t("Put the cursor into a procedure") }];
    return [
      { label: answer.after === "" ? l10n.t("{0}: at the start", answer.procedure) : l10n.t("{0}: after {1}", answer.procedure, answer.after) },
      ...(answer.position === "" ? [] : [{ label: l10n.t("Position: {0}", answer.position) }]),
      ...answer.sections.map((section) => ({ label: `${section.title} (${section.items.length})`, section })),
      ...(answer.notConsidered.length === 0 ? [] : [{ label: l10n.t("Hazards not considered: {0}", answer.notConsidered.join(", ")) }]),
    ];
  }

  getTreeItem({ label, section, item }: Node): TreeItem {
    const shown = new TreeItem(label, section ? TreeItemCollapsibleState.Expanded : TreeItemCollapsibleState.None);
    if (item) {
      const at = new Position(item.line, item.character);
      shown.description = item.detail;
      shown.command = { command: "vscode.open", title: l10n.t("Go to its declaration"), arguments: [Uri.parse(item.uri), { selection: new Range(at, at) }] };
    }
    return shown;
  }
}
