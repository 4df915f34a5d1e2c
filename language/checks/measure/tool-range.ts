// A limit that the tool of the reading cannot read: of another dimension, or outside its range; and a proof whose instrument ends below
// what may still stand there.

import { dimensionNames, si, type Dimension, type Quantity } from "../../quantities/index.ts";
import type { Span } from "../../findings/finding.ts";
import type { Act, Name } from "../../model/act.ts";
import type { Hazard, Model } from "../../model/model.ts";
import { kindIn, precautions } from "../../tables/index.ts";
import { actsOf } from "../acts-of.ts";
import { check, type Say } from "../check.ts";

interface Reading {
  readonly tools: readonly Name[];
  readonly limits: { readonly value?: Quantity; readonly atLeast?: Quantity; readonly atMost?: Quantity } | undefined;
  readonly at: Span;
}

export default check({
  code: "measure/tool-range",
  title: "The tool cannot read this limit",
  severity: "warning",
  why: "The unit of the limit is a slip, or another instrument is meant: the hand at the bench holds one that cannot show what is asked.",
  source: "EN 837-1 (accuracy classes of pressure gauges, from memory); else common practice",
  fails: `
    tool feeler "Feeler gauges" { range 0.05..1 mm }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure look "Look" for box {
      aim none
      step "Measure" {
        measure gap on lid "Gap at the rim" at most 3 mm with feeler
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ The range of Feeler gauges is 0.05..1 mm, and the limit is 3 mm
      }
    }
  `,
  mended: `
    tool feeler "Feeler gauges" { range 0.05..1 mm }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure look "Look" for box {
      aim none
      step "Measure" {
        measure gap on lid "Gap at the rim" at most 0.3 mm with feeler
      }
    }
  `,
  model(model, say) {
    for (const hazard of model.hazards)
      for (const precaution of hazard.precautions) {
        if (isProof(precaution.kind)) tooSmall(hazard, precaution, model, say);
        limitsOf(precaution, model, say);
      }
    for (const procedure of model.procedures.values())
      for (const act of actsOf(procedure)) {
        limitsOf(act, model, say);
        for (const proof of proofsBy(model, act))
          if (!tooSmall(proof.hazard, proof, model, say)) limitsOf(proof, model, say);
      }
  },
});

/** What may still stand there when the proof is made has to be within the instrument: a gauge bursts, a tester arcs over. */
function tooSmall(hazard: Hazard, { tools, at }: Pick<Reading, "tools" | "at">, model: Model, say: Say): boolean {
  let found = false;
  for (const { text } of tools) {
    const tool = model.library.tools.get(text),
      full = [...hazard.figures.values()].find(({ dimension }) => dimension === tool?.range?.dimension);
    if (!tool?.range || !full || si(full).high <= si(tool.range).high) continue;
    found = true;
    say({
      at,
      says: `${hazard.name}: up to ${full.written} may still stand where this is proved, and the range of ${tool.name} is ${tool.range.written}`,
      because: [{ says: `the range is said here`, at: tool.at }],
    });
  }
  return found;
}

function limitsOf(reading: Reading, model: Model, say: Say): void {
  const { limits, at } = reading;
  if (!limits) return;
  // A spanner beside the gauge has no range and reads nothing.
  const tools = reading.tools.flatMap(({ text }) => {
    const of = model.library.tools.get(text);
    return of?.range ? [{ of, range: of.range }] : [];
  });
  if (tools.length === 0) return;
  for (const limit of [limits.value, limits.atLeast, limits.atMost]) {
    if (!limit) continue;
    // Of several the one that shows this kind of figure reads it, or none does.
    const apt = tools.filter(({ range }) => range.dimension === limit.dimension),
      judged = apt.length > 0 ? apt : tools;
    if (judged.some(({ range }) => canRead(range, limit))) continue;
    const { of, range } = judged[0]!,
      isOther = limit.dimension !== range.dimension,
      why = isOther
        ? `, a figure of ${dimensionNames[limit.dimension].title}`
        : isOutside(limit, range)
          ? ""
          : ": too little of its scale to be read";
    say({
      at,
      says: `The range of ${of.name} is ${range.written}, and the limit is ${limit.written}${why}`,
      because: [{ says: `the range is said here`, at: of.at }],
    });
    return;
  }
}

const isProof = (kind: string): boolean => kindIn(precautions, kind)?.provedWith !== undefined;

/** A proof by another instrument than the hazard names: it reads the limit that stands there, or what has to be gone. */
function proofsBy({ hazards }: Model, act: Act): (Reading & { readonly hazard: Hazard })[] {
  if (!isProof(act.verb) || act.tools.length === 0 || act.limits) return [];
  const found: (Reading & { readonly hazard: Hazard })[] = [];
  for (const { text } of act.names)
    for (const hazard of hazards) {
      const proof = hazard.declared === text && hazard.precautions.find(({ kind }) => kind === act.verb);
      if (!proof || act.tools.every((tool) => proof.tools.some((other) => other.text === tool.text))) continue;
      const full = hazard.figures.get(act.verb === "prove-dead" ? "voltage" : "pressure");
      found.push({ hazard, tools: act.tools, limits: proof.limits ?? (full && { atMost: full }), at: act.at });
    }
  return found;
}

/**
 * What an instrument shows of one kind alone. Electrical ones have several scales, and a spring balance on a lever reads a torque.
 */
const plain: ReadonlySet<Dimension> = new Set<Dimension>([
  "length",
  "pressure",
  "temperature",
  "angle",
  "time",
  "volume",
]);

/** What shows one of these shows none of the plain ones of the other list; a multimeter has a scale of temperature. */
const electric: ReadonlySet<Dimension> = new Set<Dimension>([
    "voltage",
    "current",
    "resistance",
    "capacitance",
    "frequency",
    "power",
  ]),
  mechanical: ReadonlySet<Dimension> = new Set<Dimension>(["length", "pressure", "volume"]);

/** Can an instrument of this range tell whether the limit is kept? */
function canRead(range: Quantity, limit: Quantity): boolean {
  const [a, b] = [range.dimension, limit.dimension];
  if (a === b) return !isOutside(limit, range) && !isLostOnScale(limit, range);
  const apart = (electric.has(a) && mechanical.has(b)) || (mechanical.has(a) && electric.has(b));
  return !apart && !(plain.has(a) && plain.has(b));
}

/**
 * A gauge that reads to the end of its scale shows nothing of a limit as small as this share of it. The finest class of EN 837-1 errs
 * by 0.1 % of the span; a fifth of that leaves room for better ones. Zero is read at the stop.
 */
const leastShare = 0.0002;
function isLostOnScale(limit: Quantity, range: Quantity): boolean {
  const { high } = si(limit),
    { low: from, high: to } = si(range);
  return limit.dimension === "pressure" && from === 0 && high > 0 && high < to * leastShare;
}

/**
 * No figure of the limit lies in the range; of what is no length, the upper one over it is enough, since a gauge stays at its end where
 * feelers are laid together. A hair beside its ends is in it.
 */
function isOutside(limit: Quantity, range: Quantity): boolean {
  const { low, high } = si(limit),
    { low: from, high: to } = si(range),
    hair = 1e-9 * Math.max(Math.abs(from), Math.abs(to));
  return high < from - hair || (limit.dimension === "length" ? low : high) > to + hair;
}
