// What a name, a word or a figure at an offset is, in Markdown: facts of the declaration, of the bench at that line, and computed
// figures with their source. It tells what is known and never that something is safe.

import { at } from "../bench/vector.ts";
import { isOut, left, lumpOf } from "../bench/ties.ts";
import { ON_BASE } from "../bench/state.ts";
import { waitOf } from "../bench/placement.ts";
import { assumptionsOf } from "../checks/sums.ts";
import { torqueQuestion } from "../checks/torque-judged.ts";
import { boltOf, loadArea } from "../figures/bolt-loads.ts";
import { rowsForThread, rowWidth } from "../figures/drives.ts";
import { isFigureError } from "../figures/figure.ts";
import { threadOf } from "../figures/threads.ts";
import { assessTorque } from "../figures/tightening.ts";
import type { Model, Part, Thing, Tie, Fluid, Hazard } from "../model/model.ts";
import { readSize } from "../model/read-tie.ts";
import type { SourceFile } from "../names/project.ts";
import { bothSystems, timeText, type Units } from "../outputs/lines/figures.ts";
import { spannerOf } from "../outputs/lines/spanner.ts";
import { torqueText } from "../outputs/lines/torque.ts";
import { convert, findUnit, fromSi, makeQuantity, isProblem, rounded, si } from "../quantities/index.ts";
import type { Item } from "../syntax/index.ts";
import {
  drives,
  fastenerKinds,
  fluidKinds,
  hazardKinds,
  jointKinds,
  kindIn,
  partKinds,
  signals,
} from "../tables/index.ts";
import { kindTexts, type KindList } from "../vocabulary/index.ts";
import type { Acted } from "../workspace/check-project.ts";
import type { Settings } from "../world/settings.ts";
import { benchView, momentAt, precautionTitle, type Moment } from "./bench-at.ts";
import { titleOf } from "./candidates.ts";
import { plainModel } from "./models.ts";
import { lineNumber, placeAt } from "./place.ts";
import { mentionAt, thingNamed, type Mention } from "./symbols.ts";

export interface Hover {
  readonly start: number;
  readonly end: number;
  readonly markdown: string;
}

/** An author's words as text, never as markup: no emphasis, no link, no list, no table. */
export const plain = (text: string): string =>
  text
    .replace(/\s*\r?\n\s*/g, " ")
    .replace(/[\\`*_{}[\]<>~&|@]|:(?=\/\/)|(?<=\bwww)\./gi, "\\$&")
    .replace(/^(\s*)(?=[#+-])/, "$1\\")
    .replace(/^(\s*\d+)(?=[.)])/, "$1\\");

export function hoverAt(
  checked: Acted,
  file: SourceFile,
  offset: number,
  settings: Settings,
  units: Units,
): Hover | undefined {
  const mention = mentionAt(checked.project, file, offset);
  if (mention)
    return { start: mention.start, end: mention.end, markdown: ofMention(checked, mention, offset, settings, units) };
  const { token, path } = placeAt(file.tree, offset);
  if (!token) return undefined;
  const item = path[path.length - 1],
    span = { start: token.startOffset, end: token.endOffset! + 1 };
  if (item?.entry && file.tree.scan.tokens[item.first] === token)
    return { ...span, markdown: ofWord(checked, file, item.entry, offset) };
  const argument = item?.arguments.find(
    (one) =>
      file.tree.scan.tokens[one.first]!.index <= token.index && token.index <= file.tree.scan.tokens[one.last]!.index,
  );
  if (argument?.slot.startsWith("kind:")) {
    const list = argument.slot.slice(5) as KindList,
      kind = kindTexts[list]?.[token.text];
    if (kind) return { ...span, markdown: `**${kind.title}** · ${list}\n\n${kind.about}` };
  }
  if (item?.entry?.word === "size" && argument && !item.broken) {
    const told = ofSize(file, item);
    const { tokens } = file.tree.scan;
    if (told !== undefined)
      return { start: tokens[argument.first]!.startOffset, end: tokens[argument.last]!.endOffset! + 1, markdown: told };
  }
  if (argument) {
    const figure = ofFigure(file, argument.first, argument.last, units);
    if (figure) return figure;
  }
  return undefined;
}

function ofWord(
  checked: Acted,
  file: SourceFile,
  entry: NonNullable<SourceFile["tree"]["items"][number]["entry"]>,
  offset: number,
): string {
  const lines = [`**${entry.word}** · ${entry.meaning}`, "```strip\n" + entry.example + "\n```"];
  if (["step", "refit", "finish"].includes(entry.place)) {
    const after = momentAt(checked, file.path, offset);
    if (after?.done && after.done.act.at.start <= offset && offset <= after.done.act.at.end)
      lines.push(changeOf(after));
  }
  return lines.filter(Boolean).join("\n\n");
}

/** The bench before and after an act. */
function changeOf(after: Moment): string {
  const { performance, done } = after,
    then = benchView({ ...after, state: done!.before }),
    now = benchView(after),
    rows: string[] = [];
  const row = (what: string, a: string, b: string): void => {
    if (a !== b) rows.push(`| ${what} | ${a} | ${b} |`);
  };
  row("Parts on", String(then.on.length), String(now.on.length));
  row("Fasteners and joints holding", String(then.ties.length), String(now.ties.length));
  row("Position", plain(then.position || "not given"), plain(now.position || "not given"));
  row(
    "Fluids aboard",
    String(then.fluids.filter((f) => f.is === "aboard").length),
    String(now.fluids.filter((f) => f.is === "aboard").length),
  );
  row("Precautions taken", String(then.precautions.length), String(now.precautions.length));
  const gone = now.away.filter((part) => !then.away.some((had) => had.id === part.id)),
    out = now.tiesOut.filter((tie) => !then.tiesOut.some((had) => had.id === tie.id));
  const told = [
    gone.length > 0 ? `Comes away: ${gone.map((one) => plain(one.name)).join(", ")}` : "",
    out.length > 0 ? `Out: ${out.map((one) => plain(one.name)).join(", ")}` : "",
    done!.refused ? "Refused by the bench: see the finding on this line" : "",
  ]
    .filter(Boolean)
    .join("\n\n");
  return rows.length === 0 && told === ""
    ? ""
    : `${
        rows.length > 0
          ? `| On the bench of ${plain(
              performance.model.title || performance.model.unit,
            )} | before | after |\n|---|---|---|\n${rows.join("\n")}\n\n`
          : ""
      }${told}`;
}

/** What the standards say of a thread: pitch and stress area, and which tools the heads for it take. Undefined for what is no thread. */
function ofSize(file: SourceFile, item: Item): string | undefined {
  const size = readSize({ item, source: file });
  if (!size || Array.isArray(size) || !("nominal" in size)) return undefined;
  const thread = threadOf(size),
    heads = Object.entries(drives).flatMap(([drive, { title }]) => {
      const rows = [...Map.groupBy(rowsForThread(size.nominal, drive), (row) => row.size)];
      if (rows.length === 0) return [];
      const sizes = rows.map(([width, of]) => {
        const unit = rowWidth(of[0]!) === undefined ? "" : of[0]!.thread.startsWith("M") ? " mm" : " in";
        return `${width}${unit} (${[...new Set(of.map(({ standard }) => standard))].join(", ")})`;
      });
      return [`${title}: ${sizes.join("; ")}`];
    });
  const lines = isFigureError(thread)
    ? [`**${plain(size.designation)}**`, plain(thread.says)]
    : [
        `**${plain(thread.designation)}** · ${thread.system} thread, ${thread.series}${size.leftHand ? ", left-hand" : ""}`,
        thread.system === "metric"
          ? `Pitch ${rounded(thread.pitch * 1e3, 3)} mm · stress area ${rounded(thread.stressArea * 1e6, 3)} mm² (ISO 261, ISO 898-1)`
          : `${Math.round(0.0254 / thread.pitch)} threads per inch · stress area ${rounded(thread.stressArea / 0.0254 ** 2, 3)} in² (ASME B1.1)`,
      ];
  return [
    ...lines,
    ...heads,
    ...(heads.length > 0 ? ["*What stands on the head, and the maker's data, come first.*"] : []),
  ].join("\n\n");
}

function ofFigure(file: SourceFile, first: number, last: number, units: Units): Hover | undefined {
  const { tokens } = file.tree.scan,
    number = tokens[first]!,
    unit = tokens.slice(first, last + 1).find((token) => findUnit(token.image) !== undefined && token !== number);
  if (!unit || !/^[\d.]/.test(number.image)) return undefined;
  const range = tokens[first + 1]?.text === ".." ? tokens[first + 2] : undefined;
  const quantity = makeQuantity({
    first: number.image,
    second: range?.image,
    form: range ? "range" : "single",
    unit: unit.image,
  });
  if (isProblem(quantity)) return undefined;
  const both = bothSystems(quantity, units),
    others = ["N·m", "lbf·ft", "lbf·in", "kgf·m"].flatMap((name) => {
      const other = quantity.dimension === "torque" && name !== quantity.unit ? convert(quantity, name) : undefined;
      return other ? [other.written] : [];
    });
  return {
    start: number.startOffset,
    end: unit.endOffset! + 1,
    markdown: [both, others.join(" · ")].filter(Boolean).join("\n\n"),
  };
}

function ofMention(checked: Acted, mention: Mention, offset: number, settings: Settings, units: Units): string {
  const { project } = checked,
    moment = momentAt(checked, mention.file, offset);
  // Where it is declared tells a thing from another of its name in a unit inside.
  const declaredAt = thingNamed(project, mention);
  const isIt = (thing: Thing): boolean =>
    declaredAt !== undefined && thing.at.file === declaredAt.source.path && thing.at.start === declaredAt.start;
  const isInside = moment?.performance.model.things.some(isIt) ?? false;
  const model = isInside
      ? moment!.performance.model
      : mention.unit === ""
        ? undefined
        : plainModel(checked, mention.home, mention.unit),
    thing = model?.things.find(isIt);
  if (thing && model) return ofThing(checked, model, thing, moment, settings, units);
  const declared = [...project.files.values()].flatMap((file) =>
    file.declarations.filter((one) => one.id === mention.id && one.word === mention.word).map((one) => ({ file, one })),
  )[0];
  const head = `**${plain(declared && declared.one.name !== declared.one.id ? declared.one.name : mention.id)}** · ${mention.word}`;
  if (mention.word === "procedure" && declared) {
    const performance = checked.performances.find(
      ({ procedure }) => procedure.id === mention.id && procedure.at.file === declared.file.path,
    );
    return [
      head,
      performance
        ? `${performance.strip.length} acts in the strip, ${performance.refit.length || performance.written.length} on the way back`
        : "",
      plain(performance?.procedure.about ?? ""),
    ]
      .filter(Boolean)
      .join("\n\n");
  }
  if (declared) {
    const { tokens } = declared.file.tree.scan,
      facts = (declared.one.item.block?.items ?? []).map((item) =>
        declared.file.text.slice(tokens[item.first]!.startOffset, tokens[item.last]!.endOffset! + 1),
      );
    return [head, facts.length > 0 && facts.join("").length < 600 ? "```strip\n" + facts.join("\n") + "\n```" : ""]
      .filter(Boolean)
      .join("\n\n");
  }
  return [head, plain(titleOf(project.files.get(mention.file)!, mention.item))].filter(Boolean).join("\n\n");
}

function ofThing(
  checked: Acted,
  model: Model,
  thing: Thing,
  moment: Moment | undefined,
  settings: Settings,
  units: Units,
): string {
  const lines = (() => {
    switch (thing.is) {
      case "part":
        return ofPart(checked, model, thing, moment, units);
      case "tie":
        return ofTie(checked, model, thing, moment, settings, units);
      case "fluid":
        return ofFluid(thing, units);
      case "hazard":
        return ofHazard(thing, moment, units);
    }
  })();
  if (thing.about !== "") lines.push(plain(thing.about));
  for (const message of thing.messages) lines.push(`**${signals[message.signal].title}**: ${plain(message.text)}`);
  return lines.filter(Boolean).join("\n\n");
}

const list = (names: readonly string[]): string => names.map(plain).join(", ");

function whereDone(checked: Acted, model: Model, thing: Thing, moment: Moment | undefined): string[] {
  const performance =
    moment?.performance ??
    checked.performances.find(
      (one) =>
        one.model === model &&
        one.events.some((event) => event.things.includes(thing.index) || event.moved.includes(thing.index)),
    );
  if (!performance) return [];
  const off = performance.events.find(
    (event) =>
      (event.kind === "off" || event.kind === "out") &&
      (event.things.includes(thing.index) || event.moved.includes(thing.index)) &&
      !event.assumed,
  );
  const back = performance.refit.findIndex(
    ({ op }) => op.things.includes(thing.index) && (op.verb === "fit" || op.verb === "tighten"),
  );
  const line = (file: string, offset: number): number => {
    const source = checked.project.files.get(file);
    return source ? lineNumber(source.tree, offset) : 0;
  };
  const said: string[] = [];
  if (off)
    said.push(
      `${off.kind === "off" ? "Comes off" : "Undone"} at line ${line(off.act.at.file, off.act.at.start)}${off.around.step ? ` (${plain(off.around.step.title || off.around.step.name)})` : ""}, in ${plain(performance.procedure.title || performance.procedure.id)}`,
    );
  if (back >= 0) said.push(`Goes back as act ${back + 1} of ${performance.refit.length} of the computed refit`);
  return said;
}

function ofPart(checked: Acted, model: Model, part: Part, moment: Moment | undefined, units: Units): string[] {
  const kind = kindIn(partKinds, part.kind),
    ties = model.ties.filter((tie) => tie.lowers.includes(part.index) || tie.uppers.includes(part.index));
  const state = moment?.state,
    holding = state ? ties.filter((tie) => !isOut(model, state, tie.index)) : ties;
  const lines = [
    `**${plain(part.name)}** · ${kind ? kind.title.toLowerCase() : "part"}${part.count > 1 ? `, ${part.count} of them` : ""}`,
  ];
  const facts = [
    part.mass ? bothSystems(part.mass, units) : "mass not given",
    part.fitsBy ?? "",
    part.partNo ? `part number ${plain(part.partNo)}` : "",
    part.standard ? plain(part.standard) : "",
  ].filter(Boolean);
  lines.push(facts.join(" · "));
  if (state && lumpOf(state, part.index) !== ON_BASE && at(state.lumpBy, part.index) >= 0)
    lines.push("Off at this line");
  else if (holding.length > 0)
    lines.push(
      `${state ? "Still held" : "Held"} by ${list(
        holding
          .slice(0, 12)
          .map((tie) =>
            tie.count > 1 ? `${state ? `${left(model, state, tie.index)} of ` : ""}${tie.count} ${tie.name}` : tie.name,
          ),
      )}${holding.length > 12 ? " …" : ""}`,
    );
  if (part.hosts.length > 0) lines.push(`Fits ${list(part.hosts.map((host) => model.things[host]!.name))}`);
  if (part.behind.length > 0) lines.push(`Behind ${list(part.behind.map((one) => model.things[one]!.name))}`);
  if (part.positions.length > 0) lines.push(`Worked on in position ${list(part.positions)}`);
  lines.push(...whereDone(checked, model, part, moment));
  return lines;
}

function ofTie(
  checked: Acted,
  model: Model,
  tie: Tie,
  moment: Moment | undefined,
  settings: Settings,
  units: Units,
): string[] {
  const title = tie.fastener ? kindIn(fastenerKinds, tie.kind)?.title : kindIn(jointKinds, tie.kind)?.title;
  const lines = [
    `**${plain(tie.name)}** · ${tie.count > 1 ? `${tie.count} × ` : ""}${(title ?? tie.kind).toLowerCase()}${tie.size ? ` ${tie.size.designation}` : ""}${tie.propertyClass ? ` ${tie.propertyClass}` : ""}`,
  ];
  if (moment) {
    const isIn = left(model, moment.state, tie.index);
    lines.push(
      isIn === tie.count ? "None undone at this line" : `${tie.count - isIn} of ${tie.count} undone at this line`,
    );
  }
  const joins =
    tie.lowers.length > 0
      ? `Joins ${list(tie.lowers.map((one) => model.things[one]!.name))} to ${list(tie.uppers.map((one) => model.things[one]!.name))}`
      : "";
  if (joins) lines.push(joins);
  if (tie.behind.length > 0) lines.push(`Behind ${list(tie.behind.map((one) => model.things[one]!.name))}`);
  if (tie.fastener) {
    const spanner = spannerOf(tie, units);
    if (spanner)
      lines.push(
        `Tool: ${spanner.says}${spanner.computed ? ", from the standard of its head: measure before you rely on it" : ""}`,
      );
    if (tie.torques.length > 0 || tie.stages.length > 0) lines.push(`Torque: ${plain(torqueText(tie, units))}`);
    lines.push(...strengthOf(tie, settings));
  }
  lines.push(...whereDone(checked, model, tie, moment));
  return lines;
}

/** Stress area, preload and share of yield, by the figures' own functions. */
function strengthOf(tie: Tie, settings: Settings): string[] {
  const question = torqueQuestion(tie),
    lines: string[] = [];
  if (!question) return tie.size ? ["No strength class given: neither preload nor share of yield can be reckoned"] : [];
  const bolt = boltOf(question.size, question.className);
  if (!isFigureError(bolt))
    lines.push(
      `Stress area ${rounded(loadArea(bolt.thread) * 1e6)} mm² (${rounded(loadArea(bolt.thread) / 0.0254 ** 2)} in²)`,
    );
  const value = tie.torques.find((torque) => torque.value)?.value;
  if (!value) return lines;
  const judged = assessTorque(si(value).high, question, assumptionsOf(settings));
  if (isFigureError(judged)) return [...lines, plain(judged.says)];
  const of = question.size.system === "unified" ? "the proof load" : "the yield stress";
  lines.push(
    `At ${plain(value.written)}: preload about ${rounded(judged.preload / 1000)} kN (${rounded(fromSi(judged.preload, "lbf"))} lbf), ${Math.round(judged.utilisation * 100)} % of ${of}`,
  );
  lines.push(
    `*Reckoned with ${plain(judged.assumptions.join("; "))}. Source: ${plain(judged.source)}. The maker's figure comes first.*`,
  );
  return lines;
}

function ofFluid(fluid: Fluid, units: Units): string[] {
  const kind = kindIn(fluidKinds, fluid.kind);
  return [
    `**${plain(fluid.name)}** · ${kind ? kind.title.toLowerCase() : "fluid"}`,
    fluid.volume ? bothSystems(fluid.volume, units) : "amount not given",
    fluid.recover ? "Must be caught, not let go" : "",
  ];
}

function ofHazard(hazard: Hazard, moment: Moment | undefined, units: Units): string[] {
  const kind = kindIn(hazardKinds, hazard.kind),
    lines = [
      `**${hazard.signal ? `${signals[hazard.signal].title}: ` : ""}${plain(hazard.name)}** · ${kind ? kind.title.toLowerCase() : hazard.kind}`,
    ];
  if (hazard.figures.size > 0)
    lines.push([...hazard.figures].map(([word, value]) => `${word} ${bothSystems(value, units)}`).join(" · "));
  hazard.precautions.forEach((precaution, i) => {
    const wait = waitOf(hazard, precaution),
      done = moment && at(moment.state.standing, precaution.number) !== 0 ? " *(taken before this line)*" : "";
    lines.push(`${i + 1}\\. ${precautionTitle(precaution.kind)}: ${plain(precaution.text)}${done}`);
    if (wait?.seconds !== undefined)
      lines.push(
        `Wait ${timeText(wait.seconds, units.wording)}${
          wait.decidedBy
            ? `,
      decided by ${wait.decidedBy.name}`
            : ""
        }: ${wait.steps.map(plain).join("; ")} *(${plain(wait.source)})*`,
      );
  });
  lines.push(
    "*A wait or a precaution does not stand for the proof. The maker's data, local rules and licensed people come first.*",
  );
  return lines;
}
