// A thread size resolved against the standards: pitch, diameters, stress area, tap drill. A size that no table has is answered with the
// nearest ones, never with a guess.

import { rounded } from "../quantities/quantity.ts";
import { unifiedDiameter, type ThreadSize } from "../quantities/thread-size.ts";
import {
  aidCaution,
  argument,
  isFigureError,
  missing,
  plain,
  result,
  sizeIn,
  step,
  type Figure,
  type FigureError,
} from "./figure.ts";
import {
  internalMinorDiameter,
  metricTapDrill,
  minorArea,
  nominalStressArea,
  pitchDiameter,
  rootDiameter,
  stressArea,
  threadShare,
  unifiedStressArea,
  unrMinorDiameter,
} from "./thread-profile.ts";
import { coarsePitches, finePitches, gasThreads, nptThreads } from "./thread-tables.ts";
import { findUnifiedThread, unifiedThreads, type UnifiedThread } from "./unified-threads.ts";

/** A thread that the standards know; lengths in m, areas in m². */
export interface Thread {
  readonly system: ThreadSize["system"];
  readonly designation: string;
  readonly series: string;
  readonly diameter: number;
  readonly pitch: number;
  readonly pitchDiameter: number;
  /** Of the external thread's rounded root, d3. */
  readonly rootDiameter: number;
  readonly stressArea: number;
  /** As printed in the metric load tables, three figures. */
  readonly nominalStressArea: number;
  readonly unified: UnifiedThread | undefined;
}

const seriesOfMetric = (d: number, pitch: number): "coarse" | "fine" | undefined =>
  coarsePitches.get(d) === pitch ? "coarse" : finePitches.get(d)?.includes(pitch) ? "fine" : undefined;

const mm = (metres: number): number => Number((metres * 1e3).toPrecision(12));

/**
 * The thread behind a size. A metric size without a pitch is the coarse one (ISO 965-1).
 * Errors: a diameter or pitch that ISO 261 does not have, a unified pair that ASME B1.1 does not list, pipe threads (which carry no bolt load).
 * Units: m. Source: ISO 261, ISO 724, ISO 68-1, ASME B1.1 (read through published tables).
 */
export function threadOf(size: ThreadSize): Thread | FigureError {
  if (size.system === "pipe")
    return { says: `${size.designation} is a pipe thread: it seals, and has no stress area or class` };
  if (size.system === "unified") return unified(size);
  const d = mm(size.diameter!),
    coarse = coarsePitches.get(d);
  if (coarse === undefined && !finePitches.has(d))
    return { says: `${size.nominal} is not in ISO 261`, nearest: nearestMetric(d) };
  if (size.pitch === undefined && coarse === undefined) {
    return {
      says: `${size.nominal} has no coarse pitch in ISO 261`,
      nearest: finePitches.get(d)!.map((pitch) => `M${d}x${pitch}`),
    };
  }
  const pitch = size.pitch === undefined ? coarse! : mm(size.pitch),
    series = seriesOfMetric(d, pitch);
  if (series === undefined) {
    const pitches = [...(coarse === undefined ? [] : [coarse]), ...(finePitches.get(d) ?? [])];
    return {
      says: `${size.nominal} with a pitch of ${pitch} mm is not in ISO 261`,
      nearest: pitches.map((each) => (each === coarse ? `M${d}` : `M${d}x${each}`)),
    };
  }
  return made("metric", series === "coarse" ? `M${d}` : `M${d}x${pitch}`, series, d / 1e3, pitch / 1e3, undefined);
}

function unified(size: ThreadSize): Thread | FigureError {
  const name = size.designation.split(" ")[0]!,
    listed = findUnifiedThread(name);
  if (!listed || (size.series !== undefined && !sameSeries(size.series, listed.series))) {
    const nearest = unifiedThreads.filter((thread) => thread.name.replace(/-\d+$/, "") === size.nominal);
    const others = nearest.length > 0 ? nearest : nearestUnified(size.diameter! / 0.0254);
    return {
      says: `${size.designation} is not in the unified series`,
      nearest: others.map((thread) => `${thread.name} ${thread.series}`),
    };
  }
  return made("unified", `${name} ${listed.series}`, listed.series, size.diameter!, size.pitch!, listed);
}

/** UNR forms stand for their UN series; the trade files 1-14 UNS under UNF. */
function sameSeries(written: string, listed: string): boolean {
  const plainName = written.replace("UNR", "UN");
  return plainName === listed || plainName === "UN" || (listed === "UNS" && plainName === "UNF");
}

function made(
  system: Thread["system"],
  designation: string,
  series: string,
  diameter: number,
  pitch: number,
  listed: UnifiedThread | undefined,
): Thread {
  const area = system === "unified" ? unifiedStressArea(diameter, pitch) : stressArea(diameter, pitch);
  return {
    system,
    designation,
    series,
    diameter,
    pitch,
    pitchDiameter: pitchDiameter(diameter, pitch),
    rootDiameter: rootDiameter(diameter, pitch),
    stressArea: area,
    nominalStressArea: nominalStressArea(diameter, pitch),
    unified: listed,
  };
}

function nearestMetric(d: number): readonly string[] {
  const sizes = [...new Set([...coarsePitches.keys(), ...finePitches.keys()])].sort(
    (a, b) => Math.abs(a - d) - Math.abs(b - d) || a - b,
  );
  return sizes
    .slice(0, 2)
    .sort((a, b) => a - b)
    .map((each) => (coarsePitches.has(each) ? `M${each}` : `M${each}x${finePitches.get(each)![0]}`));
}

function nearestUnified(inches: number): readonly UnifiedThread[] {
  const distance = (thread: UnifiedThread): number =>
    Math.abs(unifiedDiameter(thread.name.replace(/-\d+$/, ""))! - inches);
  return [...unifiedThreads].sort((a, b) => distance(a) - distance(b)).slice(0, 2);
}

const source = "ISO 724, ISO 68-1, ISO 261, ISO 898-1; ASME B1.1 (all read through published tables)";

export const threadFigure: Figure = {
  name: "thread",
  title: "Thread diameters, stress area and tapping hole",
  arguments: [argument("size", "size", "the thread, as M8, M8x1, 3/8-16 UNC, G1/4 or 1/4 NPT")],
  validity:
    "metric threads of ISO 261 from M1 to M64, unified threads of ASME B1.1 from #0 to 1-1/2 in; pipe threads: size only",
  source,
  examples: ["M8", "M8x1", "3/8-16 UNC"],
  run(inputs) {
    const lacking = missing(threadFigure, inputs),
      size = sizeIn(inputs, "size");
    if (lacking || !size) return lacking ?? { says: "thread needs size: a thread size" };
    if (size.system === "pipe") return pipeResult(size);
    const thread = threadOf(size);
    if (isFigureError(thread)) return thread;
    const { diameter: d, pitch: P } = thread,
      steps = [
        step(`d2 = ${rounded(d * 1e3, 5)} - 0.649519 x ${rounded(P * 1e3, 5)}`, thread.pitchDiameter * 1e3, "mm"),
        step(`d3 = ${rounded(d * 1e3, 5)} - 1.226869 x ${rounded(P * 1e3, 5)}`, thread.rootDiameter * 1e3, "mm"),
        step(areaFormula(thread), thread.stressArea * 1e6, "mm²"),
      ];
    const values = [
      plain("thread", thread.designation),
      plain("series", thread.series),
      result("diameter", d, "mm"),
      result("pitch", P, "mm"),
      result("pitch diameter d2", thread.pitchDiameter, "mm"),
      result("root diameter d3", thread.rootDiameter, "mm"),
      result("minor diameter of the internal thread D1", internalMinorDiameter(d, P), "mm"),
      plain("stress area", thread.stressArea * 1e6, "mm²"),
      plain("section at the minor diameter", minorArea(d, P) * 1e6, "mm²"),
    ];
    if (thread.unified) {
      values.push(
        plain("threads per inch", size.threadsPerInch ?? Number.NaN),
        result("minor diameter UNR", unrMinorDiameter(d, P), "in"),
      );
      for (const [name, drill] of [
        ["tap drill, soft material", thread.unified.tapDrillSoft],
        ["tap drill, steel", thread.unified.tapDrillHard],
      ] as const) {
        if (drill)
          values.push(
            plain(
              name,
              `${drill.name} (${drill.inches} in, ${Math.round(threadShare(d, P, drill.inches * 0.0254) * 100)} % thread)`,
            ),
          );
      }
    } else values.push(result("tapping hole", metricTapDrill(d, P), "mm"));
    return {
      values,
      formula: `d2 = d - 0.649519 P; d3 = d - 1.226869 P; ${areaFormula(thread)}`,
      steps,
      assumptions: size.system === "metric" && size.coarse ? ["no pitch given: the coarse one (ISO 965-1)"] : [],
      source,
      caution: aidCaution,
    };
  },
};

const areaFormula = (thread: Thread): string =>
  thread.system === "unified" ? "At = pi/4 (d - 0.9743 P)²" : "As = pi/4 ((d2 + d3) / 2)²";

function pipeResult(size: ThreadSize): ReturnType<Figure["run"]> {
  const table = size.series!.startsWith("NP") ? nptThreads : gasThreads,
    found = table.get(size.nominal);
  if (!found)
    return {
      says: `${size.designation} is not in the table of pipe threads`,
      nearest: [...table.keys()].map((each) =>
        size.series!.startsWith("NP") ? `${each} ${size.series}` : `${size.series}${each}`,
      ),
    };
  return {
    values: [result("outside diameter", found.diameter / 1e3, "mm"), plain("threads per inch", found.threadsPerInch)],
    formula: "from the table",
    steps: [step("size looked up", size.designation)],
    assumptions: [],
    caution: aidCaution,
    source: size.series!.startsWith("NP") ? "ASME B1.20.1 (from memory)" : "ISO 228-1, ISO 7-1 (from memory)",
  };
}
