// Reads a thread's designation as ISO and ASME write it. It knows no table: whether such a pitch exists, the thread figures say.

import { parseNumber } from "./number.ts";
import type { QuantityProblem } from "./quantity.ts";
import { findUnit } from "./units.ts";

export interface ThreadSize {
  readonly system: "metric" | "unified" | "pipe";
  /** The thread alone, in its one spelling: `M8`, `M8x1`, `3/8-16 UNC`, `G1/4`, `1/4 NPT`. */
  readonly designation: string;
  /** The nominal size alone: `M8`, `3/8`, `#10`, `1/4`. */
  readonly nominal: string;
  /** Nominal diameter in m; `undefined` for pipe threads, whose size is a name and not a measure. */
  readonly diameter: number | undefined;
  /** Pitch in m as written; `undefined` for a metric size without one (coarse) and for pipe threads without threads per inch. */
  readonly pitch: number | undefined;
  /** A metric size without a pitch is the coarse one. */
  readonly coarse: boolean;
  /** UNC, UNF, UNEF, 8UN …; G, R, Rp, Rc, NPT, NPTF …; "M" for metric; `undefined` for a bare `3/8-16`. */
  readonly series: string | undefined;
  readonly threadsPerInch: number | undefined;
  /** Length of the fastener in m. */
  readonly length: number | undefined;
  /** `8.8`, `A2-70` behind the size. */
  readonly propertyClass: string | undefined;
  /** Tolerance class as written: `6g`, `2A`. */
  readonly tolerance: string | undefined;
  readonly leftHand: boolean;
}

const metricText =
  /^M\s?(\d+(?:\.\d+)?)(?:\s*[x×X]\s*(\d+(?:\.\d+)?))?(?:\s*[x×X]\s*(\d+(?:\.\d+)?)(?:\s*mm)?)?((?:[\s-]+(?:LH|[AC]\d-\d+|\d\dH|\d+\.\d+|\d[a-zA-Z]\d?[a-zA-Z]?))*)$/;
const unifiedText =
  /^(#\d+|\d+-\d+\/\d+|\d+\s+\d+\/\d+|\d+\/\d+|\d+)\s*-\s*(\d+)(?:\s*((?:\d+)?UN[A-Z]*))?(?:-(\d[AB]))?((?:[\s-]+LH)?)(?:\s*[x×X]\s*(\d+(?:\.\d+)?(?:-\d+\/\d+|\/\d+)?|\.\d+)\s*(in|mm|")?)?((?:[\s-]+LH)?)$/;
const pipePrefixText = /^(G|R|Rp|Rc)\s?(\d+(?:-\d+\/\d+|\s\d+\/\d+|\/\d+)?)([AB])?((?:[\s-]+LH)?)$/;
const pipeSuffixText =
  /^(\d+(?:-\d+\/\d+|\s\d+\/\d+|\/\d+)?)(?:\s*-\s*(\d+(?:\.\d+)?))?\s+(NPT|NPTF|NPSM|NPSF|NPSC|NPTR)((?:[\s-]+LH)?)$/;

/**
 * Below this share of the diameter the figure behind the first `x` is a pitch, above it a length: the coarsest metric pitch is a
 * quarter of its diameter (M1 x 0.25), and no standard screw is shorter than half of its diameter.
 */
const pitchShare = 0.3;

/**
 * Reads `M8`, `M8x35`, `M8x1x35`, `M8x35-8.8`, `M24x1.5-LH`, `3/8-16 UNC x 1.25 in`, `#10-32 UNF x 1/2 in`, `G1/4`, `R1/2`, `1/4 NPT`.
 * @returns a problem that says what such a designation looks like.
 */
export function parseThreadSize(text: string): ThreadSize | QuantityProblem {
  const plain = text.normalize("NFC").replace(/\s+/g, " ").trim();
  return (
    metric(plain) ??
    unified(plain) ??
    pipe(plain) ?? {
      problem: `"${plain}" is no thread size: write it as M8x35, M8x1x35, 3/8-16 UNC x 1.25 in, G1/4 or 1/4 NPT`,
    }
  );
}

export const isThreadSize = (result: ThreadSize | QuantityProblem): result is ThreadSize => "designation" in result;

function metric(text: string): ThreadSize | undefined {
  const match = metricText.exec(text);
  if (!match) return undefined;
  const d = Number(match[1]),
    suffixes = [...(match[4] ?? "").matchAll(/LH|[AC]\d-\d+|\d+\.\d+|\d[a-zA-Z]\d?[a-zA-Z]?/g)].map((each) => each[0]);
  let pitch = match[2] === undefined ? undefined : Number(match[2]);
  let length = match[3] === undefined ? undefined : Number(match[3]);
  if (pitch !== undefined && length === undefined && pitch >= pitchShare * d) {
    length = pitch;
    pitch = undefined;
  }
  if (d === 0 || pitch === 0 || length === 0) return undefined;
  return {
    system: "metric",
    designation: pitch === undefined ? `M${d}` : `M${d}x${pitch}`,
    nominal: `M${d}`,
    diameter: thousandth(d),
    pitch: pitch === undefined ? undefined : thousandth(pitch),
    coarse: pitch === undefined,
    series: "M",
    threadsPerInch: undefined,
    length: length === undefined ? undefined : thousandth(length),
    propertyClass: suffixes.find((each) => /^(?:[AC]\d-\d+|\d\dH|\d+\.\d+)$/.test(each)),
    tolerance: suffixes.find((each) => /^\d[a-zA-Z]/.test(each)),
    leftHand: suffixes.includes("LH"),
  };
}

function unified(text: string): ThreadSize | undefined {
  const match = unifiedText.exec(text);
  if (!match) return undefined;
  const [, nominalText = "", tpiText = "", series, tolerance, handBefore, lengthText, lengthUnit, handAfter] = match;
  const nominal = nominalText.replace(" ", "-"),
    inches = unifiedDiameter(nominal),
    tpi = Number(tpiText);
  if (inches === undefined || tpi === 0) return undefined;
  const length = lengthText === undefined ? undefined : parseNumber(lengthText);
  if (lengthText !== undefined && !length) return undefined;
  const perLength = lengthUnit === undefined || lengthUnit === '"' ? findUnit("in") : findUnit(lengthUnit);
  return {
    system: "unified",
    designation: `${nominal}-${tpi}${series === undefined ? "" : ` ${series}`}`,
    nominal,
    diameter: inches * 0.0254,
    pitch: 0.0254 / tpi,
    coarse: false,
    series,
    threadsPerInch: tpi,
    length: length && perLength ? length.value * perLength.factor : undefined,
    propertyClass: undefined,
    tolerance,
    leftHand: Boolean(handBefore || handAfter),
  };
}

/**
 * Nominal diameter of a unified size in inches: fractions as they stand, numbered sizes 0.060 in + 0.013 in x N (ASME B1.1).
 * @returns `undefined` for a text that is neither.
 */
export function unifiedDiameter(nominal: string): number | undefined {
  if (nominal.startsWith("#")) return Number((0.06 + 0.013 * Number(nominal.slice(1))).toFixed(3));
  const value = parseNumber(nominal)?.value;
  return value === undefined || value <= 0 ? undefined : value;
}

function pipe(text: string): ThreadSize | undefined {
  const prefix = pipePrefixText.exec(text),
    suffix = pipeSuffixText.exec(text);
  if (!prefix && !suffix) return undefined;
  const nominal = (prefix?.[2] ?? suffix?.[1] ?? "").replace(" ", "-"),
    series = prefix?.[1] ?? suffix?.[3] ?? "";
  if (unifiedDiameter(nominal) === undefined) return undefined;
  const tpi = suffix?.[2] === undefined ? undefined : Number(suffix[2]);
  return {
    system: "pipe",
    designation: prefix ? `${series}${nominal}` : `${nominal} ${series}`,
    nominal,
    diameter: undefined,
    pitch: tpi === undefined ? undefined : 0.0254 / tpi,
    coarse: false,
    series,
    threadsPerInch: tpi,
    length: undefined,
    propertyClass: undefined,
    tolerance: prefix?.[3],
    leftHand: Boolean(prefix?.[4] || suffix?.[4]),
  };
}

/** Millimetres to metres without a stray last bit: 1.25 gives 0.00125. */
const thousandth = (mm: number): number => Number((mm / 1000).toPrecision(12));
