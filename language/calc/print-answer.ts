// Prints answers and the list of figures as text for a terminal or a file. Every answer ends with its caution.

import { isDimension, type Figure, type FigureArgument } from "../figures/figure.ts";
import type { FigureTopic } from "../figures/registry.ts";
import { rounded } from "../quantities/quantity.ts";
import { takesClause } from "./read-question.ts";
import type { Answer, Unanswered } from "./sheet.ts";

/** Width that long lines are broken at. */
const WIDTH = 100;
/** Width of the column of headings. */
const MARGIN = 11;

/** How a heading is shown: bold where colour may be used. */
export type Heading = (text: string) => string;
export const plainHeading: Heading = (text) => text;
export const boldHeading: Heading = (text) => `\u001b[1m${text}\u001b[0m`;

/** A value as printed: four figures, whole words, orders with their places. */
export function shownValue({ value, unit }: Answer["values"][number]): string {
  const one = (part: number | string): string => (typeof part === "number" ? shownNumber(part) : part);
  return `${typeof value === "object" ? value.map(one).join(", ") : one(value)}${unit === undefined ? "" : ` ${unit}`}`;
}

/** Four significant figures; whole numbers and counts as they are, and powers of ten where the decimals would run out. */
function shownNumber(value: number): string {
  if (Number.isInteger(value)) return String(value);
  return Math.abs(value) > 1e-6 ? rounded(value, 4) : value.toExponential(3);
}

/** One answer: what was asked, the results, formula, steps, assumptions, validity, source and caution. */
export function printAnswer(answer: Answer, heading: Heading): string {
  const inputs = Object.entries(answer.inputs).map(
    ([name, text]) => [name, Array.isArray(text) ? text.join(", ") : text] as const,
  );
  const blocks = [
    block("Given", table(inputs), heading),
    block("Result", table(answer.values.map((value) => [value.name, shownValue(value)] as const)), heading),
    block("Formula", wrapped(answer.formula), heading),
    block(
      "Steps",
      answer.steps.flatMap((step, at) => hanging(`${at + 1}. `, `${step.text}${stepValue(step)}`)),
      heading,
    ),
    block(
      "Assumed",
      answer.assumptions.flatMap((one) => wrapped(one)),
      heading,
    ),
    block("Holds for", wrapped(answer.validity), heading),
    block("Source", wrapped(answer.source), heading),
    block("Caution", wrapped(answer.caution), heading),
  ];
  return `${heading(answer.title)}\n${blocks.join("")}`;
}

/** The value of a step behind its text, where it has one. */
const stepValue = ({ value, unit }: Answer["steps"][number]): string =>
  value === undefined ? "" : `: ${shownValue({ name: "", value, unit })}`;

/** Why a question has no answer, and the nearest that would have one. */
export function printUnanswered({ error }: Unanswered): string {
  const nearest = error.nearest.length > 0 ? `  nearest: ${error.nearest.join(", ")}\n` : "";
  return `${error.says}\n${nearest}`;
}

/** The list of figures by topic: name and title of each. */
export function printList(topics: readonly FigureTopic[], heading: Heading): string {
  const widest = Math.max(...topics.flatMap((topic) => topic.figures.map((figure) => figure.name.length)));
  return topics
    .map(({ title, figures }) => {
      const lines = figures.map((figure) => `  ${figure.name.padEnd(widest)}  ${figure.title}\n`);
      return `${heading(title)}\n${lines.join("")}`;
    })
    .join("\n");
}

/** What a figure takes, with examples: for a name without a question. */
export function printFigure(figure: Figure, heading: Heading): string {
  const line = (wanted: FigureArgument): readonly [string, string] => {
    const takes =
      isDimension(wanted.takes) || wanted.takes === "word"
        ? ` ${takesClause(wanted).slice(wanted.name.length + 1)}`
        : "";
    const left = wanted.optional
      ? `; may be left out${wanted.default === undefined ? "" : ` (${wanted.default})`}`
      : "";
    return [wanted.name, `${wanted.about}${takes}${left}`];
  };
  return [
    `${heading(figure.title)}\n`,
    block("Takes", table(figure.arguments.map(line)), heading),
    block("Holds for", wrapped(figure.validity), heading),
    block("Source", wrapped(figure.source), heading),
    block(
      "Try",
      figure.examples.map((example) => `stripdown calc ${figure.name} ${example}`),
      heading,
    ),
  ].join("");
}

function block(name: string, lines: readonly string[], heading: Heading): string {
  return lines
    .map((line, at) => `${at === 0 ? heading(name) + " ".repeat(MARGIN - name.length) : " ".repeat(MARGIN)}${line}\n`)
    .join("");
}

/** Two columns, the second broken into lines under itself. */
function table(rows: readonly (readonly [string, string])[]): readonly string[] {
  const widest = Math.max(0, ...rows.map(([name]) => name.length));
  return rows.flatMap(([name, text]) =>
    wrapped(text, WIDTH - MARGIN - widest - 2).map((line, at) => `${(at === 0 ? name : "").padEnd(widest)}  ${line}`),
  );
}

/** A text behind a mark, its further lines set in under its first. */
function hanging(mark: string, text: string): readonly string[] {
  return wrapped(text, WIDTH - MARGIN - mark.length).map(
    (line, at) => `${at === 0 ? mark : " ".repeat(mark.length)}${line}`,
  );
}

/** Breaks a text at blanks, so that no line is longer than the width unless one word is. */
function wrapped(text: string, width = WIDTH - MARGIN): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
