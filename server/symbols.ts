// What the name at a place stands for, and every place that speaks of it. One name of a unit means one thing in all procedures for it.

import { eachItem, unitNames, unitOfProcedure, type Checked, type Item, type SourceFile, type Span } from "../language/index.ts";

export interface Occurrence {
  /** The name without its piece. */
  readonly id: string;
  readonly span: Span;
  readonly declares: boolean;
  /** The declaration, as file and offset: two occurrences of one symbol have the same. */
  readonly symbol: string;
  readonly declaration: Span;
}

const known = new WeakMap<Checked, Map<string, readonly Occurrence[]>>();

/** Every name in a file that could be resolved. */
export function occurrencesIn(checked: Checked, path: string): readonly Occurrence[] {
  let byFile = known.get(checked);
  if (!byFile) known.set(checked, (byFile = new Map()));
  let list = byFile.get(path);
  if (!list) { const file = checked.project.files.get(path); byFile.set(path, (list = file ? read(checked, file) : [])); }
  return list;
}

export function symbolAt(checked: Checked, path: string, offset: number): Occurrence | undefined {
  return occurrencesIn(checked, path).find(({ span }) => span.start <= offset && offset <= span.end);
}

export function occurrencesOf(checked: Checked, symbol: string): Occurrence[] {
  return [...checked.project.files.keys()].flatMap((path) => occurrencesIn(checked, path).filter((one) => one.symbol === symbol));
}

function read(checked: Checked, file: SourceFile): Occurrence[] {
  const found: Occurrence[] = [], { tokens } = file.tree.scan, seen = checked.project.seen(file.path);
  for (const top of file.tree.items) {
    const inside = scopeOf(checked, file, top), steps = new Map<string, Span>();
    eachItem([top], (item) => { if (item.entry?.word === "step" || item.entry?.word === "measure") for (const argument of item.arguments) if (argument.declares) steps.set(tokens[argument.first]!.text, spanOf(file, argument.first)); });
    eachItem([top], (item) => {
      for (const argument of item.arguments) {
        if (argument.slot !== "name" && argument.slot !== "item") continue;
        const token = tokens[argument.first]!, dot = token.text.indexOf("."), id = dot < 0 ? token.text : token.text.slice(0, dot), at = spanOf(file, argument.first, dot < 0 ? undefined : dot);
        const declaration = argument.declares ? at : (inside.get(id) ?? steps.get(id) ?? seen.get(id)?.[0]?.at);
        if (declaration) found.push({ id, span: at, declares: argument.declares, symbol: `${declaration.file} ${declaration.start}`, declaration });
      }
    });
  }
  return found;
}

/** The names of the unit that an item at the top is, or is for. */
function scopeOf(checked: Checked, file: SourceFile, top: Item): ReadonlyMap<string, Span> {
  const scope = new Map<string, Span>();
  let source = file, unit: Item | undefined = top.entry?.word === "unit" ? top : undefined;
  if (top.entry?.word === "procedure") {
    const id = unitOfProcedure(file, top), declaration = id === undefined ? undefined : checked.project.seen(file.path).get(id)?.find((d) => d.word === "unit");
    source = (declaration && checked.project.files.get(declaration.file)) ?? file;
    unit = declaration?.item;
  }
  if (!unit) return scope;
  for (const [id, list] of unitNames(source, unit).things) { const first = list[0]!; scope.set(id, { file: first.source.path, start: first.start, end: first.end }); }
  const { tokens } = source.tree.scan;
  eachItem(unit.block?.items ?? [], (item) => {
    if (item.entry?.word !== "positions" && item.entry?.word !== "variants" && item.entry?.word !== "option" && item.entry?.word !== "temporary") return;
    for (const argument of item.arguments) if (argument.declares && !scope.has(tokens[argument.first]!.text)) scope.set(tokens[argument.first]!.text, spanOf(source, argument.first));
  });
  return scope;
}

function spanOf(file: SourceFile, index: number, length?: number): Span {
  const token = file.tree.scan.tokens[index]!;
  return { file: file.path, start: token.startOffset, end: length === undefined ? token.endOffset! + 1 : token.startOffset + length };
}
