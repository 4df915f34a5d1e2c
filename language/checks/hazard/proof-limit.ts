// A proof whose limit proves nothing: a voltage that is still dangerous, the hazard's own figure, or a lower limit.

import { si, type Quantity } from "../../quantities/index.ts";
import type { Hazard, Precaution } from "../../model/model.ts";
import { check } from "../check.ts";

/** Voltages above which a proof is asked about, in V; nothing is said of what lies below. */
const mostLeft = { dc: 60, ac: 50 } as const;
/** A gas or liquid above this counts as under pressure, Pa above the air; and the share of its range that a gauge cannot tell from nothing. */
const mostPressure = 50_000,
  gaugeError = 0.016;
/** So much of the hazard's own figure is no zero. */
const mostShare = 0.1;
/** Kinds of figure that a `prove-zero` brings to nothing. */
const broughtToZero: ReadonlySet<string> = new Set(["pressure", "force", "torque", "mass"]);

export default check({
  code: "hazard/proof-limit",
  title: "A proof that lets the danger through",
  severity: "error",
  why: "Whoever reads a figure inside the limit puts his hands in. A limit that the live part, the full line or the loaded spring keeps as well is no proof of anything.",
  source:
    "60 V dc: IEC 60204-1:2016, 6.2.4; 50 V ac: IEC 60364-4-41, extra-low voltage; 0.5 bar: Directive 2014/68/EU, article 1(1); 1.6 % of a gauge: EN 837-1, class 1.6 (all from memory); a tenth of its own figure: common practice; the maker's and the local rules come first",
  fails: `
    tool tester "Two-pole tester" { range 0..1000 V }
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard bus electrical danger "Drive bus" {
        on foot
        source capacitor
        voltage 560 V dc
        precaution isolate   "Open the isolator, lock it."
        precaution discharge "Let the bleeder work." wait 5 min
        precaution prove-dead "Plus to minus." at most 500 V dc with tester
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Drive bus is proved by at most 500 V dc, which lets more than 60 V dc or 50 V ac pass; the maker and local rules may ask for less
      }
    }
  `,
  mended: `
    tool tester "Two-pole tester" { range 0..1000 V }
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard bus electrical danger "Drive bus" {
        on foot
        source capacitor
        voltage 560 V dc
        precaution isolate   "Open the isolator, lock it."
        precaution discharge "Let the bleeder work." wait 5 min
        precaution prove-dead "Plus to minus." at most 12 V dc with tester
      }
    }
  `,
  model(model, say) {
    for (const hazard of model.hazards)
      for (const precaution of hazard.precautions) {
        const why = flaw(hazard, precaution);
        if (why === undefined) continue;
        if (typeof why === "string") say({ at: precaution.at, says: `${hazard.name} is proved by ${why}` });
        else say({ at: precaution.at, severity: "question", says: `${hazard.name} is proved by ${why.asks}` });
      }
  },
});

/** What is wrong with the limit; `asks`: what only the author can answer. */
function flaw(hazard: Hazard, { kind, limits }: Precaution): string | { readonly asks: string } | undefined {
  if ((kind !== "prove-dead" && kind !== "prove-zero") || !limits) return undefined;
  const { value, atLeast, atMost } = limits,
    limit = atMost ?? value ?? atLeast;
  if (!limit) return undefined;
  const said = [...(atLeast ? [`at least ${atLeast.written}`] : []), ...(atMost ? [`at most ${atMost.written}`] : [])],
    written = said.length > 0 ? said.join(", ") : limit.written,
    own = [...hazard.figures].filter(([, figure]) => figure.dimension === limit.dimension);
  if (isFromBelow(hazard, own)) {
    const lower = atLeast ?? value;
    if (!lower) return `${written}: what lacks here is proved by a lower limit, at least`;
    return sameAsOwn(
      written,
      own.find(([, figure]) => si(lower).low <= si(figure).high),
    );
  }
  const upper = atMost ?? value;
  if (!upper) return `${written}: what has to be gone is proved by an upper limit, at most`;
  const { high } = si(upper);
  if (upper.dimension === "voltage") {
    const [[word, full] = []] = own;
    if (full && currentOf(full) && currentOf(upper) && currentOf(full) !== currentOf(upper))
      return `${written}, and an instrument that is set to ${currentOf(upper)} does not show ${word} ${full.written}`;
    if (high > mostLeft[currentOf(upper) ?? (full && currentOf(full)) ?? "dc"])
      return `${written}, which lets more than ${mostLeft.dc} V dc or ${mostLeft.ac} V ac pass; the maker and local rules may ask for less`;
  }
  const same = sameAsOwn(
    written,
    own.find(([, figure]) => high >= si(figure).low),
  );
  if (same !== undefined || !broughtToZero.has(upper.dimension)) return same;
  const [word, full] = own.find(([, figure]) => high > si(figure).low * mostShare) ?? [];
  if (full) {
    const says = `${written}, which lets more than a tenth of its ${word} of ${full.written} pass; the maker and local rules may ask for less`;
    // So little may be no more than the gauge at hand can tell.
    return upper.dimension === "pressure" && high <= mostPressure ? { asks: says } : says;
  }
  const gauge = Math.max(0, ...own.map(([, figure]) => si(figure).high * gaugeError));
  return upper.dimension === "pressure" && high > Math.max(mostPressure, gauge)
    ? { asks: `${written}, which lets more than 0.5 bar pass; the maker and local rules may ask for less` }
    : undefined;
}

type Figure = readonly [string, Quantity];

const sameAsOwn = (written: string, own: Figure | undefined): string | undefined =>
  own && `${written}, and that is what the hazard has itself: ${own[0]} ${own[1].written}`;

/** Cold, air that lacks oxygen, a vacuum: what is dangerous lies below the limit. */
const isFromBelow = ({ kind }: Hazard, own: readonly Figure[]): boolean =>
  kind === "cold" ||
  kind === "suffocation" ||
  own.some(([, figure]) => figure.dimension === "pressure" && si(figure).high < 0);

const currentOf = ({ unit }: Quantity): "ac" | "dc" | undefined =>
  unit.endsWith("ac") ? "ac" : unit.endsWith("dc") ? "dc" : undefined;
