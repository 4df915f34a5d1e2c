// A reading as a line prints it: what, its limits in words, what follows outside them, and the figures that a typed value is held
// against. It judges no value.

import { kept } from "../../model/kept.ts";
import type { Around } from "../../bench/trace.ts";
import { namedThings } from "../../bill/named-things.ts";
import type { Act, Consequence, Limits } from "../../model/act.ts";
import type { Entry, Model, Procedure } from "../../model/model.ts";
import type { Quantity, Rounding } from "../../quantities/index.ts";
import { namesText, nameText, thingOf, type LineContext } from "./context.ts";
import { figureText, systemOf, writtenText, type Units } from "./figures.ts";
import type { LineReading } from "./line.ts";

export function readingOf(context: LineContext, act: Act, around: Around, id: string, what: string): LineReading {
  const { limits } = act,
    ends = limits ? endsOf(limits) : { low: undefined, high: undefined, unit: "" };
  const texts = limits ? limitsText(limits, context) : "";
  return {
    id,
    what,
    limits: act.asFound
      ? context.wording.acts.asFound
      : texts || (act.verb === "measure" ? context.wording.acts.noLimits : ""),
    unit: ends.unit,
    otherwise: [
      ...act.consequences.map((each) => consequenceText(context, each, around)),
      ...furtherText(context, act),
    ],
    isFigure: act.verb === "measure" || limits !== undefined,
    low: ends.low,
    high: ends.high,
    chooses: act.consequences.flatMap((each) =>
      each.is === "choose"
        ? namedThings(context.model, each.names, around).map((thing) => thingOf(context, thing).id)
        : [],
    ),
  };
}

/** More that is written for the case that the reading fails, and that this build does not print: where it stands. */
function furtherText({ performance, model, wording }: LineContext, { id }: Act): string[] {
  if (id === undefined || model.chosen.has(`${id.text} fails`) || !hasBranch(performance.procedure, model, id.text))
    return [];
  return [
    wording.acts.otherwise(wording.acts.consequence.further(wording.document.build([{ is: "fails", name: id.text }]))),
  ];
}

const branches = kept<Model["procedures"], ReadonlySet<string>>();

/** `if READING fails`, or an `otherwise` behind it, stands in the procedure or in one that it may do. */
function hasBranch(procedure: Procedure, { procedures }: Model, reading: string): boolean {
  const found = branches(
    procedures,
    () =>
      new Set(
        [procedure, ...procedures.values()]
          .flatMap((each) => [...each.body, ...each.finish, ...each.refit])
          .flatMap(failing),
      ),
  );
  return found.has(reading);
}

const failing = (entry: Entry): string[] =>
  entry.is === "act"
    ? []
    : [
        ...(entry.condition?.states.flatMap(({ name, state }) => (state === "fails" ? [name.text] : [])) ?? []),
        ...entry.body.flatMap(failing),
      ];

/**
 * `at least 24.95 mm`, `0.05 to 0.15 mm at 20 °C`. What is in the other system of units than the reader's has its own figure behind it: the
 * reading is written down, and held against it, in that unit.
 */
export function limitsText(limits: Limits, units: Units): string {
  const { limits: words } = units.wording.acts,
    of = (quantity: Quantity, rounding?: Rounding): string => {
      const own = systemOf(quantity),
        told = figureText(quantity, units, rounding);
      return own === undefined || own === units.system || quantity.pair
        ? told
        : `${told} (${writtenText(quantity.written, units.wording)})`;
    };
  const { value, atLeast, atMost, at } = limits;
  const main = value
    ? of(value)
    : atLeast && atMost
      ? words.both(of(atLeast, "up"), of(atMost, "down"))
      : atLeast
        ? words.atLeast(of(atLeast, "up"))
        : atMost
          ? words.atMost(of(atMost, "down"))
          : "";
  return main === "" ? "" : main + (at ? words.condition(of(at)) : "");
}

/** In the unit as written. */
function endsOf({ value, atLeast, atMost }: Limits): {
  low: number | undefined;
  high: number | undefined;
  unit: string;
} {
  const unit = (value ?? atLeast ?? atMost)?.unit ?? "";
  if (value) return { low: value.low, high: value.high, unit };
  return { low: atLeast?.low, high: atMost?.high, unit };
}

function consequenceText(context: LineContext, consequence: Consequence, around: Around): string {
  const { acts } = context.wording;
  switch (consequence.is) {
    case "words":
      // Without its condition it would be read as a thing to do in any case.
      return acts.otherwiseLine(consequence.text);
    case "renew":
    case "scrap":
      return acts.otherwise(acts.consequence[consequence.is](namesText(context, consequence.names, around)));
    case "repeat":
      return acts.otherwise(acts.consequence.repeat(stepTitle(context, consequence.names[0]?.text ?? "")));
    case "choose": {
      const from = consequence.from.map((each) =>
        typeof each === "number"
          ? String(each)
          : "text" in each
            ? each.text === "standard" && namedThings(context.model, [each], around).length === 0
              ? acts.consequence.standardSize
              : nameText(context, each, around)
            : figureText(each, context),
      );
      return acts.otherwise(acts.consequence.choose(namesText(context, consequence.names, around), acts.list(from)));
    }
  }
}

/** The title of a step of this procedure by its name. */
export function stepTitle({ performance, wording }: LineContext, name: string): string {
  const step = [...performance.strip, ...performance.written].find(({ around }) => around.step?.name === name)?.around
    .step;
  return step ? wording.lines.stepNamed(step.number, step.title || step.name) : name.replaceAll("-", " ");
}
