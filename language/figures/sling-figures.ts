// Figures on slings: leg tension, limits by table and by factor, and how a load shares between points.

import {
  argument,
  numberIn,
  plain,
  result,
  step,
  textIn,
  type Figure,
  type FigureError,
  type FigureInputs,
  type FigureResult,
  wordIn,
} from "./figure.ts";
import { hazardFigure, highest, highestIn, lowest, nearestSizes, outsideTable, shown } from "./hazard-figure.ts";
import {
  CHAIN_SLINGS,
  ROPE_SLINGS,
  chainTemperatureFactor,
  edgeFactor,
  legFactor,
  slingTableLimit,
  trigonometricLimit,
  uniformLoadLimit,
} from "./sling-tables.ts";
import {
  LEAST_LEG_ANGLE,
  SLING_SOURCE,
  angleFromHorizontal,
  slingTension,
  twoLegsUnderHook,
  twoPointShare,
  angleConventions,
} from "./slings.ts";
import { STANDARD_GRAVITY } from "./stored-energy.ts";

const load = argument("load", "mass", "mass of the load with its lifting gear");
const legs = argument("legs", "number", "legs of the sling, 1 to 4", { whole: true });
const angle = argument("angle", "angle", "angle of the legs");
const measured = argument("measured", "word", "what the angle is measured from: there are three conventions", {
  words: angleConventions,
});

const legAngle = (inputs: FigureInputs, end: "high" | "low"): number =>
  angleFromHorizontal(
    end === "high" ? highest(inputs, "angle") : lowest(inputs, "angle"),
    wordIn(inputs, "measured", angleConventions)!,
  );

/** The flattest leg of a range of angles, which pulls hardest. */
const flattest = (inputs: FigureInputs): number => Math.min(legAngle(inputs, "high"), legAngle(inputs, "low"));

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** A mass as the force that it weighs, for the values of a result. */
const asForce = (name: string, kilograms: number): FigureResult["values"][number] =>
  result(name, kilograms * STANDARD_GRAVITY, "kN");

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
    const steps = [
      step(`${shown(degrees(at))}° from the horizontal, ${shown(90 - degrees(at))}° from the vertical`),
      ...sum.steps.map((text) => step(text)),
    ];
    steps.push(step(`W = ${shown(kilograms)} kg x 9.80665 m/s² = ${shown((kilograms * STANDARD_GRAVITY) / 1000)} kN`));
    if (sum.tooFlat)
      steps.push(step("Flatter than 30° from the horizontal (60° from the vertical): beyond what the rules allow"));
    return {
      values: [
        asForce("tension in each leg", sum.tension),
        result("as a mass on the leg", sum.tension, "kg"),
        plain("load factor", sum.factor),
        ...(sum.tooFlat ? [plain("finding", "legs too flat")] : []),
      ],
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
    legs,
    angle,
    measured,
    argument("load", "mass", "mass of the load", { optional: true, default: "no comparison" }),
    argument("edge", "length", "radius of an edge that a chain runs over", { optional: true, default: "no edge" }),
    argument("heat", "temperature", "temperature of a chain", { optional: true, default: "-40 to 200 °C" }),
  ],
  validity:
    "gear of the marked grade in good order, symmetrical load; edges and heat for chain alone; the tag on the sling comes first",
  source: "EN 818-4 table in a catalogue (13 mm from memory); EN 13414-1:2003 Table 4 (read)",
  examples: [
    "chain 8 mm 2 30 deg from vertical",
    "rope 10 mm 4 50 deg from vertical 2 t",
    "chain 10 mm 2 45 deg from vertical edge 15 mm heat 250 °C",
  ],
  answer(inputs) {
    const table = textIn(inputs, "kind") === "rope" ? ROPE_SLINGS : CHAIN_SLINGS;
    const size = Math.round(highest(inputs, "size") * 1e6) / 1e3;
    const count = numberIn(inputs, "legs")!;
    const beta = Math.PI / 2 - flattest(inputs);
    if (!table.some((row) => row.size === size))
      return outsideTable(
        "sling-limit",
        `${shown(size)} mm`,
        nearestSizes(
          table.map((row) => row.size),
          size,
        ).map((one) => `${one} mm`),
      );
    if (legFactor(count, beta) === undefined) {
      return {
        says: `sling-limit: ${shown(degrees(beta))}° from the vertical is beyond 60°, where no sling is to be used`,
      };
    }
    const row = slingTableLimit(table, size, count, beta)!;
    const share = chainShare(inputs, size);
    if (typeof share !== "number") return share;
    const tonnes = row * share;
    const column =
      count === 1
        ? "one leg"
        : `${count === 2 ? "two" : "three and four"} legs to ${degrees(beta) <= 45 + 1e-9 ? 45 : 60}°`;
    const steps = [step(`${shown(degrees(beta))}° from the vertical: column ${column}, ${row} t`)];
    if (table.some((one) => one.size === size && one.isFromMemory))
      steps.push(
        step("this row is from memory and was not read in a source: hold it against the tag and the standard"),
      );
    if (share < 1) steps.push(step(`${row} t x ${shown(share)} for the edge and the heat = ${shown(tonnes)} t`));
    const over = highestIn(inputs, "load");
    if (over !== undefined && over > tonnes * 1000)
      steps.push(step(`${shown(over)} kg is over the limit by ${shown(over - tonnes * 1000)} kg`));
    return {
      values: [
        result("rated limit", tonnes * 1000, "t"),
        ...(over !== undefined && over > tonnes * 1000 ? [plain("finding", "over the limit")] : []),
      ],
      formula: "row and column of the table",
      steps,
    };
  },
});

/** Share of its limit that a chain keeps over an edge and in heat; an error for rope and where the chain is not to be used at all. */
function chainShare(inputs: FigureInputs, size: number): number | FigureError {
  const [edge, heat] = [inputs["edge"] === undefined ? undefined : lowest(inputs, "edge"), highestIn(inputs, "heat")];
  if (edge === undefined && heat === undefined) return 1;
  if (textIn(inputs, "kind") === "rope")
    return { says: "sling-limit: the factors for edges and heat are for chain; ask the maker of the rope" };
  const edgeShare = edge === undefined ? 1 : edgeFactor(edge * 1000, size);
  if (edgeShare === undefined)
    return {
      says: `sling-limit: an edge of ${shown(edge! * 1000)} mm is sharper than the chain is thick: protect the edge`,
    };
  const heatShare = heat === undefined ? 1 : chainTemperatureFactor(heat - 273.15);
  return heatShare === 0
    ? { says: "sling-limit: the chain is not to be used below -40 °C or above 400 °C" }
    : edgeShare * heatShare;
}

/** Limit of several legs by the limit of one. */
export const legFactorFigure: Figure = hazardFigure({
  name: "leg-factor",
  title: "Limit of a sling by the limit of one leg",
  topic: "slings",
  arguments: [argument("single", "mass", "rated limit of one leg"), legs, angle, measured],
  validity:
    "symmetrical load; the trigonometric figure only where load, angle and centre of gravity are known exactly; a table row comes before either",
  source: "EN 818-4 uniform load method in catalogues; dimensioning of chain slings (read)",
  examples: ["2 t 2 30 deg from vertical"],
  answer(inputs) {
    const [single, count, beta] = [
      highest(inputs, "single"),
      numberIn(inputs, "legs")!,
      Math.PI / 2 - flattest(inputs),
    ];
    const factor = legFactor(count, beta);
    const uniform = uniformLoadLimit(single, count, beta);
    if (factor === undefined || uniform === undefined) {
      return {
        says: `leg-factor: ${shown(degrees(beta))}° from the vertical is beyond 60°, where no sling is to be used`,
      };
    }
    return {
      values: [
        result("limit, uniform load method", uniform, "t"),
        plain("factor", factor),
        ...(count > 1 ? [result("limit, trigonometric method", trigonometricLimit(single, count, beta), "t")] : []),
      ],
      formula: "limit = single x factor; trigonometric: 2 or 3 x single x cos beta",
      steps: [
        step(
          `${shown(degrees(beta))}° from the vertical: ${shown(single / 1000)} t x ${factor} = ${shown(uniform / 1000)} t`,
        ),
      ],
    };
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
    argument("hook", "length", "height of the hook over the points, where both legs meet over the centre of gravity", {
      optional: true,
      default: "upright pulls",
    }),
  ],
  validity: "the nearer point carries more; upright pulls, or two legs to one hook over the centre of gravity",
  source: "Load limits page on the centre of gravity (read); sling tension lesson, formula (read)",
  examples: ["10000 lb 8 ft 2 ft", "2000 kg 500 mm 500 mm hook 500 mm"],
  answer(inputs) {
    const [kilograms, a, b, hook] = [
      highest(inputs, "load"),
      highest(inputs, "a"),
      highest(inputs, "b"),
      highestIn(inputs, "hook"),
    ];
    const share = twoPointShare(kilograms, a, b);
    const values = [result("load near a", share.nearA, "kg"), result("load near b", share.nearB, "kg")];
    const steps = [
      step(`near a: ${shown(kilograms)} kg x ${shown(b)} / (${shown(a)} + ${shown(b)}) = ${shown(share.nearA)} kg`),
    ];
    if (hook !== undefined) {
      const two = twoLegsUnderHook(kilograms, a, b, hook);
      values.push(
        result("tension a, as a mass", two.tensionA, "kg"),
        result("tension b, as a mass", two.tensionB, "kg"),
        asForce("tension a", two.tensionA),
        asForce("tension b", two.tensionB),
        result("leg a", two.lengthA, "m"),
        result("leg b", two.lengthB, "m"),
        result("angle a from the horizontal", two.angleA, "deg"),
        result("angle b from the horizontal", two.angleB, "deg"),
      );
      steps.push(
        step(
          `La = sqrt(a² + h²) = ${shown(two.lengthA)} m, Ta = ${shown(share.nearA)} kg x La / h = ${shown(two.tensionA)} kg`,
        ),
      );
      if (Math.min(two.angleA, two.angleB) < LEAST_LEG_ANGLE - 1e-9) {
        steps.push(step("A leg is flatter than 30° from the horizontal: beyond what the rules allow"));
      }
    }
    return {
      values,
      formula: hook === undefined ? "near a = W b / (a + b)" : "Ta = W b La / (h (a + b)), La = sqrt(a² + h²)",
      steps,
    };
  },
});
