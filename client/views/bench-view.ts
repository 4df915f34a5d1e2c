// The bench at the cursor, as a tree: what is on, off, still in, which precautions were taken, what nobody has considered. A click goes to
// the declaration.

import {
  EventEmitter,
  l10n,
  ThemeIcon,
  TreeItem,
  TreeItemCollapsibleState,
  window,
  type Disposable,
  type TextEditor,
  type TreeDataProvider,
  type TreeView,
} from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import {
  benchRequest,
  commandNames,
  type AtPlace,
  type BenchAnswer,
  type BenchItem,
  type BenchSection,
} from "../../shared/protocol.ts";

type Node = {
  readonly label: string;
  readonly detail?: string;
  readonly icon?: string;
  readonly section?: BenchSection;
  readonly item?: BenchItem;
};

const icons: Readonly<Record<string, string>> = {
  held: "lock",
  on: "layers",
  away: "package",
  tray: "inbox",
  fluids: "beaker",
  precautions: "shield",
  lapsed: "history",
  temporary: "pin",
};

export class BenchView implements TreeDataProvider<Node>, Disposable {
  private readonly client: BaseLanguageClient;
  private readonly changes = new EventEmitter<void>();
  private readonly view: TreeView<Node>;
  private answer: BenchAnswer | null = null;
  private editor: TextEditor | undefined;
  private asked = 0;
  private pending: Promise<void> = Promise.resolve();
  readonly onDidChangeTreeData = this.changes.event;

  constructor(client: BaseLanguageClient) {
    this.client = client;
    this.view = window.createTreeView("stripdown.bench", { treeDataProvider: this, showCollapseAll: true });
  }

  dispose(): void {
    this.view.dispose();
    this.changes.dispose();
  }

  /** Asks for the bench at the editor's cursor; an answer that a later question overtook is dropped. */
  follow(editor: TextEditor): void {
    this.editor = editor;
    if (!this.client.isRunning()) return;
    const question = ++this.asked,
      { line, character } = editor.selection.active,
      params: AtPlace = {
        uri: this.client.code2ProtocolConverter.asUri(editor.document.uri),
        position: { line, character },
      };
    this.pending = this.client.sendRequest<BenchAnswer | null>(benchRequest, params).then(
      (answer) => {
        if (question !== this.asked) return;
        this.answer = answer;
        this.view.description = answer
          ? answer.line === undefined
            ? l10n.t("at the start")
            : l10n.t("after line {0}", answer.line)
          : "";
        this.changes.fire();
      },
      () => undefined,
    );
  }

  again(): void {
    if (this.editor) this.follow(this.editor);
  }

  /** All that the view shows, a line each: for the clipboard, a screen reader, a test. */
  async text(): Promise<string> {
    await this.pending;
    return this.getChildren()
      .flatMap((node) => [
        node.detail ? `${node.label}: ${node.detail}` : node.label,
        ...this.getChildren(node).map(
          (child) => `  ${child.item?.detail ? `${child.label}: ${child.item.detail}` : child.label}`,
        ),
      ])
      .join("\n");
  }

  getChildren(node?: Node): Node[] {
    if (node?.section) return node.section.items.map((item) => ({ label: item.name, item }));
    if (node) return [];
    const { answer } = this;
    if (!answer) return [{ label: l10n.t("Put the cursor into a procedure"), icon: "info" }];
    return [
      {
        label: answer.procedure,
        detail: [answer.step, answer.build].filter(Boolean).join(" · "),
        icon: "list-ordered",
      },
      ...(answer.position === "" ? [] : [{ label: l10n.t("Position"), detail: answer.position, icon: "sync" }]),
      ...(answer.assumes
        ? [
            {
              label: l10n.t("Rests on refused acts"),
              detail: l10n.t("see the findings"),
              icon: "warning",
            },
          ]
        : []),
      ...(answer.notConsidered.length === 0
        ? []
        : [
            {
              label: l10n.t("Hazards that nobody considered"),
              detail: answer.notConsidered.join(", "),
              icon: "question",
            },
          ]),
      ...answer.sections.map((section) => ({
        label: l10n.t(section.title),
        detail: String(section.items.length),
        section,
        icon: icons[section.id] ?? "circle-outline",
      })),
    ];
  }

  getTreeItem({ label, detail, icon, section, item }: Node): TreeItem {
    const open = section && ["held", "away", "precautions", "lapsed"].includes(section.id);
    const shown = new TreeItem(
      label,
      section
        ? open
          ? TreeItemCollapsibleState.Expanded
          : TreeItemCollapsibleState.Collapsed
        : TreeItemCollapsibleState.None,
    );
    shown.description = item?.detail ?? detail ?? "";
    if (icon) shown.iconPath = new ThemeIcon(icon);
    // A narrow view cuts what stands behind.
    shown.tooltip = [label, shown.description].filter(Boolean).join(": ");
    shown.accessibilityInformation = { label: [label, shown.description].filter(Boolean).join(", ") };
    if (section) shown.id = section.id;
    if (item)
      shown.command = {
        command: commandNames.goTo,
        title: l10n.t("Go to its declaration"),
        arguments: [item.spot.uri, item.spot.start],
      };
    return shown;
  }
}
