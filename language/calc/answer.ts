// Answers questions to the figures, one or a sheet of them, in the published shape. It computes nothing itself and clears nothing.

import { assumptionsFrom } from "../figures/assumptions.ts";
import { cautions } from "../figures/cautions.ts";
import {
  isFigureError,
  sizeIn,
  type Figure,
  type FigureError,
  type FigureResult,
  type ResultValue,
} from "../figures/figure.ts";
import { figures, findFigure } from "../figures/registry.ts";
import { convertValue } from "../quantities/quantity.ts";
import { findUnit } from "../quantities/units.ts";
import { jsonProblem, shapeProblem } from "../world/shape-problem.ts";
import { nearestWords } from "./nearest.ts";
import { readNamed, readQuestion, type Question } from "./read-question.ts";
import { questionSheet, type Answer, type AskedQuestion, type Unanswered } from "./sheet.ts";

/** Settings over the default assumptions, by name. */
export type AssumptionSettings = Readonly<Record<string, number | string>>;

/** Names of the figures in order. */
const figureNames: readonly string[] = figures.map((figure) => figure.name).sort();

/** The figure of a name, or an error with the nearest names. */
export function figureNamed(name: string): Figure | FigureError {
  const found = findFigure(name);
  if (found !== undefined) return found;
  const near = nearestWords(name, figureNames);
  return {
    says: `${name} is no figure${near.length > 0 ? `: did you mean ${near.join(" or ")}` : ""}`,
    nearest: near.length > 0 ? near : figureNames,
  };
}

const isFigure = (value: Figure | FigureError): value is Figure => "run" in value;
const isProblem = (value: Question | FigureError): value is FigureError => "says" in value;
/** Whether a question got an answer. */
export const isAnswer = (value: Answer | Unanswered): value is Answer => "values" in value;

/** What may be set for a question: assumptions, and the system of units that its results are given in (as the figure has them, if left out). */
export interface Wishes {
  readonly assumptions?: AssumptionSettings | undefined;
  readonly system?: "metric" | "us" | undefined;
}

/** Answers a question as typed: the figure's name and the words behind it. */
export function answerWords(name: string, words: readonly string[], wishes: Wishes = {}): Answer | Unanswered {
  const figure = figureNamed(name);
  if (!isFigure(figure)) return unanswered(name, figure);
  return answerWith(figure, readQuestion(figure, words), wishes);
}

/** Answers a question of a sheet: name and inputs by name. `assumptions` hold where the question sets none of that name. */
export function answerAsked(asked: AskedQuestion, assumptions: AssumptionSettings = {}): Answer | Unanswered {
  const figure = figureNamed(asked.name);
  const answer = isFigure(figure)
    ? answerWith(figure, readNamed(figure, asked.inputs ?? {}), {
        ...asked,
        assumptions: { ...assumptions, ...asked.assumptions },
      })
    : unanswered(asked.name, figure);
  return asked.id === undefined ? answer : { id: asked.id, ...answer };
}

/** Why a sheet of questions cannot be read at all. */
export interface SheetProblem {
  readonly problem: string;
}

/**
 * Answers a sheet of questions in its own order. A question that has no answer stands in its place with the reason; only a text that is no sheet is a
 * problem.
 */
export function answerSheet(
  text: string,
  assumptions: AssumptionSettings = {},
): readonly (Answer | Unanswered)[] | SheetProblem {
  let read: unknown;
  try {
    read = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (reason) {
    return { problem: `the questions cannot be read: ${jsonProblem(reason)}` };
  }
  const sheet = questionSheet.safeParse(read);
  if (!sheet.success)
    return { problem: `the questions do not have the published shape: ${shapeProblem(sheet.error.issues, read)}` };
  const list = Array.isArray(sheet.data) ? sheet.data : sheet.data.questions;
  return list.map((asked) => answerAsked(asked, assumptions));
}

function answerWith(figure: Figure, question: Question | FigureError, wishes: Wishes): Answer | Unanswered {
  if (isProblem(question)) return unanswered(figure.name, question);
  const { assumptions, problems } = assumptionsFrom(wishes.assumptions ?? {});
  if (problems.length > 0)
    return unanswered(
      figure.name,
      { says: problems.map((one) => one.says).join("; "), nearest: problems.map((one) => one.name) },
      question,
    );
  const result = figure.run(question.inputs, assumptions);
  if (isFigureError(result)) return unanswered(figure.name, result, question);
  return answered(figure, question, result, wishes.system);
}

function answered(figure: Figure, question: Question, result: FigureResult, system: Wishes["system"]): Answer {
  return {
    name: figure.name,
    title: figure.title,
    inputs: { ...question.written },
    values: result.values
      .map((one) => inSystem(one, system))
      .map(({ name, value, unit }) => ({
        name,
        value: tidy(value),
        ...(unit === undefined ? {} : { unit }),
      })),
    formula: result.formula,
    steps: result.steps.map(({ text, value, unit }) => ({
      text,
      ...(value === undefined ? {} : { value: tidyOne(value) }),
      ...(unit === undefined ? {} : { unit }),
    })),
    assumptions: [...result.assumptions, ...lengthsRead(figure, question)],
    validity: figure.validity,
    source: result.source,
    caution: result.caution,
  };
}

/** How a size with one figure behind its `x` was read, where the figure takes no notice of a length: "M8x3" may have meant a pitch. */
const lengthsRead = (figure: Figure, { inputs, written }: Question): readonly string[] =>
  figure.arguments.flatMap(({ name, takes }) => {
    const size = takes === "size" ? sizeIn(inputs, name) : undefined;
    return size?.length === undefined || size.system !== "metric" || !size.coarse
      ? []
      : [
          `${String(written[name])} is read as ${size.designation} (coarse), ${Number((size.length * 1e3).toPrecision(6))} mm long`,
        ];
  });

/** A result in the other system of units, where its unit has a counterpart there. */
function inSystem(result: ResultValue, system: Wishes["system"]): ResultValue {
  const unit = result.unit === undefined ? undefined : findUnit(result.unit);
  if (system === undefined || unit?.counterpart?.system !== system) return result;
  const to = unit.counterpart.unit;
  const of = (value: number | string): number | string =>
    typeof value === "number" ? convertValue(value, unit.name, to) : value;
  return {
    name: result.name,
    value: typeof result.value === "object" ? result.value.map(of) : of(result.value),
    unit: to,
  };
}

function unanswered(name: string, error: FigureError, question?: Question): Unanswered {
  return {
    name,
    ...(question === undefined ? {} : { inputs: { ...question.written } }),
    error: { says: error.says, nearest: [...(error.nearest ?? [])] },
    caution: cautions.general,
  };
}

/** Twelve figures are more than any of the formulas holds; the rest is the arithmetic's own noise. */
const tidyOne = (value: number | string): number | string =>
  typeof value === "number" ? Number(value.toPrecision(12)) : value;
const tidy = (value: ResultValue["value"]): number | string | (number | string)[] =>
  typeof value === "object" ? value.map(tidyOne) : tidyOne(value);
