// The manual's document from performed procedures. It asks the lines, the bill and the tables, and lays nothing out.

import { peopleFor } from "../../bench/crew.ts";
import type { Around, Performance } from "../../bench/trace.ts";
import { isSigned, type Pair } from "../../model/instructions.ts";
import type { Model, Procedure } from "../../model/model.ts";
import { hazardKinds } from "../../tables/index.ts";
import { billData, usesOnce, type BillData } from "../bill/data.ts";
import { wordingFor } from "../wording/languages.ts";
import { reviewLines } from "../wording/review.ts";
import { pathsOf, stripOf } from "../draw/draw.ts";
import type { Drawing } from "../draw/drawing.ts";
import { addressOf } from "../../world/base-address.ts";
import { qrDrawing } from "../draw/qr.ts";
import { patternDrawing } from "../draw/pattern.ts";
import { buildText } from "../lines/build-text.ts";
import { neededBefore } from "../lines/ends.ts";
import { toolName, type LineContext } from "../lines/context.ts";
import { figureText } from "../lines/figures.ts";
import { linesOf, type Lines } from "../lines/groups.ts";
import type { LineGroup } from "../lines/line.ts";
import { shotOf } from "../lines/say-plain.ts";
import { byGravity, hazardText } from "../lines/warnings.ts";
import type { OutputInput, OutputOptions } from "../output.ts";
import type { Chapter, Fact, ManualDocument, SafetyMessage } from "./document.ts";
import { fluidRows, partRows, tieRows } from "./tables.ts";
import { lineElement, planOf } from "./tablet/plan.ts";
import { sectionsFor } from "./sections.ts";
import type { Made } from "../sheet/sheet-data.ts";
import { sheetsOf } from "./sheets.ts";
import { storesHazards } from "./stores-hazards.ts";
import { liftsOf } from "./lifts.ts";
import { toolsOf } from "./tools.ts";

export function manualDocument(input: OutputInput, options: OutputOptions): ManualDocument {
  const { wording } = options,
    { manual: words, document } = wording,
    uses = usesOnce(options),
    bill = billData(input, options, uses),
    { provenance } = bill,
    sections = sectionsFor(options.reader ?? "technician");
  const all = input.performances.map((performance, i, { length }) => ({
      performance,
      lines: linesOf(performance, options),
      prefix: length > 1 ? `p${i + 1}-` : "",
    })),
    contexts = all.map(({ lines }) => lines.context);
  const models = unique(
    input.performances.map(({ model }) => model),
    (model) => `${model.unit} ${model.build}`,
  );
  const contextOf = (model: Model): LineContext =>
    contexts.find((context) => context.model.unit === model.unit && context.model.build === model.build)!;
  return {
    format: "stripdown-manual",
    version: 1,
    lang: words.htmlLang,
    title: unique(
      models.map((model) => model.title || model.unit),
      (title) => title,
    ).join(", "),
    subtitle: document.parts(
      unique(
        input.performances.map(({ procedure }) => procedure.title || procedure.id),
        (title) => title,
      ),
    ),
    provenance,
    draft: provenance.draft.length > 0 ? document.draftLine(provenance.openFindings, provenance.draft) : "",
    review: reviewLines(wording),
    identification: identification(input, options, models, provenance.hash),
    who: who(contexts, options),
    safety: {
      messages: uniqueMessages([
        ...models.flatMap((model) => standing(model)),
        ...input.performances.flatMap(({ procedure }) =>
          procedure.messages.map((message): SafetyMessage => ({ signal: message.signal, on: "", text: message.text })),
        ),
      ]),
      hazards: models.flatMap((model) =>
        [...model.hazards].sort(byGravity).map((hazard) => hazardText(contextOf(model), hazard)),
      ),
      stores: storesHazards(models, bill.lines, contextOf),
      allowed: (input.allowed ?? []).map(({ code, title, reason, file, line }) => ({
        what: `${title} (${code})`,
        where: `${options.showPath?.(file) ?? file}:${line}`,
        why: reason,
      })),
      dismissed: models.flatMap((model) =>
        [...model.dismissed].map(([kind, { why }]) => ({
          kind: wording.kinds.hazard(kind),
          unit:
            models.length > 1 ? [model.title || model.unit, buildText(model, wording)].filter(Boolean).join(", ") : "",
          why,
        })),
      ),
      // A kind that one of several units leaves open is open.
      notConsidered: Object.keys(hazardKinds)
        .filter((kind) =>
          models.some((model) => !model.hazards.some((hazard) => hazard.kind === kind) && !model.dismissed.has(kind)),
        )
        .map((kind) => wording.kinds.hazard(kind)),
    },
    purpose: {
      intended: unique(
        models.flatMap(({ plate }) => plate.intendedUse),
        (text) => text,
      ),
      wrong: unique(
        models.flatMap(({ plate }) => plate.wrongUse),
        (text) => text,
      ),
    },
    mishaps: pairs([
      ...models.flatMap(({ plate }) => plate.mishaps),
      ...printedProcedures(input).flatMap(({ issue }) => issue.mishaps),
    ]),
    paths: models.flatMap((model, i) => pathsOf(model, options, `path-${i + 1}`)),
    diagrams: all.flatMap(({ performance, lines }, i) => stripOf(performance, lines, `diagram-${i + 1}`)),
    index: indexOf(all, wording),
    works: models
      .flatMap((model) =>
        [{ name: model.title || model.unit, text: model.about }, ...model.parts, ...model.ties, ...model.fluids]
          .filter((each) => ("text" in each ? each.text : each.about) !== "")
          .map((each) => ("text" in each ? each : { name: each.name, text: each.about })),
      )
      .concat(suppliesTold(models, bill)),
    tools: { ...toolsOf(all, options), lifts: all.flatMap(({ lines }) => liftsOf(lines)) },
    bill: bill.lines,
    units: bill.units,
    parts: models.flatMap((model) => partRows(contextOf(model))),
    pictures: unique(
      all.flatMap(({ performance: { model, procedure }, lines: { context } }) =>
        model.parts.flatMap(({ photos }) => photos.map((photo) => shotOf(context, photo, outsideSteps(procedure)))),
      ),
      ({ at, file }) => `${at.file}\n${file}`,
    ),
    fasteners: models.flatMap((model) => tieRows(contextOf(model), true)),
    joints: models.flatMap((model) => tieRows(contextOf(model), false)),
    fluids: models.flatMap((model) => fluidRows(contextOf(model))),
    chapters: all.map(({ performance, lines, prefix }) =>
      chapter({ performance, lines, input, options, uses }, prefix),
    ),
    plan: planOf(all, provenance.hash),
    sections,
    forPen: !sections.includes("record"),
  };
}

function identification(
  { performances, texts }: OutputInput,
  options: OutputOptions,
  models: readonly Model[],
  hash: string,
): Fact[] {
  const { manual: words } = options.wording,
    facts: Fact[] = [],
    show = options.showPath ?? ((path: string) => path);
  const { instructions: own } = options.wording;
  const add = (label: string, value: string, own = false): void => {
    facts.push({ label, value, own });
  };
  for (const model of models) {
    add(words.unit, model.title || model.unit, true);
    const { maker, serial } = model.plate;
    add(own.maker, maker ? [maker.what, maker.then].filter(Boolean).join(", ") : words.notGiven, maker !== undefined);
    add(own.serials, serial ?? words.notGiven, serial !== undefined);
    if (model.build) add(words.build, buildText(model, options.wording), true);
    if (model.revision) add(words.unitRevision, model.revision, true);
    if (model.mass) add(words.mass, figureText(model.mass, options, "up"));
  }
  for (const { procedure } of performances) {
    add(words.procedure, procedure.title || procedure.id, true);
    add(words.procedureRevision, procedure.revision ?? words.notGiven, procedure.revision !== undefined);
    if (procedure.video) add(words.recording, procedure.video, true);
    const { author, translatedFrom } = procedure.issue;
    add(
      own.author,
      author ? [author.what, author.then].filter(Boolean).join(", ") : words.notGiven,
      author !== undefined,
    );
    add(
      own.language,
      options.wording.document.parts([
        own.languageName,
        options.textsFrom !== undefined
          ? own.translated(wordingFor(options.textsFrom)?.instructions.languageName ?? options.textsFrom)
          : translatedFrom === undefined
            ? own.notSaid
            : translatedFrom === ""
              ? own.original
              : own.translated(translatedFrom),
      ]),
    );
    for (const by of ["prepared", "checked", "approved"] as const) add(own[by], signedText(procedure, by, options));
  }
  add(
    words.date,
    options.date ?? (performances.map(({ procedure }) => procedure.issue.date).find(Boolean) || words.notGiven),
  );
  add(words.content, hash);
  add(words.files, [...texts.keys()].map(show).sort().join(", "), true);
  return facts;
}

function who(contexts: readonly LineContext[], { wording }: OutputOptions): string[] {
  const { manual: words, document } = wording,
    lines: string[] = [],
    areAlike = new Set(contexts.map(({ performance }) => peopleFor(performance))).size === 1;
  for (const context of contexts) {
    const { procedure } = context.performance,
      crew = words.crew(peopleFor(context.performance));
    // Where one procedure asks for more people than another, each number says which it is of.
    lines.push(areAlike ? crew : document.titled(procedure.title || procedure.id, crew));
    if (procedure.role) lines.push(words.role(toolName(context, procedure.role.text), procedure.title || procedure.id));
    for (const hazard of context.model.hazards)
      if (hazard.role) lines.push(words.roleForHazard(toolName(context, hazard.role.text), hazard.name));
    if (context.model.hazards.some((hazard) => hazard.kind === "electrical")) lines.push(words.highVoltage);
  }
  return unique([words.qualified, ...lines], (line) => line);
}

/** Messages declared on things; those of a kind stand on each of its things and are one here. */
function standing(model: Model): SafetyMessage[] {
  return model.things
    .filter((thing) => thing.is !== "hazard")
    .flatMap((thing) =>
      thing.messages.map((message): SafetyMessage => ({ signal: message.signal, on: thing.name, text: message.text })),
    );
}

function uniqueMessages(messages: readonly SafetyMessage[]): SafetyMessage[] {
  const found = new Map<string, { signal: SafetyMessage["signal"]; text: string; on: string[] }>();
  for (const { signal, text, on } of messages) {
    const key = `${signal} ${text}`,
      had = found.get(key);
    if (!had) found.set(key, { signal, text, on: on ? [on] : [] });
    else if (on && !had.on.includes(on)) had.on.push(on);
  }
  return [...found.values()].map(({ on, ...rest }) => ({ ...rest, on: on.join(", ") })).sort(byGravity);
}

function chapter(made: Made, prefix: string): Chapter {
  const {
    performance,
    lines,
    options: { baseAddress, wording },
  } = made;
  const { procedure, model } = performance,
    { strip, refit, finish } = lines,
    patterns: Record<string, readonly number[]> = {},
    drawings: Record<string, Drawing> = {};
  const named = (groups: readonly LineGroup[]): readonly LineGroup[] =>
    groups.map((group) => ({ ...group, id: prefix + group.id }));
  for (const line of [...strip, ...refit, ...finish].flatMap((group) => group.lines)) {
    if (line.is !== "action" || !line.torque || line.torque.order.length === 0 || line.items.length !== 1) continue;
    const tie = model.ties.find((each) => each.id === line.items[0]!.id),
      drawing = tie && patternDrawing(tie, `${lineElement(prefix, line.id)}-pattern`, tie.name, lines.context);
    if (drawing) drawings[line.id] = drawing;
    if (tie?.pattern?.is === "circle" && tie.count <= 36) patterns[line.id] = line.torque.order;
  }
  return {
    prefix,
    title: procedure.title || procedure.id,
    about: procedure.about,
    needs: neededBefore(lines.context),
    messages: procedure.messages.map((message) => ({ signal: message.signal, on: "", text: message.text })),
    pictures: procedure.photos.map((photo) => shotOf(lines.context, photo, outsideSteps(procedure))),
    strip: named(strip),
    refit: named(refit),
    finish: named(finish),
    refitIs: performance.order ? "computed" : performance.written.length > 0 ? "written" : "none",
    patterns,
    drawings,
    sheets: sheetsOf({ ...made, inManual: true }),
    codes: Object.fromEntries(
      baseAddress === undefined
        ? []
        : [...strip, ...refit, ...finish].map(({ id, number }) => [
            prefix + id,
            qrDrawing(addressOf(baseAddress, prefix + id), `${prefix}${id}-code`, wording.draw.code(number)),
          ]),
    ),
  };
}

/** What is said of the consumables that are used and of the torque wrenches; other tools say it beside themselves. */
const suppliesTold = (models: readonly Model[], { lines }: BillData): ManualDocument["works"] => {
  const used = new Set(lines.flatMap(({ id, what }) => (what === "consumable" ? [id] : [])));
  return unique(
    models.flatMap(({ library: { consumables, tools } }) => [
      ...[...consumables.values()].filter(({ id, about }) => used.has(id) && about !== ""),
      ...[...tools.values()].filter(({ kind, about }) => kind === "torque-wrench" && about !== ""),
    ]),
    ({ id }) => id,
  ).map(({ id, name, about }) => ({ name: name || id, text: about }));
};

/** Where a name stands for what the whole procedure calls so. */
const outsideSteps = (procedure: Procedure): Around => ({
  procedure,
  prefix: "",
  pieces: [],
  on: undefined,
  step: undefined,
  crew: undefined,
  bench: undefined,
  given: [],
});

function unique<T>(values: readonly T[], key: (value: T) => string): T[] {
  const found = new Map<string, T>();
  for (const value of values) if (!found.has(key(value))) found.set(key(value), value);
  return [...found.values()];
}

/** A name and a date; one for another revision says so, since it counts for nothing here. */
function signedText(
  { issue, revision }: Procedure,
  by: "prepared" | "checked" | "approved",
  { wording: { instructions: words, manual } }: OutputOptions,
): string {
  const signed = issue[by];
  if (!signed || signed.who.trim() === "" || signed.when.trim() === "")
    return by === "approved" ? manual.notApproved : words.notSigned;
  return by !== "approved" || isSigned(signed, revision)
    ? words.signed(signed.who, signed.when)
    : words.otherRevision(signed.who, signed.when, signed.revision);
}

/** With those that are done within others. */
const printedProcedures = ({ performances }: OutputInput): Procedure[] => [
  ...new Set(
    performances.flatMap(({ procedure, strip }) => [procedure, ...strip.map(({ around }) => around.procedure)]),
  ),
];

const pairs = (all: readonly Pair[]): { what: string; then: string }[] =>
  unique(
    all.map(({ what, then }) => ({ what, then })),
    ({ what, then }) => `${what}\n${then}`,
  );

/** Where there are several procedures, a number alone would be of any of them: each says which it is of. */
function indexOf(
  all: readonly { readonly performance: Performance; readonly lines: Lines; readonly prefix: string }[],
  { document }: OutputOptions["wording"],
): ManualDocument["index"] {
  const found = new Map<string, { id: string; line: string; of: string }[]>();
  for (const { lines, prefix, performance } of all) {
    const of = all.length > 1 ? performance.procedure.title || performance.procedure.id : "";
    for (const line of [...lines.strip, ...lines.refit, ...lines.finish].flatMap((group) => group.lines)) {
      if (line.is !== "action") continue;
      const entry = { id: lineElement(prefix, line.id), line: line.id, of };
      for (const name of new Set(line.items.map((item) => item.name))) {
        const had = found.get(name);
        if (had) had.push(entry);
        else found.set(name, [entry]);
      }
    }
  }
  return [...found]
    .map(([name, lines]) => ({ name, lines, key: name.toLowerCase() }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : a.name < b.name ? -1 : 1))
    .map(({ name, lines }) => ({
      name,
      lines: lines.map(({ id, line, of }, i) => ({
        id,
        line: of === "" || of === lines[i - 1]?.of ? line : document.titled(of, line),
      })),
    }));
}
