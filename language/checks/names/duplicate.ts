// Two things of one name. Names under different conditions may repeat: no build has both.

import type { SourceFile } from "../../names/project.ts";
import type { Item, Token } from "../../syntax/index.ts";
import { check, type Draft, type Say } from "../check.ts";
import { unitNames, unitOfProcedure, type Named as Thing, type UnitNames } from "../space-of-names.ts";

interface Said {
  readonly what: string;
  readonly at: Draft["at"];
  readonly under: readonly Item[];
}

export default check({
  code: "names/duplicate",
  title: "Two of one name",
  severity: "error",
  why: "A line that speaks of one of them speaks of the first alone, whichever was meant.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      part lid "Lower lid" { rests on foot }
    #      ^^^ lid is the name of another part already
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      part lower-lid "Lower lid" { rests on foot }
    }
  `,
  file(file, say, { project }) {
    const seen = project.seen(file.path),
      own = new Map<string, Said>();
    for (const declaration of file.declarations) {
      const { word, id, item, at } = declaration;
      if (word === "warn") continue;
      const before =
        own.get(`${word} ${id}`) ?? imported(seen.get(id)?.find((one) => one.word === word && one.file !== file.path));
      if (before) say(twice(id, { what: word, at, under: [] }, before));
      else own.set(`${word} ${id}`, { what: word, at, under: [] });
      if (word === "unit") inUnit(file, item, say);
      else if (word === "procedure") {
        const unit = unitOfProcedure(file, item),
          declared = unit === undefined ? undefined : seen.get(unit)?.find((one) => one.word === "unit"),
          source = declared && project.files.get(declared.file);
        inProcedure(file, item, declared && source ? unitNames(source, declared.item).things : undefined, say);
      }
    }
  },
});

const imported = (declaration: { readonly word: string; readonly at: Draft["at"] } | undefined): Said | undefined =>
  declaration && { what: declaration.word, at: declaration.at, under: [] };

const twice = (id: string, now: Said, before: Said): Draft => ({
  at: now.at,
  says: `${id} is the name of ${before.what === now.what ? `another ${before.what}` : `a ${before.what}`} already`,
  because: [{ says: `${id} is declared here first`, at: before.at }],
});

/** Two names that one build may have both of. Different conditions are taken to exclude each other: a warning would be a guess. */
const together = (a: Said, b: Said): boolean =>
  a.under.length === 0 || b.under.length === 0 || a.under.at(-1) === b.under.at(-1);

function inUnit(file: SourceFile, item: Item, say: Say): void {
  for (const list of unitNames(file, item).repeated) {
    const said = list.map((one): Said => ({
      what: one.word,
      at: { file: file.path, start: one.start, end: one.end },
      under: one.under,
    }));
    for (let i = 1; i < said.length; i++) {
      const before = said.slice(0, i).find((one) => together(one, said[i]!));
      if (before) say(twice(list[0]!.id, said[i]!, before));
    }
  }
}

/** Steps and readings of one procedure, which share the names of the unit. */
function inProcedure(file: SourceFile, item: Item, things: UnitNames["things"] | undefined, say: Say): void {
  const { tokens } = file.tree.scan,
    names = new Map<string, Named>();
  const visit = (items: readonly Item[], under: readonly Item[]): void => {
    for (let i = 0; i < items.length; i++) {
      const one = items[i]!,
        word = one.entry?.word ?? "",
        argument = sortOf(word) === undefined ? undefined : one.arguments.find(({ declares }) => declares),
        token = argument && tokens[argument.first]!,
        thing = token && things?.get(token.text)?.[0];
      // Another word that is read as one of ours, and a line with an error, have been told already.
      if (thing && (one.broken || tokens[one.first]!.text !== word)) continue;
      if (token) {
        const before = names.get(token.text),
          now: Named = { word, token, under };
        if (thing) sayThing(now, thing);
        else if (before && together(saidOf(before), saidOf(now))) say(twice(token.text, saidOf(now), saidOf(before)));
        else names.set(token.text, now);
      }
      // Readings on either side of a choice, or in the strip and in its refit, are one reading taken at two times.
      if (one.block) visit(one.block.items, branches.has(word) ? [...under, one] : under);
    }
  };
  visit(item.block?.items ?? [], []);

  function saidOf({ word, token, under }: Named): Said {
    return {
      what: sortOf(word)!,
      at: { file: file.path, start: token.startOffset, end: token.endOffset! + 1 },
      under,
    };
  }

  function sayThing(now: Named, { word, source, start, end }: Thing): void {
    const { text } = now.token,
      said = twice(text, saidOf(now), { what: word, at: { file: source.path, start, end }, under: [] });
    // Who writes the part where the reading's own name is due means to measure on it.
    say(now.word === "measure" ? { ...said, says: `${said.says}: on it is written measure on ${text}` } : said);
  }
}

interface Named {
  readonly word: string;
  readonly token: Token;
  readonly under: readonly Item[];
}

/** What is named in a procedure, by the word that names it. */
function sortOf(word: string): string | undefined {
  switch (word) {
    case "step":
    case "task":
      return word;
    case "measure":
    case "test":
      return "reading";
    default:
      return undefined;
  }
}

const branches: ReadonlySet<string> = new Set([
  "if",
  "unless",
  "either",
  "or",
  "otherwise",
  "optional",
  "refit",
  "finish",
]);
