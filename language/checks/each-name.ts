// Walks through every name of a file: what each is due to stand for, and the unit whose names hold there. It looks nothing up.

import type { Project, SourceFile } from "../names/project.ts";
import { precautions } from "../tables/index.ts";
import type { Item, Token } from "../syntax/index.ts";
import type { Entry } from "../vocabulary/index.ts";
import { dueName, type Due } from "./due-names.ts";
import { unitNames, unitOfProcedure, type UnitNames } from "./space-of-names.ts";

export type FullDue = Due | "reading" | "choice";

export interface NameVisitor {
  /** A declaration at the top begins: the unit whose names hold in it, undefined where there is none. */
  enter?(unit: UnitNames | undefined, unitId: string | undefined, item: Item): void;
  /** A name that refers to something declared elsewhere. */
  name(token: Token, due: FullDue, item: Item): void;
  /** A name that is declared here; the name of an inspection counts as such. */
  declares?(token: Token, item: Item): void;
}

const isPrecaution = (word: string): boolean => Object.hasOwn(precautions, word);

const dues = new Map<Entry, Map<string, Due>>();

/** The row of the table for a word and what stands before the name, looked up once. */
function dueOf(entry: Entry, context: string, earlier: string): Due {
  let byContext = dues.get(entry);
  if (!byContext) dues.set(entry, (byContext = new Map()));
  // Only behind `from` does the word before it matter.
  const key = context === "from" && earlier === "repeat" ? "repeat from" : context;
  let due = byContext.get(key);
  if (due === undefined)
    byContext.set(key, (due = dueName(entry.place, entry.word, context, earlier, isPrecaution(entry.word))));
  return due;
}

/**
 * Names in heads that could not be read are left out, and so is the body of a procedure whose unit is unknown. With an offset `around`:
 * those alone that stand in the items around it.
 */
export function eachName(project: Project, file: SourceFile, visitor: NameVisitor, around?: number): void {
  const { tokens } = file.tree.scan,
    seen = project.seen(file.path),
    tellsDeclared = visitor.declares !== undefined;
  const concerns = (item: Item): boolean =>
    around === undefined || (tokens[item.first]!.startOffset <= around && around <= tokens[item.last]!.endOffset! + 1);
  for (const item of file.tree.items) if (concerns(item)) top(item);

  function top(item: Item): void {
    const word = item.entry?.word;
    if (word === undefined) return;
    if (word === "procedure") {
      visitor.enter?.(undefined, undefined, item);
      const id = unitOfProcedure(file, item),
        declaration = id === undefined ? undefined : seen.get(id)?.find((one) => one.word === "unit");
      if (!item.broken) head(item);
      if (!declaration) return; // the unit is what is unknown: of its parts nothing can be said
      visitor.enter?.(unitNames(project.files.get(declaration.file)!, declaration.item), declaration.id, item);
      walk(item.block?.items ?? []);
      return;
    }
    if (word === "unit")
      visitor.enter?.(unitNames(file, item), tokens[item.arguments[0]?.first ?? item.first]!.text, item);
    else visitor.enter?.(undefined, undefined, item);
    if (word === "use") return;
    if (!item.broken) head(item);
    walk(item.block?.items ?? []);
  }

  function walk(items: readonly Item[]): void {
    for (let k = 0; k < items.length; k++) {
      const item = items[k]!;
      if (!item.entry || (around !== undefined && !concerns(item))) continue;
      if (!item.broken && holdsName(item)) head(item);
      if (item.block) walk(item.block.items);
    }
  }

  /** Most heads hold no name that the visitor is told: they declare one, or say figures and texts. */
  function holdsName({ arguments: given }: Item): boolean {
    for (let k = 0; k < given.length; k++) {
      const { slot, declares } = given[k]!;
      if (declares ? tellsDeclared : slot === "name" || slot === "item") return true;
    }
    return false;
  }

  /** The names of one head. */
  function head(item: Item): void {
    const { arguments: given } = item,
      { word } = item.entry!,
      end = item.block ? item.block.first : item.last + 1;
    let context = word,
      earlier = "",
      i = item.first + 1;
    for (let k = 0; k < given.length; k++) {
      const { slot, declares, first, last } = given[k]!;
      // What stands between two arguments tells what the next one is due to be.
      for (; i < first; i++) {
        const { text } = tokens[i]!;
        if (joining.has(text)) continue;
        earlier = context;
        context = text;
      }
      i = last + 1;
      const token = tokens[first]!;
      if (declares) visitor.declares?.(token, item);
      if (declares || (slot !== "name" && slot !== "item")) {
        if (slot === "string") {
          earlier = context;
          context = word;
        }
        continue;
      }
      const due = dueOf(item.entry!, context, earlier),
        next = i < end ? tokens[i]?.text : undefined;
      if (word === "inspect" && context === "inspect" && next === "on") {
        visitor.declares?.(token, item);
        continue;
      }
      visitor.name(token, due === "condition" ? conditionDue(next) : due, item);
    }
  }
}

const joining: ReadonlySet<string> = new Set([",", "of", "and", "or", "fails", "removed"]);

function conditionDue(next: string | undefined): "reading" | "choice" | "thing" {
  return next === "fails" ? "reading" : next === "removed" ? "thing" : "choice";
}
