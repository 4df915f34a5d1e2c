// What can stand at an offset: words, kinds, units, names, and of the names those first that the bench would take now. Proposals only;
// it never proposes a torque, a wait, a voltage, or words of a precaution.

import { dueName } from "../checks/due-names.ts";
import type { FullDue } from "../checks/each-name.ts";
import { at } from "../bench/vector.ts";
import { isOut, left, lumpOf } from "../bench/ties.ts";
import { DRAINED, HELD, ON_BASE } from "../bench/state.ts";
import { rowsForThread, rowWidth } from "../figures/drives.ts";
import { inchGrades, metricClasses } from "../figures/property-classes.ts";
import type { Project, SourceFile } from "../names/project.ts";
import { readSize } from "../model/read-tie.ts";
import { hazardKinds, isKindOf, precautions, synonyms } from "../tables/index.ts";
import { usualUnits, dimensionNames, type Dimension, type UnitGroup } from "../quantities/index.ts";
import { kindTexts, wordsIn, type KindList } from "../vocabulary/index.ts";
import type { Moment } from "./bench-at.ts";
import { candidatesFor, unitAround } from "./candidates.ts";
import { slotAt, type Slot } from "./place.ts";
import { snippetFor } from "./snippets.ts";
import { aroundAt, simpleAct, tryAct } from "./trial.ts";

export interface Proposal {
  readonly label: string;
  readonly is: "word" | "kind" | "unit" | "name" | "file";
  /** What kind of thing: part, fastener, tool, step …; for words the block that they open. */
  readonly of: string;
  /** One line beside the label. */
  readonly detail: string;
  readonly about: string;
  /** Lower first. */
  readonly rank: number;
  /** Other words by which it is found. */
  readonly also: readonly string[];
  /** With places to fill in, `${1:id}`; undefined: the label itself. */
  readonly snippet: string | undefined;
  /** The file to `use`, as a path. */
  readonly use: string | undefined;
}

export interface Completion {
  /** What is replaced: from here to the offset. */
  readonly from: number;
  readonly proposals: readonly Proposal[];
}

const noCompletion = (from: number): Completion => ({ from, proposals: [] });

/** Texts and names are enough; `moment` is asked for the bench, and only where an act is being typed. */
export interface Asked {
  readonly project: Project;
  /** The bench of a file before an offset; undefined where nothing is performed. */
  moment(file: SourceFile, offset: number): Moment | undefined;
}

export function completionAt(asked: Asked, file: SourceFile, offset: number): Completion {
  const slot = slotAt(file.tree, offset);
  if (!slot || slot.text) return noCompletion(offset);
  const proposals: Proposal[] = [];
  if (slot.item && slot.next.length > 0) proposals.push(...inHead(asked, file, slot));
  if (slot.opens) proposals.push(...words(asked.project, file, slot));
  const best = new Map<string, Proposal>();
  for (const one of proposals) {
    const had = best.get(one.label);
    if (!had || one.rank < had.rank) best.set(one.label, one);
  }
  return { from: slot.from, proposals: [...best.values()] };
}

/** What most lines of a block begin with, the most usual first; of the other words the alphabet decides. */
const usual: ReadonlyMap<string, readonly string[]> = new Map([
  ["unit", ["part", "fastener", "hazard", "fluid"]],
  ["procedure", ["step", "aim"]],
  ["step", ["undo", "remove", "lift", "support", "drain", "turn"]],
]);

function words(project: Project, file: SourceFile, slot: Slot): Proposal[] {
  const first = usual.get(slot.block) ?? [],
    due = precautionsDue(project, file, slot);
  const rankOf = (word: string, isCore: boolean): number => {
    const place = first.indexOf(word);
    if (place >= 0) return 16;
    if (due !== undefined && isKindOf(precautions, word)) return due.has(word) ? 17 : 40;
    return isCore ? 20 : 30;
  };
  return [...wordsIn(slot.block).values()].map((entry): Proposal => ({
    label: entry.word,
    is: "word",
    of: entry.block,
    detail: entry.shape === "" ? entry.prints : entry.example,
    about: `${entry.meaning}\n\n\`${entry.example}\``,
    rank: rankOf(entry.word, entry.core),
    also: entry.synonyms,
    snippet: snippetFor(entry),
    use: undefined,
  }));
}

/** Kinds of the precautions that the unit's hazards name; undefined where the unit, or one of its hazards, is not known whole. */
function precautionsDue(project: Project, file: SourceFile, slot: Slot): ReadonlySet<string> | undefined {
  const names = unitAround(project, file, slot.path)?.names;
  if (!names || slot.path[0]?.entry?.word !== "procedure") return undefined;
  const due = new Set<string>();
  for (const list of names.things.values())
    for (const { word, item, source } of list) {
      if (word !== "hazard") continue;
      for (const line of item.block?.items ?? []) {
        // It may take precautions over from elsewhere.
        if (line.entry?.word === "like" || line.entry?.word === "if" || line.entry?.word === "unless") return undefined;
        const kind = line.entry?.word === "precaution" ? line.arguments[0] : undefined;
        if (kind) due.add(source.tree.scan.tokens[kind.first]!.text);
      }
    }
  return due;
}

function inHead(asked: Asked, file: SourceFile, slot: Slot): Proposal[] {
  const found: Proposal[] = [],
    seen = new Set<string>();
  for (const leaf of slot.next) {
    switch (leaf.is) {
      case "word":
        found.push({
          label: leaf.text,
          is: "word",
          of: "",
          detail: "",
          about: "",
          rank: 15,
          also: [],
          snippet: undefined,
          use: undefined,
        });
        break;
      case "kind":
        found.push(...(leaf.text === "precaution" ? precautionKinds(file, slot) : kinds(leaf.text as KindList)));
        break;
      case "number":
        if (slot.item!.entry!.word === "drive") found.push(...spanners(file, slot));
        break;
      case "unit":
        found.push(...units(leaf.text as UnitGroup));
        break;
      case "name":
      case "item":
        if (!leaf.declares && !seen.has("name")) {
          seen.add("name");
          found.push(...names(asked, file, slot));
        }
        break;
      case "label":
        found.push(...strengths(slot.item!.entry!.word));
        break;
      default:
    }
  }
  return found;
}

/** Strength classes and grades as their standards name them. */
function strengths(word: string): Proposal[] {
  const materials = word === "class" ? metricClasses : word === "grade" ? inchGrades : [];
  return [...new Map(materials.map(({ name, standard }) => [name, standard]))].map(([label, detail], i): Proposal => ({
    label: word === "grade" ? label.replace(/^grade /i, "") : label,
    is: "kind",
    of: word,
    detail,
    about: "",
    rank: 10 + i,
    also: [],
    snippet: undefined,
    use: undefined,
  }));
}

function kinds(list: KindList): Proposal[] {
  return Object.entries(kindTexts[list]).map(([label, { title, about }]): Proposal => ({
    label,
    is: "kind",
    of: list,
    detail: title,
    about,
    rank: 10,
    also: synonyms.filter((one) => one.of === list && one.is === label).map((one) => one.says),
    snippet: undefined,
    use: undefined,
  }));
}

/** In the order in which they are taken; proofs of other kinds of hazard come last. */
function precautionKinds(file: SourceFile, slot: Slot): Proposal[] {
  const hazard = slot.path.findLast((item) => item.entry?.word === "hazard"),
    says = hazard?.arguments
      .map(({ first }) => file.tree.scan.tokens[first]!.text)
      .find((one) => isKindOf(hazardKinds, one)),
    proofs = says === undefined ? undefined : hazardKinds[says as keyof typeof hazardKinds].proofBy;
  return kinds("precaution").map((one) => {
    const { rank = 90, isProof } = precautions[one.label as keyof typeof precautions],
      isOther = isProof && proofs !== undefined && !proofs.some((proof) => proof === one.label);
    return { ...one, rank: isOther ? 200 + rank : 10 + rank };
  });
}

/** Sizes that the head standards give the thread of this fastener with this drive. */
function spanners(file: SourceFile, slot: Slot): Proposal[] {
  const sizeLine = slot.path.at(-1)?.block?.items.find((item) => item.entry?.word === "size" && !item.broken),
    size = sizeLine && readSize({ item: sizeLine, source: file }),
    drive = slot.item!.arguments[0] && file.tree.scan.tokens[slot.item!.arguments[0].first]!.text;
  if (drive === undefined || !size || Array.isArray(size) || !("nominal" in size)) return [];
  return rowsForThread(size.nominal, drive).map((row, i): Proposal => ({
    label: rowWidth(row) === undefined || row.thread.startsWith("M") ? row.size : `${row.size} in`,
    is: "kind",
    of: "drive",
    detail: `${row.thread}: ${row.standard}, ${row.item}`,
    about: "",
    rank: 5 + i,
    also: [],
    snippet: undefined,
    use: undefined,
  }));
}

function units(group: UnitGroup): Proposal[] {
  const dimensions: readonly Dimension[] =
    group === "any"
      ? []
      : group === "shelf"
        ? ["volume", "mass", "length"]
        : group === "stage"
          ? ["torque", "angle"]
          : [group];
  return dimensions.flatMap((dimension) =>
    usualUnits(dimension).map((label, i): Proposal => ({
      label,
      is: "unit",
      of: dimension,
      detail: dimensionNames[dimension].title,
      about: "",
      rank: 5 + i,
      also: plainSpelling(label),
      snippet: undefined,
      use: undefined,
    })),
  );
}

/** How a hand without the signs would type it. */
const plainSpelling = (unit: string): string[] => {
  const plain = unit.replaceAll("·", "").replaceAll("µ", "u").replaceAll("°", "").replaceAll("Ω", "ohm");
  return plain === unit ? [] : [plain];
};

function names(asked: Asked, file: SourceFile, slot: Slot): Proposal[] {
  const entry = slot.item!.entry!,
    due = dueName(entry.place, entry.word, slot.context, slot.earlier, isKindOf(precautions, entry.word)) as FullDue;
  const isAct =
    ["step", "refit", "finish"].includes(entry.place) &&
    (slot.context === entry.word || (entry.word === "turn" && slot.context === "to"));
  const isHandled = isAct || (entry.word === "aim" && slot.context === "aim");
  // The half-typed line itself is not asked: what was done up to the one before it is.
  const moment = isAct ? asked.moment(file, file.tree.scan.tokens[slot.item!.first]!.startOffset - 1) : undefined;
  const judged = moment && judge(moment, entry.word);
  const own = ownName(file, slot),
    fits = handled.get(entry.word);
  return candidatesFor(asked.project, file, due, slot.path, entry.place)
    .filter(({ id, word }) => !slot.listed.has(id) && id !== own && (!isHandled || !fits || fits.has(word)))
    .flatMap((one): Proposal[] => {
      const said = judged?.(one.id);
      if (said === "never") return [];
      return [
        {
          label: one.id,
          is: "name",
          of: one.word,
          detail: [one.name, said?.says ?? ""].filter(Boolean).join(" · "),
          about: "",
          rank: (said?.rank ?? 8) + (one.from === undefined ? 0 : 50),
          also: one.name === "" ? [] : one.name.toLowerCase().split(/\s+/),
          snippet: undefined,
          use: one.from,
        },
      ];
    });
}

/** The name of the declaration that the line stands in: nothing lies behind, between or in itself. */
function ownName(file: SourceFile, slot: Slot): string | undefined {
  const around = slot.path.findLast((item) => item !== slot.item),
    argument = around?.entry?.place === "unit" ? around.arguments.find(({ declares }) => declares) : undefined;
  return argument && file.tree.scan.tokens[argument.first]!.text;
}

/** What an act can be done to, where that is less than everything that has a name. */
const solid: ReadonlySet<string> = new Set(["part", "fastener", "joint"]),
  tangible: ReadonlySet<string> = new Set([...solid, "fluid"]),
  handled: ReadonlyMap<string, ReadonlySet<string>> = new Map([
    ...["renew", "reuse", "scrap", "fit", "hold", "release", "mark", "tag"].map((verb) => [verb, solid] as const),
    ["tighten", new Set(["fastener", "joint"])],
    ["support", new Set(["part"])],
    ["aim", solid],
    ...["clean", "inspect", "measure"].map((verb) => [verb, tangible] as const),
  ]);

type Judged = "never" | { readonly says: string; readonly rank: number } | undefined;

/** Above so many things each is not tried on the bench: their state is told all the same. */
const mostTried = 400;

/** Of a name, whether the bench would take this act on it now. */
function judge(moment: Moment, verb: string): ((id: string) => Judged) | undefined {
  const {
      performance: { model },
      state: s,
    } = moment,
    around = aroundAt(moment),
    scope = model.scopes.get(around.prefix);
  const takes = (id: string): boolean => {
    const act = simpleAct(verb, id);
    return model.things.length <= mostTried && act !== undefined && tryAct(model, s, act, around).problems.length === 0;
  };
  switch (verb) {
    case "undo":
    case "loosen":
    case "back-out":
      return (id) => {
        const ties = (scope?.get(id) ?? []).map((i) => model.things[i]!).filter((thing) => thing.is === "tie"),
          first = ties[0];
        if (!first) return "never";
        if (ties.every((tie) => tie.passing || isOut(model, s, tie.index))) return "never";
        const now = takes(id),
          count = ties.reduce((sum, tie) => sum + left(model, s, tie.index), 0),
          of = ties.reduce((sum, tie) => sum + tie.count, 0);
        return {
          says: `${count === of ? `${of} in` : `${count} of ${of} in`}${now ? "" : ", not yet"}`,
          rank: now ? 1 : 4,
        };
      };
    case "remove":
    case "lift":
      return (id) => {
        const parts = (scope?.get(id) ?? []).map((i) => model.things[i]!).filter((thing) => thing.is === "part");
        if (parts.every((part) => lumpOf(s, part.index) !== ON_BASE && at(s.offBy, part.index) >= 0)) return "never";
        if (parts.every((part) => model.base.includes(part.index))) return "never";
        const now = takes(id);
        return { says: now ? "comes off now" : "not yet", rank: now ? 1 : 4 };
      };
    case "drain":
    case "recover":
      return (id) =>
        (scope?.get(id) ?? []).some((i) => model.things[i]!.is === "fluid" && (at(s.flags, i) & DRAINED) === 0)
          ? { says: "aboard", rank: 1 }
          : "never";
    case "release":
      return (id) =>
        (scope?.get(id) ?? []).some((i) => (at(s.flags, i) & HELD) !== 0)
          ? { says: "held", rank: 1 }
          : { says: "", rank: 6 };
    case "turn":
      return (id) => (id === s.position ? "never" : { says: "", rank: 1 });
    default:
      if (!isKindOf(precautions, verb)) return undefined;
      return (id) => {
        const hazards = (scope?.get(id) ?? []).map((i) => model.things[i]!).filter((thing) => thing.is === "hazard"),
          own = hazards.flatMap((h) => h.precautions).filter((p) => p.kind === verb);
        if (own.length === 0) return "never";
        return own.every((p) => at(s.standing, p.number) !== 0)
          ? { says: "done before", rank: 6 }
          : { says: "", rank: 1 };
      };
  }
}
