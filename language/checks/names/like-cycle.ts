// Things that are each said to be like the other, and units that hold themselves.

import type { Project, SourceFile } from "../../names/project.ts";
import { eachItem, type Item } from "../../syntax/index.ts";
import { accept, cursorOf, takeName } from "../../model/cursor.ts";
import { check, type Say } from "../check.ts";
import { holdsWord } from "../items-of.ts";
import { unitNames } from "../space-of-names.ts";

export default check({
  code: "names/like-cycle",
  title: "Each said to be like the other",
  severity: "error",
  why: "What is like itself says nothing, and a unit that is one of its own parts never ends.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot  like cover }
    #      ^^^ lid is like cover is like lid: none of them says what it is
      part cover "Cover" { rests on foot  like lid }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      part cover "Cover" { rests on foot  like lid }
    }
  `,
  file(file, say, { project }) {
    // Most files speak of neither, and then nothing has to be walked.
    if (!holdsWord(file, "like") && !holdsWord(file, "is")) return;
    for (const { word, item, at, id } of file.declarations) {
      if (word === "unit") {
        rings([...unitNames(file, item).things.values()].flat(), file, project, item, say);
        const ring = holdsItself(file, item, id, project);
        if (ring) say({ at, says: `${ring.join(" has a part that is unit ")}: the unit would hold itself` });
      } else if (word === "fastener" || word === "hazard")
        rings([{ id, word, item, source: file, start: at.start, end: at.end }], file, project, undefined, say);
    }
  },
});

interface One {
  readonly id: string;
  readonly word: string;
  readonly item: Item;
  readonly source: SourceFile;
  readonly start: number;
  readonly end: number;
}

/** Rings of `like` that one of these begins: each ring is said once, at the one that stands first. */
function rings(all: readonly One[], file: SourceFile, project: Project, unit: Item | undefined, say: Say): void {
  for (const start of all) {
    const ring: One[] = [];
    for (let one: One | undefined = start; one && !ring.some((had) => had.item === one!.item); one = likeOf(one)) {
      ring.push(one);
      const next = likeOf(one);
      if (next?.item !== start.item) continue;
      if (
        ring.some(
          (other) =>
            other.source.path < start.source.path || (other.source === start.source && other.start < start.start),
        )
      )
        break;
      const names = [...ring, start].map((each) => each.id);
      say({
        at: { file: file.path, start: start.start, end: start.end },
        says:
          ring.length === 1
            ? `${start.id} is said to be like itself`
            : `${names.join(" is like ")}: none of them says what it is`,
        because: ring.slice(1).map((each) => ({
          says: `${each.id} is declared here`,
          at: { file: each.source.path, start: each.start, end: each.end },
        })),
      });
      break;
    }
  }

  function likeOf({ item, source, word }: One): One | undefined {
    let name: string | undefined;
    eachItem(item.block?.items ?? [], (one) => {
      if (one.entry?.word === "like") name = takeName(cursorOf({ item: one, source }))?.text;
    });
    if (name === undefined) return undefined;
    const own =
      unit &&
      unitNames(file, unit)
        .things.get(name)
        ?.find((one) => one.word === word);
    if (own) return own;
    const type = project
        .seen(source.path)
        .get(name)
        ?.find((one) => one.word === word),
      from = type && project.files.get(type.file);
    return (
      type &&
      from && { id: type.id, word: type.word, item: type.item, source: from, start: type.at.start, end: type.at.end }
    );
  }
}

/** The shortest ring of units inside units from this one back to itself, said by the first of them in name order. */
function holdsItself(file: SourceFile, item: Item, id: string, project: Project): readonly string[] | undefined {
  const queue: {
      readonly id: string;
      readonly item: Item;
      readonly source: SourceFile;
      readonly path: readonly string[];
    }[] = [{ id, item, source: file, path: [id] }],
    seen = new Set<Item>();
  for (const one of queue) {
    for (const inner of insideOf(one.item, one.source, project)) {
      if (inner.item === item) return one.path.some((name) => name < id) ? undefined : [...one.path, id];
      if (seen.has(inner.item)) continue;
      seen.add(inner.item);
      queue.push({ ...inner, path: [...one.path, inner.id] });
    }
  }
  return undefined;
}

function insideOf(
  item: Item,
  source: SourceFile,
  project: Project,
): { readonly id: string; readonly item: Item; readonly source: SourceFile }[] {
  const found: { readonly id: string; readonly item: Item; readonly source: SourceFile }[] = [];
  eachItem(item.block?.items ?? [], (one) => {
    if (one.entry?.word !== "is" || one.entry.place !== "part") return;
    const c = cursorOf({ item: one, source });
    accept(c, "unit");
    const name = takeName(c)?.text,
      unit =
        name === undefined
          ? undefined
          : project
              .seen(source.path)
              .get(name)
              ?.find((each) => each.word === "unit"),
      from = unit && project.files.get(unit.file);
    if (unit && from) found.push({ id: unit.id, item: unit.item, source: from });
  });
  return found;
}
