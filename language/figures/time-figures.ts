// Figures on times and scores: time of an operation, rows of the published tables, depth points and the EU index.

import { argument, numberIn, plain, result, step, textIn, type Figure } from "./figure.ts";
import { SERVICE_WORKSHEET, TIME_TABLES } from "./action-times.ts";
import { depthPoints, euClass, euIndex } from "./disassembly-scores.ts";
import { hazardFigure, highestIn, shown } from "./hazard-figure.ts";
import { lineTime } from "./work-time.ts";

const rowSeconds = (action: string): number => SERVICE_WORKSHEET.rows.find((row) => row.action === action)!.seconds;
const TOOL = rowSeconds("fetch and put back a tool");
const ASIDE = rowSeconds("set a removed item aside");
const SCREW = rowSeconds("remove a screw");

/** Time to take off a number of like items with one tool. */
export const operationTime: Figure = hazardFigure({
  name: "operation-time",
  title: "Time of an operation",
  topic: "times",
  arguments: [
    argument("items", "number", "number of like items", { whole: true }),
    argument("each", "time", "time to take one off", { optional: true, default: `${SCREW} s, a small screw` }),
    argument("aside", "time", "time to set one aside", { optional: true, default: `${ASIDE} s` }),
    argument("tool", "time", "time to fetch the tool and put it back", { optional: true, default: `${TOOL} s` }),
  ],
  validity: "skilled bench work on a small instrument; measured first attempts took about twice as long",
  source: SERVICE_WORKSHEET.source,
  examples: ["3 11.3 s", "6"],
  answer(inputs) {
    const line = {
      count: numberIn(inputs, "items")!,
      removeSeconds: highestIn(inputs, "each") ?? SCREW,
      setAsideSeconds: highestIn(inputs, "aside") ?? ASIDE,
      toolSeconds: highestIn(inputs, "tool") ?? TOOL,
    };
    const seconds = lineTime(line);
    return {
      values: [result("time", seconds, "s")],
      formula: "t = tool + n (remove + set aside)",
      steps: [
        step(
          `${shown(line.toolSeconds)} s + ${shown(line.count)} x ${shown(line.removeSeconds + line.setAsideSeconds)} s = ${shown(seconds)} s`,
        ),
      ],
      assumptions: [
        ...(inputs["each"] === undefined ? [`a small screw, ${SCREW} s`] : []),
        ...(inputs["aside"] === undefined ? [`set aside, ${ASIDE} s`] : []),
        ...(inputs["tool"] === undefined ? [`one tool fetched, ${TOOL} s`] : []),
      ],
    };
  },
});

/** Rows of a published table of times. */
export const actionTime: Figure = hazardFigure({
  name: "action-time",
  title: "Published times of actions",
  topic: "times",
  arguments: [
    argument("table", "word", "which table", { words: TIME_TABLES.map((table) => table.id) }),
    argument("action", "text", "words of the action, or part of them", { optional: true, default: "every row" }),
  ],
  validity: "each table on its own basis; they differ by a factor of two and more",
  source: TIME_TABLES.map((table) => `${table.id}: ${table.source}`).join("; "),
  examples: ["worksheet screw", "measured"],
  answer(inputs) {
    const table = TIME_TABLES.find((one) => one.id === textIn(inputs, "table"))!;
    const wanted = textIn(inputs, "action")?.toLowerCase();
    const rows = table.rows.filter(
      (row) => wanted === undefined || `${row.action}, ${row.condition}`.toLowerCase().includes(wanted),
    );
    if (rows.length === 0)
      return {
        says: `action-time: no row of ${table.id} holds "${wanted}"`,
        nearest: [...new Set(table.rows.map((row) => row.action))],
      };
    return {
      values: rows.map((row) =>
        result(row.condition === "" ? row.action : `${row.action}, ${row.condition}`, row.seconds, "s"),
      ),
      formula: "rows of the table",
      steps: [
        step(`${table.method}: ${table.basis}`),
        ...(rows.some((row) => row.standing === "memory")
          ? [step("From memory, not seen in a source: check before any use")]
          : []),
      ],
      source: table.source,
    };
  },
});

/** Points for the number of steps to a part. */
export const depth: Figure = hazardFigure({
  name: "depth-points",
  title: "Points for disassembly depth",
  topic: "scores",
  arguments: [
    argument("steps", "number", "steps to the part: parts off and changes of tool, and one for the mains plug"),
  ],
  validity: "smartphones and slate tablets; step counts say less of larger machines than times do",
  source: "Regulation (EU) 2023/1669, Annex IV point 5, through an article (read)",
  examples: ["6"],
  answer(inputs) {
    const steps = numberIn(inputs, "steps")!;
    return {
      values: [plain("points", depthPoints(steps))],
      formula: "to 2 steps 5, to 5 4, to 10 3, to 15 2, more 1",
      steps: [step(`${steps} steps: ${depthPoints(steps)} points`)],
    };
  },
});

const score = (name: string, about: string) => argument(name, "number", `${about}, 1 to 5 points`);

const scores = [
  score("depth", "disassembly depth"),
  score("fasteners", "fasteners"),
  score("tools", "tools"),
  score("spare-parts", "spare parts"),
  score("updates", "software updates"),
  score("information", "repair information"),
];

/** The EU index of six scores. */
export const repairIndex: Figure = hazardFigure({
  name: "eu-index",
  title: "EU repairability index",
  topic: "scores",
  arguments: scores,
  validity: "smartphones and slate tablets",
  source: "Regulation (EU) 2023/1669, Annex II and Annex IV point 5, through a compliance page (read)",
  examples: ["4.05 5 4 5 1 5"],
  answer(inputs) {
    const of = (name: string): number => numberIn(inputs, name)!;
    for (const each of scores) {
      if (of(each.name) < 1 || of(each.name) > 5)
        return { says: `eu-index: ${each.name} lies from 1 to 5 points, not ${of(each.name)}` };
    }
    const index = euIndex({
      depth: of("depth"),
      fasteners: of("fasteners"),
      tools: of("tools"),
      spareParts: of("spare-parts"),
      softwareUpdates: of("updates"),
      information: of("information"),
    });
    const others = of("fasteners") + of("tools") + of("spare-parts") + of("updates") + of("information");
    return {
      values: [plain("index", index), plain("class", euClass(index))],
      formula: "R = 0.25 depth + 0.15 (fasteners + tools + spare parts + updates + information)",
      steps: [step(`0.25 x ${of("depth")} + 0.15 x ${shown(others)} = ${shown(index)}`)],
    };
  },
});
