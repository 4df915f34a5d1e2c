// A figure that could be meant by itself, and does not go with what it is said of: mostly a slip of the unit, by a factor of ten or a thousand.

import { isFigureError } from "../../figures/figure.ts";
import type { Hazard, Model, Part, Tie } from "../../model/model.ts";
import { rounded, si } from "../../quantities/index.ts";
import { check, type Say } from "../check.ts";
import { knownThread } from "../known-threads.ts";
import { sumLines } from "../sums.ts";

const zeroCelsius = 273.15;
/** Burns are reckoned from here on, °C: ISO 13732-1:2006, any material, contact of 8 h and longer (from memory). */
const leastHot = 43;
/** Above this nobody freezes to a surface, °C; common practice. */
const mostCold = 20;
/** The largest part that is sized by its sides, m, and the thickest cord of an O-ring, m; common practice. */
const longest = 20,
  thickestCord = 0.03;
/** Sold by the metre: one side of them may be as long as it likes, and they are thin, m; common practice. */
const long: ReadonlySet<string> = new Set(["belt", "chain", "cable", "hose", "loom"]);
const thickOfLong = 0.1;
const densityOfSteel = 7850; // kg/m³
/** Shanks that weigh so many times what they hold: tie rods through a thin plate may weigh as much as it, no more. */
const timesHeld = 3;

export default check({
  code: "figure/out-of-scale",
  title: "A figure that does not go with what it is said of",
  severity: "question",
  why: "285 g for 285 kg, 3 m for 3 mm, 90 °F for 90 °C: each may stand by itself, and the hoist, the ring and the gloves are chosen by it.",
  source:
    "burns: ISO 13732-1:2006 (from memory); density of steel 7850 kg/m³ (handbook); sizes of rings and parts: common practice",
  fails: `
    unit drum "Drum" {
      base frame
      part frame "Frame"
      part shell "Drum shell" { mass 285 g }
    #      ^^^^^ Drum shell weighs 285 g, and the shanks of the Drum bolts that hold it weigh 1.58 kg: look at the unit
      fastener drum-bolts bolt "Drum bolts" { count 8  size M20x80  torque 300 N·m  joins shell to frame }
    }
  `,
  mended: `
    unit drum "Drum" {
      base frame
      part frame "Frame"
      part shell "Drum shell" { mass 285 kg }
      fastener drum-bolts bolt "Drum bolts" { count 8  size M20x80  torque 300 N·m  joins shell to frame }
    }
  `,
  model(model, say) {
    for (const hazard of model.hazards) temperature(hazard, say);
    for (const part of model.parts) sides(part, say);
    const asked = new Set<Part>();
    for (const tie of model.ties) lighterThanShanks(model, tie, asked, say);
  },
});

function temperature({ kind, name, figures, at }: Hazard, say: Say): void {
  const given = figures.get("temperature");
  if (!given) return;
  const celsius = si(given).high - zeroCelsius,
    said = given.unit === "°C" ? `${given.written} is given` : `${given.written} is ${rounded(celsius, 2)} °C`;
  if (kind === "hot" && celsius < leastHot)
    say({ at, says: `${name} is a hot surface, and ${said}: look at the unit` });
  if (kind === "cold" && celsius > mostCold)
    say({ at, says: `${name} is a cold surface, and ${said}: look at the unit and the sign` });
}

function sides({ kind, name, size, at }: Part, say: Say): void {
  if (!size || "system" in size) return;
  const cord = kind === "o-ring" ? size[1] : undefined,
    isLong = long.has(kind) || (size.length > 1 && size.some((side) => si(side).high <= thickOfLong)),
    large = isLong ? undefined : size.find((side) => si(side).high > longest);
  if (cord && si(cord).high > thickestCord)
    say({ at, says: `${name} has a cord of ${cord.written}, thicker than any O-ring: look at the unit` });
  else if (large) say({ at, says: `${name} measures ${large.written}: look at the unit` });
}

/** Shanks alone, as smooth bars: heads and nuts come on top. */
function lighterThanShanks(model: Model, tie: Tie, asked: Set<Part>, say: Say): void {
  const { size } = tie;
  if (!tie.fastener || size?.length === undefined || tie.countUnknown || tie.lowers.length === 0) return;
  let mass = 0;
  for (const lower of tie.lowers) {
    const part = model.things[lower];
    if (part?.is !== "part") continue;
    if (!part.mass || asked.has(part)) return;
    mass += si(part.mass).high * part.count;
  }
  const thread = knownThread(size);
  if (mass <= 0 || isFigureError(thread)) return;
  const shanks = ((Math.PI * thread.diameter ** 2) / 4) * size.length * densityOfSteel * tie.count;
  if (shanks <= timesHeld * mass) return;
  const held = tie.lowers.map((lower) => model.things[lower]).filter((thing) => thing?.is === "part");
  for (const part of held) asked.add(part);
  const [first] = held,
    weighs = held.length > 1 ? "weigh together" : `weighs ${first!.mass!.written}`;
  say({
    at: first!.at,
    says: `${held.map(({ name }) => name).join(" and ")} ${weighs}${held.length > 1 ? ` ${rounded(mass, 3)} kg` : ""}, and the shanks of the ${tie.name} that hold ${held.length > 1 ? "them" : "it"} weigh ${rounded(shanks, 3)} kg: look at the unit`,
    because: [
      { says: `${tie.name}: ${tie.count} of ${size.designation}`, at: tie.at },
      ...sumLines({
        name: "mass of the shanks",
        formula: "count x pi/4 x diameter² x length x 7850 kg/m³",
        source: "density of steel: handbook",
      }),
    ],
  });
}
