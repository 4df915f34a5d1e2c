// Printed lines for paper: panels before the action that they belong to, actions with their box, pictures, places to write.

import { hazardFacts, mustStand } from "../lines/hazard-facts.ts";
import { systemOf, unitText } from "../lines/figures.ts";
import type { ActionLine, Detail, HazardLine, HazardText, Line, LineGroup, LineReading, Shot } from "../lines/line.ts";
import type { Chapter } from "../manual/document.ts";
import { lineElement, type PlanLine } from "../manual/tablet/plan.ts";
import { signNumber, warningSign } from "../manual/signs.ts";
import type { OutputOptions } from "../output.ts";
import { signals, type SignalName } from "../../tables/index.ts";
import { shownOnOneLine } from "../text/shown.ts";
import { blank, codeOf, drawn, heading, par, svgFileOf } from "./pieces.ts";
import type { ActionRow, Blank, Block, Panel, PrintDocument, Words } from "./print.ts";
import { bold, isHigh, joined, words } from "./words.ts";

/** What lines are laid out with. Pictures are collected here, each once. */
export interface Layout {
  readonly options: OutputOptions;
  readonly plan: ReadonlyMap<string, PlanLine>;
  /** mm. */
  readonly room: { readonly width: number; readonly height: number };
  readonly files: PrintDocument["files"][number][];
}

export function groupBlocks(group: LineGroup, chapter: Chapter, layout: Layout): Block[] {
  const code = chapter.codes[group.id],
    head = heading(2, `${group.number} ${group.title}`, false, true),
    blocks: Block[] = [code ? { ...head, code: codeOf(code, layout.options.wording) } : head];
  let rows: ActionRow[] = [];
  const close = (): void => {
    if (rows.length > 0) blocks.push({ is: "actions", rows });
    rows = [];
  };
  for (const line of group.lines) {
    if (line.is === "action") rows.push(actionRow(line, chapter, layout));
    else {
      close();
      blocks.push(
        ...toldBlocks(line, layout).map((block) => (block.is === "panel" ? { ...block, keep: true } : block)),
      );
    }
  }
  close();
  return blocks;
}

function toldBlocks(line: Exclude<Line, ActionLine>, layout: Layout): Block[] {
  const { options } = layout,
    { document, manual } = options.wording,
    given = line.given.length > 0 ? manual.given(line.given) : "";
  switch (line.is) {
    case "hazard":
      return [hazardPanel(line.hazard, options, line, given)];
    case "message":
      return [
        messagePanel(
          line.signal,
          joined(words(given), line.on !== "" && words(document.on(line.on))),
          line.text,
          options,
        ),
      ];
    case "note":
      return [par(joined(words(given), words(line.says)), line.recorded === true ? "bar" : "note")];
    case "video":
      return [par(joined(words(given), words(line.says), words(line.file ?? "")), "note")];
    case "photo":
      return photoBlocks(line, given, layout);
  }
}

/** What stands beside the sentence, where the hand is; the rest stands under it. */
const beside: ReadonlySet<Detail["sort"]> = new Set(["tool", "torque", "passes", "order", "goes-to"]);

function actionRow(line: ActionLine, chapter: Chapter, { options, plan, room }: Layout): ActionRow {
  const { manual } = options.wording,
    id = lineElement(chapter.prefix, line.id),
    drawing = chapter.drawings[line.id];
  const says = ({ sort, says: text }: Detail): Words => (sort === "torque" ? bold(text) : words(text));
  // Where the group is drawn, the drawing says the order: two ways of counting side by side would mislead.
  const side = line.details.filter((each) => beside.has(each.sort) && !(drawing && each.sort === "order")),
    under = line.details.filter((each) => !beside.has(each.sort) && !isOfReading(each, line));
  const row = {
    id,
    number: line.id,
    says: joined(
      line.given.length > 0 && words(manual.given(line.given)),
      words(line.says),
      line.text !== "" && words(line.text),
    ),
    side: side.map(says),
    under: [...(line.refused ? [bold(manual.problem)] : []), ...under.map(says)],
    blanks: blanksOf(line, plan.get(id), options),
    ...(drawing ? { drawing: drawn(drawing, { width: room.width - 20, height: room.height * 0.75 }, "", 0.66) } : {}),
  };
  return { ...row, high: isHigh([row.says, ...row.side, ...row.under, ...row.blanks.map(({ label }) => label)]) };
}

const isOfReading = ({ sort }: Detail, { readings }: ActionLine): boolean =>
  readings.length > 0 && (sort === "limits" || sort === "otherwise");

/** Places to write: what the record is held against, no more and no less. */
function blanksOf(line: ActionLine, plan: PlanLine | undefined, { wording, system }: OutputOptions): Blank[] {
  const { tablet, manual } = wording,
    { counts = [], torques = [], readings = [] } = plan ?? {};
  const nameOf = (item: string): string => line.items.find((each) => each.id === item)?.name ?? item;
  return [
    ...counts.map(({ item, due }) =>
      blank(
        counts.length === 1 ? tablet.counted : tablet.countedOf(nameOf(item)),
        14,
        due === undefined ? "" : `/ ${due}`,
      ),
    ),
    ...torques.flatMap(({ item, given }) => {
      const units = [...new Set(given.length > 0 ? given.map(({ unit }) => unit) : ["N·m", "lbf·ft"])].sort(
        (a, b) => Number(systemOf({ unit: a }) !== system) - Number(systemOf({ unit: b }) !== system),
      );
      return [
        blank(torques.length === 1 ? tablet.setAt : tablet.setAtOf(nameOf(item)), 18, units.join(" / ")),
        blank(tablet.wrench, 22),
        blank(tablet.initials, 14),
      ];
    }),
    ...readings.flatMap(({ chooses }, i) =>
      line.readings[i]
        ? [...readingBlanks(line.readings[i], wording), ...(chooses === true ? [blank(tablet.chosen, 40)] : [])]
        : [],
    ),
    ...(plan?.sign === true ? [blank(manual.signed, 60)] : []),
  ];
}

function readingBlanks(reading: LineReading, wording: OutputOptions["wording"]): Blank[] {
  const { manual, acts, tablet } = wording;
  const told = [
    ...(reading.limits === "" ? [] : [acts.limitsLine(reading.limits)]),
    ...reading.otherwise.map((text) => acts.otherwiseLine(text)),
  ].map((text): Blank => ({ label: words(text), after: "", width: 0 }));
  const place = reading.isFigure
    ? blank(manual.reading, 30, unitText(reading.unit, wording))
    : { ...blank(tablet.asItShouldBe, 0), choices: [tablet.yes, tablet.no] };
  return [...told, place];
}

export function photoBlocks({ file, alt, points, at }: Shot, given: string, { options, files }: Layout): Block[] {
  const { manual } = options.wording,
    got = options.picture?.(file, at.file);
  if (!got) return [par(words(manual.pictureOff(alt || file)), "note")];
  if ("problem" in got) return [par(words(`${manual.pictureMissing(file, got.problem)} ${alt}`), "note")];
  const ending = got.type === "image/svg+xml" ? "svg" : got.type.slice("image/".length);
  let known = files.find((each) => each.base64 === got.base64);
  if (!known) {
    known = { name: `picture-${files.length + 1}.${ending}`, base64: got.base64, shownAs: file };
    files.push(known);
  }
  const named = points.map((point) => `${point.mark} ${point.name}`).join(", ");
  return [
    {
      is: "picture",
      file: known.name,
      alt: shownOnOneLine(alt || file),
      caption: joined(words(given), words(alt || file), named !== "" && words(`(${named})`)),
      // Written in per cent; a point beyond the edge is told at the edge.
      points: points.map(({ mark, across, down }) => ({ mark, across: shareOf(across), down: shareOf(down) })),
    },
  ];
}

const shareOf = (percent: number): number => Math.min(1, Math.max(0, percent / 100));

// --- panels ------------------------------------------------------------------------------------------------------------------------

export function hazardPanel(hazard: HazardText, options: OutputOptions, line?: HazardLine, given = ""): Panel {
  const { manual } = options.wording,
    { wording } = options;
  const lines: Words[] = [
    ...hazardFacts(hazard, wording).map((fact) => words(fact)),
    ...(line && line.half !== "strip" ? mustStand(hazard, wording).map(bold) : []),
  ];
  return panel(
    hazard.signal,
    {
      title: joined(words(given), words(wording.document.titled(hazard.kindTitle, hazard.name))),
      lines,
      ...(hazard.signal === "notice"
        ? {}
        : {
            sign: {
              svg: svgFileOf(warningSign(hazard.kind, "")),
              under: manual.hazardMark(signNumber(hazard.kind)),
            },
          }),
      ...(line === undefined && hazard.precautions.length > 0
        ? {
            precautions: {
              head: manual.precautions,
              items: hazard.precautions.map(({ title, text, details }) =>
                joined(
                  words(`${title}${wording.document.colon}`),
                  words(text),
                  ...details.map(({ says }) => words(says)),
                ),
              ),
            },
          }
        : {}),
    },
    options,
  );
}

export const messagePanel = (signal: SignalName, title: Words, text: string, options: OutputOptions): Panel =>
  panel(signal, { title, lines: [words(text)] }, options);

function panel(
  signal: SignalName | undefined,
  body: Pick<Panel, "title" | "lines" | "sign" | "precautions">,
  { wording }: OutputOptions,
): Panel {
  return {
    is: "panel",
    signal: signal ?? "none",
    word: signal ? wording.kinds.signal(signal) : wording.document.noSignal,
    hurts: signal === undefined || signals[signal].people,
    ...body,
    keep: false,
    high: isHigh([body.title, ...body.lines, ...(body.precautions?.items ?? [])]),
  };
}
