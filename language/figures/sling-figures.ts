// Figures on lifting gear: leg tension, table limits, eyebolts, shackles, and how a load shares between points.

import { argument, numberIn, plain, result, sizeIn, step, textIn, type Figure, type FigureError, type FigureInputs, type FigureResult } from "./figure.ts";
import { EYEBOLTS, EYEBOLT_SOURCE, METRIC_SHACKLES, SHACKLE_INCLUDED_MOST, eyeboltCapacity, shackleSideShare } from "./eyebolts.ts";
import { hazardFigure, highest, highestIn, lowest, shown } from "./hazard-figure.ts";
import { CHAIN_SLINGS, ROPE_SLINGS, legFactor, slingTableLimit } from "./sling-tables.ts";
import { SLING_SOURCE, angleFromHorizontal, slingTension, twoLegsUnderHook, twoPointShare, type AngleConvention } from "./slings.ts";
import { STANDARD_GRAVITY } from "./stored-energy.ts";

const load = argument("load", "mass", "mass of the load with its lifting gear");
const legs = argument("legs", "number", "legs of the sling, 1 to 4");
const angle = argument("angle", "angle", "angle of the legs");
const measured = argument("measured", "word", "what the angle is measured from: there are three conventions", { words: ["from horizontal", "from vertical", "between legs"] });

const legAngle = (inputs: FigureInputs, end: "high" | "low"): number =>
  angleFromHorizontal(end === "high" ? highest(inputs, "angle") : lowest(inputs, "angle"), textIn(inputs, "measured") as AngleConvention);

/** The flattest leg of a range of angles, which pulls hardest. */
const flattest = (inputs: FigureInputs): number => Math.min(legAngle(inputs, "high"), legAngle(inputs, "low"));

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** A mass as the force that it weighs, for the values of a result. */
const asForce = (name: string, kilograms: number): FigureResult["values"][number] => result(name, kilograms * STANDARD_GRAVITY, "kN");

/** Tension in the legs of a sling. */
export const sling: Figure = hazardFigure({
  name: "sling",
  title: "Tension in the legs of a sling",
  topic: "slings",
  arguments: [load, legs, angle, measured],
  validity: "equal legs, centre of gravity under the hook; of four legs three are reckoned",
  source: SLING_SOURCE,
  examples: ["61 kg 2 45 deg from horizontal", "1000 lb 2 60 deg between legs"],
  answer(inputs) {
    const kilograms = highest(inputs, "load");
    const at = flattest(inputs);
    const sum = slingTension(kilograms, numberIn(inputs, "legs")!, at);
    const steps = [step(`${shown(degrees(at))}° from the horizontal, ${shown(90 - degrees(at))}° from the vertical`), ...sum.steps.map((text) => step(text))];
    steps.push(step(`W = ${shown(kilograms)} kg x 9.80665 m/s² = ${shown((kilograms * STANDARD_GRAVITY) / 1000)} kN`));
    if (sum.tooFlat) steps.push(step("Flatter than 30° from the horizontal (60° from the vertical): beyond what the rules allow"));
    return {
      values: [asForce("tension in each leg", sum.tension), result("as a mass on the leg", sum.tension, "kg"), plain("load factor", sum.factor), ...(sum.tooFlat ? [plain("finding", "legs too flat")] : [])],
      formula: sum.formula,
      steps,
      assumptions: sum.legsCounted < numberIn(inputs, "legs")! ? [`${sum.legsCounted} legs carry`] : [],
    };
  },
});

/** Limit of a chain or rope sling by its table. */
export const slingLimit: Figure = hazardFigure({
  name: "sling-limit",
  title: "Rated limit of a sling by table",
  topic: "slings",
  arguments: [
    argument("kind", "word", "chain (grade 8) or rope (steel core, ferrule-secured)", { words: ["chain", "rope"] }),
    argument("size", "length", "nominal size"),
    legs, angle, measured,
    argument("load", "mass", "mass of the load", { optional: true, default: "no comparison" }),
  ],
  validity: "new gear of the marked grade, symmetrical load, no edges, -40 to 200 °C; the tag on the sling comes first",
  source: "EN 818-4 table in a catalogue; EN 13414-1:2003 Table 4 (read)",
  examples: ["chain 8 mm 2 30 deg from vertical", "rope 10 mm 4 50 deg from vertical 2 t"],
  answer(inputs) {
    const table = textIn(inputs, "kind") === "rope" ? ROPE_SLINGS : CHAIN_SLINGS;
    const size = Math.round(highest(inputs, "size") * 1e6) / 1e3;
    const count = numberIn(inputs, "legs")!;
    const beta = Math.PI / 2 - flattest(inputs);
    if (!table.some((row) => row.size === size)) return outside("sling-limit", `${shown(size)} mm`, nearestSizes(table.map((row) => row.size), size).map((one) => `${one} mm`));
    if (legFactor(count, beta) === undefined) return { says: `sling-limit: ${shown(degrees(beta))}° from the vertical is beyond 60°, where no sling is to be used` };
    const tonnes = slingTableLimit(table, size, count, beta)!;
    const steps = [step(`${shown(degrees(beta))}° from the vertical: column ${count === 1 ? "one leg" : `${count === 2 ? "two" : "three and four"} legs to ${degrees(beta) <= 45 + 1e-9 ? 45 : 60}°`}`)];
    const over = highestIn(inputs, "load");
    if (over !== undefined && over > tonnes * 1000) steps.push(step(`${shown(over)} kg is over the limit by ${shown(over - tonnes * 1000)} kg`));
    return { values: [result("rated limit", tonnes * 1000, "t"), ...(over !== undefined && over > tonnes * 1000 ? [plain("finding", "over the limit")] : [])], formula: "row and column of the table", steps };
  },
});

/** Rated load of a DIN 580 eyebolt. */
export const eyebolt: Figure = hazardFigure({
  name: "eyebolt",
  title: "Rated load of a lifting eyebolt",
  topic: "slings",
  arguments: [
    argument("thread", "size", "thread of the eyebolt"),
    argument("pull", "angle", "angle of the pull from the axis of the eyebolt", { optional: true, default: "0 deg, in line" }),
    argument("load", "mass", "load on this one eyebolt", { optional: true, default: "no comparison" }),
  ],
  validity: "each eyebolt by itself, turned fully in and seated flat; never added up over several; US eyebolts rest on another design",
  source: EYEBOLT_SOURCE,
  examples: ["M12", "M12 45 deg 300 kg"],
  answer(inputs) {
    const size = sizeIn(inputs, "thread")!;
    const pull = highestIn(inputs, "pull") ?? 0;
    // The thick threads of the table are fine-pitched by name; a bare M72 means them, as no coarse one is listed.
    const row = EYEBOLTS.find((one) => one.thread === size.designation) ?? EYEBOLTS.find((one) => one.thread.includes("x") && one.thread.startsWith(`${size.designation}x`));
    if (row === undefined) return outside("eyebolt", size.designation, nearestThreads(size.diameter));
    const capacity = eyeboltCapacity(row.thread, pull);
    if (capacity === undefined) return { says: "eyebolt: a pull beyond 90° from the axis is not in the table" };
    const on = highestIn(inputs, "load");
    const steps = [step(`${row.thread}: in line ${row.axial} kg, to 45° ${row.to45} kg, to 90° ${row.to90} kg`)];
    if (on !== undefined && on > capacity) steps.push(step(`${shown(on)} kg is over the rated load by ${shown(on - capacity)} kg`));
    return { values: [result("rated load", capacity, "kg"), ...(on !== undefined && on > capacity ? [plain("finding", "over the rated load")] : [])], formula: "row and column of the table", steps };
  },
});

/** Rated load of a metric bow shackle. */
export const shackle: Figure = hazardFigure({
  name: "shackle",
  title: "Rated load of a bow shackle",
  topic: "slings",
  arguments: [argument("bow", "length", "diameter of the bow"), argument("pull", "angle", "angle of the pull from in line", { optional: true, default: "0 deg, in line" })],
  validity: `bow shackles, factor 6; two legs in one shackle at most ${Math.round(degrees(SHACKLE_INCLUDED_MOST))}° apart; the marking on the shackle comes first`,
  source: "US Fed. Spec. RR-C-271 / EN 13889 table; side loading by three catalogues (read)",
  examples: ["13 mm", "13 mm 45 deg"],
  answer(inputs) {
    const size = Math.round(highest(inputs, "bow") * 1e6) / 1e3;
    const row = METRIC_SHACKLES.find((one) => one.size === size);
    if (row === undefined) return outside("shackle", `${shown(size)} mm`, nearestSizes(METRIC_SHACKLES.map((one) => one.size), size).map((one) => `${one} mm`));
    const share = shackleSideShare(highestIn(inputs, "pull") ?? 0);
    if (share === undefined) return { says: "shackle: a pull beyond 90° from in line is not in the table" };
    return { values: [result("rated load", row.tonnes * share * 1000, "t")], formula: "row of the table x side-load share", steps: [step(`${row.tonnes} t x ${share} = ${shown(row.tonnes * share)} t`)] };
  },
});

/** Share of a load between two points. */
export const pickPoints: Figure = hazardFigure({
  name: "pick-points",
  title: "Load at two pick points",
  topic: "slings",
  arguments: [
    load,
    argument("a", "length", "distance of the first point from the centre of gravity"),
    argument("b", "length", "distance of the second point from the centre of gravity"),
    argument("hook", "length", "height of the hook over the points, where both legs meet over the centre of gravity", { optional: true, default: "upright pulls" }),
  ],
  validity: "the nearer point carries more; upright pulls, or two legs to one hook over the centre of gravity",
  source: "Load limits page on the centre of gravity (read); sling tension lesson, formula (read)",
  examples: ["10000 lb 8 ft 2 ft", "2000 kg 500 mm 500 mm hook 500 mm"],
  answer(inputs) {
    const [kilograms, a, b, hook] = [highest(inputs, "load"), highest(inputs, "a"), highest(inputs, "b"), highestIn(inputs, "hook")];
    const share = twoPointShare(kilograms, a, b);
    const values = [result("load near a", share.nearA, "kg"), result("load near b", share.nearB, "kg")];
    const steps = [step(`near a: ${shown(kilograms)} kg x ${shown(b)} / (${shown(a)} + ${shown(b)}) = ${shown(share.nearA)} kg`)];
    if (hook !== undefined) {
      const two = twoLegsUnderHook(kilograms, a, b, hook);
      values.push(
        result("tension a, as a mass", two.tensionA, "kg"), result("tension b, as a mass", two.tensionB, "kg"), asForce("tension a", two.tensionA), asForce("tension b", two.tensionB),
        result("leg a", two.lengthA, "m"), result("leg b", two.lengthB, "m"), result("angle a from the horizontal", two.angleA, "deg"), result("angle b from the horizontal", two.angleB, "deg"),
      );
      steps.push(step(`La = sqrt(a² + h²) = ${shown(two.lengthA)} m, Ta = ${shown(share.nearA)} kg x La / h = ${shown(two.tensionA)} kg`));
      if (Math.min(two.angleA, two.angleB) < Math.PI / 6 - 1e-9) steps.push(step("A leg is flatter than 30° from the horizontal: beyond what the rules allow"));
    }
    return { values, formula: hook === undefined ? "near a = W b / (a + b)" : "Ta = W b La / (h (a + b)), La = sqrt(a² + h²)", steps };
  },
});

function outside(figure: string, size: string, nearest: readonly string[]): FigureError {
  return { says: `${figure}: ${size} is not in the table; the nearest are ${nearest.join(" and ")}`, nearest };
}

function nearestSizes(sizes: readonly number[], wanted: number): readonly number[] {
  return [...sizes].sort((x, y) => Math.abs(x - wanted) - Math.abs(y - wanted)).slice(0, 2).sort((x, y) => x - y);
}

function nearestThreads(diameter: number | undefined): readonly string[] {
  const wanted = (diameter ?? 0) * 1000;
  const size = (thread: string): number => Number.parseFloat(thread.slice(1));
  return [...EYEBOLTS].sort((x, y) => Math.abs(size(x.thread) - wanted) - Math.abs(size(y.thread) - wanted)).slice(0, 2).map((row) => row.thread).sort((x, y) => size(x) - size(y));
}
