// Every name of a file held once against what is declared: what is unknown, and what is used. The checks of the families `names`,
// `tool` and `consumable` word it. One mistake is said once: what rests on a missing file or an unreadable head is left alone.

import type { Declaration, Project, SourceFile } from "../names/project.ts";
import { kept } from "../model/kept.ts";
import { fastenerKinds, fluidKinds, hazardKinds, jointKinds, partKinds } from "../tables/index.ts";
import { eachItem, type Item, type Token } from "../syntax/index.ts";
import type { Due } from "./due-names.ts";
import { eachName, type FullDue } from "./each-name.ts";
import { holdsWord } from "./items-of.ts";
import { pathOf, piecesOf, procedureNames, unitNames, unitOfProcedure, type UnitNames } from "./space-of-names.ts";

export interface Unknown {
  /** Up to the first of the names of a path that nothing has: of `disc.outer` it is `disc` where there is no disc. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly due: Due;
  /** What it is, where the name is known but stands for something else: "fastener". */
  readonly is: string | undefined;
  /** The pieces that there are, where only the piece is unknown. */
  readonly pieces: readonly string[] | undefined;
  /** Names that would do here. */
  readonly candidates: readonly string[];
  /** Display name of the unit that was looked in. */
  readonly unit: string | undefined;
}

export interface Survey {
  readonly unknown: readonly Unknown[];
  /** Ids that are referred to, at whatever they aim, as often as they are. */
  readonly used: readonly string[];
}

type Words = Declaration["word"];
const allKinds: ReadonlySet<string> = new Set(
  [partKinds, fastenerKinds, jointKinds, fluidKinds, hazardKinds].flatMap((table) => Object.keys(table)),
);
const thingClasses: ReadonlySet<string> = new Set(["part", "fastener", "joint", "fluid", "hazard"]);

const surveys = kept<Project, Map<string, Survey>>();

export function surveyOf(project: Project, file: SourceFile): Survey {
  const all = surveys(project, () => new Map());
  let survey = all.get(file.path);
  if (!survey) all.set(file.path, (survey = read(project, file)));
  return survey;
}

const usedIn = kept<Project, ReadonlySet<string>>();

/** Ids that any file of the project speaks of: gathered once, since each file asks. */
export function usedInProject(project: Project): ReadonlySet<string> {
  return usedIn(project, () => {
    const all = new Set<string>();
    for (const file of project.files.values()) for (const id of surveyOf(project, file).used) all.add(id);
    return all;
  });
}

/** Names of the whole project that conditions may speak of: a unit around passes its variants and pieces on. */
const choicesOf = kept<Project, ReadonlySet<string>>();
function allChoices(project: Project): ReadonlySet<string> {
  return choicesOf(project, () => {
    const found = new Set<string>();
    for (const source of project.files.values()) {
      for (const { word, item } of source.declarations) {
        if (word !== "unit") continue;
        const names = unitNames(source, item);
        for (const choice of names.choices) found.add(choice);
        for (const id of names.things.keys()) for (const piece of piecesOf(names, id) ?? []) found.add(piece);
      }
    }
    return found;
  });
}

/** Can everything that the file uses, directly or not, be read? If not, what is missing may be declared there. */
function usesAllRead(project: Project, file: SourceFile): boolean {
  const reached = new Set([file]);
  for (const one of reached) {
    for (const use of one.uses) {
      if (use.problem !== undefined && use.problem !== "cycle") return false;
      const next = project.files.get(use.path);
      if (next) reached.add(next);
    }
  }
  return true;
}

/** What a name inside a part has to be, by what is due. */
const wordsDue: Partial<Record<FullDue, readonly string[]>> = {
  part: ["part"],
  fluid: ["fluid"],
  hazard: ["hazard"],
};

type Found = "known" | "silent" | { readonly is: string | undefined; readonly candidates: readonly string[] };

function read(project: Project, file: SourceFile): Survey {
  const { tokens } = file.tree.scan,
    seen = project.seen(file.path),
    complete = usesAllRead(project, file);
  const unknown: Unknown[] = [],
    used: string[] = [],
    fileDoubtful = new Set<string>();
  // The unit that names are looked up in; undefined at the top of a file and where the unit is unknown.
  let unit: UnitNames | undefined, unitId: string | undefined;

  for (const item of file.tree.items) {
    if (item.entry && !item.broken) continue;
    for (let i = item.first; i <= (item.block ? item.block.first - 1 : item.last); i++)
      fileDoubtful.add(tokens[i]!.text);
  }
  eachName(project, file, {
    enter(names, id) {
      unit = names;
      unitId = id;
    },
    name,
  });
  for (const declaration of holdsWord(file, "piece") ? file.declarations : [])
    if (declaration.word === "unit")
      piecesWithin(unitNames(file, declaration.item), declaration.name || declaration.id, declaration.item);
  return { unknown, used };

  /** `piece 7 { … }` where there are five: what it says would hold for nothing. */
  function piecesWithin(names: UnitNames, title: string, whole: Item): void {
    eachItem(whole.block?.items ?? [], (thing) => {
      if (!thing.block || !thingClasses.has(thing.entry?.word ?? "")) return;
      const labels: Token[] = [];
      eachItem(thing.block.items, (line) => {
        const label = line.arguments[0];
        if (line.entry?.word === "piece" && !line.broken && label) labels.push(tokens[label.first]!);
      });
      const declares = thing.arguments.find((one) => one.declares);
      if (labels.length === 0 || !declares) return;
      const pieces = piecesOf(names, tokens[declares.first]!.text);
      if (!pieces) return;
      for (const token of labels)
        if (!pieces.has(token.text))
          unknown.push({
            text: token.text,
            start: token.startOffset,
            end: token.endOffset! + 1,
            due: "thing",
            is: undefined,
            candidates: [...pieces],
            pieces: [...pieces],
            unit: title,
          });
    });
  }

  function declared(word: Words, id: string): Declaration | undefined {
    return seen.get(id)?.find((one) => one.word === word);
  }

  function name(token: Token, due: FullDue, item: Item): void {
    const { text } = token,
      dot = text.indexOf("."),
      id = dot < 0 ? text : text.slice(0, dot);
    used.push(id);
    if (due === "any" || (dot < 0 && isPlain(id, due))) return;
    // On the way to a thing inside a part it is that part, whatever is due at the end.
    const leads = dot > 0 && wordsDue[due] !== undefined && unit?.things.get(id)?.some((one) => one.word === "part");
    const found = leads ? "known" : find(id, due, item);
    if (found === "known") {
      if (dot > 0 && unit?.things.has(id)) path(token, due);
      return;
    }
    if (found === "silent") return;
    const whole = found.is === undefined ? id : text;
    unknown.push({
      text: whole,
      start: token.startOffset,
      end: whole === text ? token.endOffset! + 1 : token.startOffset + whole.length,
      due: due === "reading" || due === "choice" ? "condition" : due,
      ...found,
      pieces: undefined,
      unit: unitTitle(),
    });
  }

  /** What stands behind a point: a piece, or a thing inside a part that is a unit. */
  function path(token: Token, due: FullDue): void {
    const { found, lost } = pathOf(project, unit!, unitId ?? "", token.text);
    for (const { text } of found) used.push(text);
    const last = found.at(-1),
      says = {
        text: token.text,
        start: token.startOffset,
        end: token.endOffset! + 1,
        due: due === "reading" || due === "choice" ? ("thing" as const) : due,
      };
    if (lost) {
      unknown.push({
        ...says,
        is: undefined,
        candidates: [...lost.pieces, ...lost.inside].map((one) => `${lost.before}.${one}`),
        pieces: lost.inside.length === 0 ? lost.pieces : undefined,
        unit: titleOf(lost.unit),
      });
      return;
    }
    const words = last && found.length > 1 ? wordsDue[due] : undefined;
    if (!words || last!.things.some(({ word }) => words.includes(word))) return;
    unknown.push({
      ...says,
      is: last!.things[0]!.word,
      candidates: [],
      pieces: undefined,
      unit: titleOf(last!.unit),
    });
  }

  function unitTitle(): string | undefined {
    return unitId === undefined ? undefined : titleOf(unitId);
  }

  function titleOf(id: string): string {
    return declared("unit", id)?.name || id;
  }

  /** Most names are that of a thing where one is due: asked first, since for all others much is laid out that they do not need. */
  function isPlain(id: string, due: FullDue): boolean {
    const thing = due === "thing" || due === "part" ? unit?.things.get(id) : undefined;
    return thing !== undefined && (due === "thing" || thing[0]!.word === "part");
  }

  function find(id: string, due: FullDue, item: Item): Found {
    if (isPlain(id, due)) return "known";
    const thing = unit?.things.get(id);
    const is = thing?.[0]?.word ?? seen.get(id)?.[0]?.word;
    const wrong = (candidates: Iterable<string>): Found =>
      (unit?.doubtful.has(id) ?? false) || fileDoubtful.has(id) || (is === undefined && !complete && !local.has(due))
        ? "silent"
        : { is, candidates: [...candidates] };
    const things = (words: readonly string[]): Found => {
      if (!unit) return "silent"; // a type at the top: its names mean something where it is taken over
      return thing?.some((one) => words.includes(one.word))
        ? "known"
        : wrong(
            [...unit.things].filter(([, list]) => list.some((one) => words.includes(one.word))).map(([name]) => name),
          );
    };
    const library = (words: readonly Words[]): Found =>
      seen.get(id)?.some((one) => words.includes(one.word))
        ? "known"
        : wrong(
            [...seen]
              .filter(([name, list]) => name !== "" && list.some((one) => words.includes(one.word)))
              .map(([name]) => name),
          );
    switch (due) {
      case "part":
        return things(["part"]);
      case "thing":
        return thing ? "known" : things([...thingClasses]);
      case "fluid":
        return things(["fluid"]);
      case "hazard":
        return things(["hazard"]);
      case "position":
        return !unit ? "silent" : unit.positions.has(id) ? "known" : wrong(unit.positions);
      case "step":
        return unitId === undefined ? "silent" : named().steps.has(id) ? "known" : wrong(named().steps);
      case "step or thing":
        return thing || named().steps.has(id)
          ? "known"
          : unit
            ? wrong([...named().steps, ...unit.things.keys()])
            : "silent";
      case "procedure":
        return library(["procedure"]);
      case "procedure or step":
        return named().steps.has(id) ? "known" : library(["procedure"]);
      case "unit":
        return library(["unit"]);
      case "role":
        return library(["role"]);
      case "table":
        return library(["torque-table"]);
      case "hazard type":
        return library(["hazard"]);
      case "temporary":
        return unit?.temporaries.has(id) ? "known" : library(["temporary"]);
      // A tool may also be something of the unit, or something used up: a guide stud, a cleaner.
      case "tool":
        return thing || unit?.temporaries.has(id) ? "known" : library(["tool", "consumable", "temporary"]);
      case "stores":
        return thing ? "known" : library(["consumable"]);
      case "washer":
        return !unit || thing?.some((one) => one.word === "part") || declared("consumable", id)
          ? "known"
          : wrong([...unit.things].filter(([, list]) => list[0]!.word === "part").map(([name]) => name));
      case "kind":
        return allKinds.has(id) ? "known" : wrong(allKinds);
      case "kind or thing": {
        if (allKinds.has(id) || thing) return "known";
        if (unit) return wrong([...unit.things.keys(), ...allKinds]);
        // At the top of a file it may speak of things of any unit that takes the file in.
        return [...project.files.values()].some((source) =>
          source.declarations.some((one) => one.word === "unit" && unitNames(source, one.item).things.has(id)),
        )
          ? "known"
          : wrong(allKinds);
      }
      case "like":
        return like(id, item, wrong);
      case "condition":
      case "choice": {
        if (unit?.choices.has(id) || allChoices(project).has(id)) return "known";
        return unit ? wrong(unit.choices) : "silent";
      }
      case "piece": {
        if (allChoices(project).has(id)) return "known";
        if (!unit) return "silent";
        const pieces = [...unit.things.keys()].map((thing) => piecesOf(unit!, thing));
        return pieces.includes(undefined) ? "silent" : wrong(pieces.flatMap((labels) => [...labels!]));
      }
      case "reading":
        return named().readings.has(id)
          ? "known"
          : named().readings.size === 0 && procedureElsewhere()
            ? "silent"
            : wrong(named().readings);
      case "any":
        return "known";
    }
  }

  /** A type of the same word, in the unit or at the top of a file. */
  function like(id: string, item: Item, wrong: (candidates: Iterable<string>) => Found): Found {
    const word = item.entry!.place,
      inUnit = unit?.things.get(id)?.some((one) => one.word === word) ?? false;
    if (inUnit || ((word === "fastener" || word === "hazard") && declared(word, id))) return "known";
    const own = unit
      ? [...unit.things].filter(([, list]) => list.some((one) => one.word === word)).map(([name]) => name)
      : [];
    return wrong([
      ...own,
      ...[...seen].filter(([name, list]) => name !== "" && list.some((one) => one.word === word)).map(([name]) => name),
    ]);
  }

  function named(): ReturnType<typeof procedureNames> {
    return procedureNames(project, unitId ?? "");
  }

  /** A unit in a file of its own may speak of readings in a procedure that was not asked for. */
  function procedureElsewhere(): boolean {
    return !file.declarations.some((one) => one.word === "procedure" && unitOfProcedure(file, one.item) === unitId);
  }
}

/** What is declared in the unit or its procedures, never in a file that is taken in. */
const local: ReadonlySet<FullDue> = new Set([
  "part",
  "thing",
  "fluid",
  "hazard",
  "position",
  "kind",
  "kind or thing",
  "step",
  "step or thing",
  "reading",
  "choice",
  "piece",
] as const);
