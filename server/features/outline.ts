// Symbols of a document and of the workspace, and folding, from the tree.

import { FoldingRangeKind, SymbolKind, type DocumentSymbol, type FoldingRange, type WorkspaceSymbol } from "vscode-languageserver";
import { eachItem, type Checked, type Item, type SourceFile } from "../../language/index.ts";
import { rangeOf, uriOf } from "../places.ts";

const kinds: Readonly<Record<string, SymbolKind>> = {
  unit: SymbolKind.Class, procedure: SymbolKind.Function, step: SymbolKind.Method, part: SymbolKind.Field, fastener: SymbolKind.Property, joint: SymbolKind.Interface,
  fluid: SymbolKind.Variable, hazard: SymbolKind.Event, tool: SymbolKind.Constant, consumable: SymbolKind.Constant, role: SymbolKind.Enum, "torque-table": SymbolKind.Array, refit: SymbolKind.Method, finish: SymbolKind.Method,
};

export function documentSymbols(checked: Checked, path: string): DocumentSymbol[] {
  const file = checked.project.files.get(path);
  return file ? symbolsIn(checked, file, file.tree.items) : [];
}

function symbolsIn(checked: Checked, file: SourceFile, items: readonly Item[]): DocumentSymbol[] {
  return items.flatMap((item) => {
    const word = item.entry?.word ?? "", kind = kinds[word], inner = item.block ? symbolsIn(checked, file, item.block.items) : [];
    if (kind === undefined) return inner;
    const { tokens } = file.tree.scan, own = item.arguments.find((a) => a.declares), text = item.arguments.find((a) => a.slot === "string");
    const id = own ? tokens[own.first]!.text : "", title = text ? tokens[text.first]!.image.replace(/^"+|"+$/g, "") : "", nameToken = tokens[own?.first ?? text?.first ?? item.first]!;
    const range = rangeOf(checked, { file: path(file), start: tokens[item.first]!.startOffset, end: tokens[item.last]!.endOffset! + 1 });
    return [{ name: id || title || word, detail: id && title ? title : word, kind, range, selectionRange: rangeOf(checked, { file: path(file), start: nameToken.startOffset, end: nameToken.endOffset! + 1 }), children: inner }];
  });
}
const path = (file: SourceFile): string => file.path;

export function workspaceSymbols(checked: Checked, query: string): WorkspaceSymbol[] {
  const wanted = query.toLowerCase(), found: WorkspaceSymbol[] = [];
  const visit = (symbols: readonly DocumentSymbol[], uri: string, container: string): void => {
    for (const one of symbols) {
      if (one.name.toLowerCase().includes(wanted) || (one.detail ?? "").toLowerCase().includes(wanted)) found.push({ name: one.name, kind: one.kind, containerName: container, location: { uri, range: one.selectionRange } });
      visit(one.children ?? [], uri, one.name);
    }
  };
  for (const file of checked.project.files.keys()) visit(documentSymbols(checked, file), uriOf(file), "");
  return found.slice(0, 500);
}

export function foldingRanges(checked: Checked, file: string): FoldingRange[] {
  const source = checked.project.files.get(file), found: FoldingRange[] = [];
  if (!source) return found;
  const { tokens, comments } = source.tree.scan, add = (from: number, to: number, kind?: FoldingRangeKind): void => { if (to > from) found.push({ startLine: from, endLine: to, ...(kind ? { kind } : {}) }); };
  eachItem(source.tree.items, (item) => { if (item.block) add(tokens[item.block.first]!.line, tokens[item.block.last]!.line - 1); });
  for (let i = 0; i < comments.length; i++) {
    let j = i;
    while (comments[i]!.ownLine && comments[j + 1]?.ownLine && comments[j + 1]!.line === comments[j]!.line + 1) j++;
    add(comments[i]!.line, comments[j]!.line, FoldingRangeKind.Comment);
    i = j;
  }
  return found;
}

