// Proposals for what is being typed; a name from a library that the file does not use yet brings its `use` line along.

import {
  CompletionItemKind,
  InsertTextFormat,
  MarkupKind,
  type CompletionItem,
  type CompletionList,
  type Range,
  type TextEdit as LspEdit,
} from "vscode-languageserver";
import {
  completionAt,
  keptMoment,
  momentAt,
  relativeTo,
  slotAt,
  useLine,
  type Proposal,
} from "../../language/index.ts";
import { feature } from "../feature.ts";
import type { Seen, Session } from "../session.ts";
import { isBelow } from "../uris.ts";

const kinds: Readonly<Record<string, CompletionItemKind>> = {
  part: CompletionItemKind.Field,
  fastener: CompletionItemKind.Property,
  joint: CompletionItemKind.Interface,
  fluid: CompletionItemKind.Variable,
  hazard: CompletionItemKind.Event,
  tool: CompletionItemKind.Module,
  consumable: CompletionItemKind.Value,
  procedure: CompletionItemKind.Function,
  step: CompletionItemKind.Method,
  position: CompletionItemKind.EnumMember,
  unit: CompletionItemKind.Class,
};

export default feature({
  name: "completion",
  abilities: () => ({
    completionProvider: {
      triggerCharacters: [" ", ",", '"', "/"],
      resolveProvider: false,
      completionItem: { labelDetailsSupport: true },
    },
  }),
  start(session, answer) {
    session.connection.onCompletion(
      answer("Completion", ({ textDocument: { uri }, position, context }): CompletionList => {
        const looked = session.seeBest(uri);
        if (!looked) return { isIncomplete: false, items: [] };
        const { checked, file, project } = looked,
          offset = session.offset(file, position),
          paths = pathItems(session, looked, offset);
        if (paths) return { isIncomplete: false, items: paths };
        // A quote or a stroke asks for paths alone.
        if (context?.triggerCharacter === '"' || context?.triggerCharacter === "/")
          return { isIncomplete: false, items: [] };
        const { from, proposals } = completionAt(
          {
            project: checked.project,
            moment(of, at) {
              const last = project.last();
              return (last && keptMoment(last, checked.project, of, at)) ?? momentAt(project.bestActs(), of.path, at);
            },
          },
          file,
          offset,
        );
        const range = session.range(checked, { file: file.path, start: from, end: offset });
        // Where the client knows it, the place is told once: of a thousand names it is half of what is sent.
        const once = session.client.textDocument?.completion?.completionList?.itemDefaults?.includes("editRange");
        return {
          isIncomplete: false,
          ...(once === true ? { itemDefaults: { editRange: range } } : {}),
          items: proposals.map((one) => item(session, looked, one, once === true ? undefined : range)),
        };
      }),
    );
  },
});

/** `range` undefined: it is told once for all. */
function item(session: Session, { checked, file }: Seen, one: Proposal, range: Range | undefined): CompletionItem {
  const completion = session.client.textDocument?.completion,
    snippets = completion?.completionItem?.snippetSupport === true,
    text = snippets && one.snippet !== undefined ? one.snippet : one.label;
  const kind =
    one.is === "word"
      ? one.snippet === undefined
        ? CompletionItemKind.Keyword
        : CompletionItemKind.Snippet
      : one.is === "unit"
        ? CompletionItemKind.Unit
        : one.is === "kind"
          ? CompletionItemKind.EnumMember
          : one.is === "file"
            ? CompletionItemKind.File
            : (kinds[one.of] ?? CompletionItemKind.Text);
  // Beside the name in the list where the client can, so that what is still in is seen of all at once: else of the chosen one alone.
  const beside = one.is === "name" && completion?.completionItem?.labelDetailsSupport === true,
    description =
      one.use === undefined ? (beside ? one.detail : "") : `use ${one.use.slice(one.use.lastIndexOf("/") + 1)}`;
  return {
    label: one.label,
    kind,
    ...(one.detail === "" || (beside && one.use === undefined) ? {} : { detail: one.detail }),
    ...(description === "" ? {} : { labelDetails: { description } }),
    sortText: `${String(one.rank).padStart(3, "0")}${one.label}`,
    // A client matches what is typed against this text: the other names of the trade stand in it.
    filterText: [one.label, ...one.also].join(" "),
    ...(range ? { textEdit: { range, newText: text } } : text === one.label ? {} : { textEditText: text }),
    ...(text !== one.label ? { insertTextFormat: InsertTextFormat.Snippet } : {}),
    ...(one.about === "" ? {} : { documentation: { kind: MarkupKind.Markdown, value: one.about } }),
    ...(one.use === undefined
      ? {}
      : {
          additionalTextEdits: [edit(session, checked, useLine(file, one.use))],
        }),
  };
}

const edit = (
  session: Session,
  checked: Seen["checked"],
  { file, start, end, text }: { file: string; start: number; end: number; text: string },
): LspEdit => ({ range: session.range(checked, { file, start, end }), newText: text });

/** Files that a `use`, a photo or a video may name; undefined where no such text stands. */
function pathItems(session: Session, { file, checked, project }: Seen, offset: number): CompletionItem[] | undefined {
  const slot = slotAt(file.tree, offset),
    token = slot?.text,
    word = slot?.item?.entry?.word;
  if (!token || !slot?.item || (word !== "use" && word !== "photo" && word !== "video")) return undefined;
  const first = file.tree.scan.tokens[slot.item.first + 1];
  if (first !== token) return [];
  const endings =
    word === "use"
      ? [".strip"]
      : word === "photo"
        ? [".jpg", ".jpeg", ".png", ".svg", ".webp", ".gif"]
        : [".mp4", ".webm", ".mov"];
  const open = token.startOffset + 1,
    close = token.image.length > 1 && token.image.endsWith('"') ? token.endOffset! : token.endOffset! + 1;
  return endings
    .flatMap((ending) => session.files.list(project.folder, ending))
    .filter((path) => path !== file.path && isBelow(path, project.folder))
    .map((path): CompletionItem => {
      const text = relativeTo(file.path, path);
      return {
        label: text,
        kind: CompletionItemKind.File,
        filterText: text,
        sortText: `${String(text.split("../").length).padStart(2, "0")}${text}`,
        textEdit: {
          range: session.range(checked, { file: file.path, start: open, end: Math.max(offset, close) }),
          newText: text,
        },
      };
    });
}
