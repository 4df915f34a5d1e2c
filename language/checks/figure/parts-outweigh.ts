// A machine, or a unit inside it, that is said to weigh less than what its parts are said to weigh.

import { massKg, massOf } from "../../bench/load.ts";
import { rounded, si } from "../../quantities/index.ts";
import { check } from "../check.ts";

/** Masses on a plate are rounded: so much more is no contradiction. Common practice. */
const rounding = 1.05;

export default check({
  code: "figure/parts-outweigh",
  title: "The parts weigh more than the whole",
  severity: "warning",
  why: "The stand, the hoist and the slings for the whole machine are chosen by its mass. If its parts alone weigh more, one of the two figures is wrong, and the load may be the heavier one.",
  source: "arithmetic",
  fails: `
    unit winch "Winch" {
    #    ^^^^^ Winch is said to weigh 40 kg, and its parts together weigh 49.0 kg: look at both
      mass 40 kg
      base frame
      part frame "Frame" { mass 18 kg }
      part drum "Drum" { mass 31 kg  rests on frame }
    }
  `,
  mended: `
    unit winch "Winch" {
      mass 52 kg
      base frame
      part frame "Frame" { mass 18 kg }
      part drum "Drum" { mass 31 kg  rests on frame }
    }
  `,
  model(model, say) {
    if (model.mass) {
      const { kg, unknown } = massOf(
        model,
        model.parts.map(({ index }) => index),
      );
      if (kg > si(model.mass).high * rounding)
        say({ at: model.at, says: outweighed(model.title || model.unit, model.mass.written, kg, unknown) });
    }
    for (const part of model.parts) {
      const whole = massKg(part);
      if (part.unit === undefined || whole === undefined || part.massFrom !== "part") continue; // its unit is asked itself
      const inside = model.parts.filter(({ prefix }) => prefix.startsWith(`${part.id}/`)),
        { kg, unknown } = massOf(
          model,
          inside.map(({ index }) => index),
        );
      if (kg > whole * rounding) say({ at: part.at, says: outweighed(part.name, part.mass!.written, kg, unknown) });
    }
  },
});

const outweighed = (name: string, whole: string, kg: number, unknown: number): string =>
  `${name} is said to weigh ${whole}, and its parts together weigh ${rounded(kg, 3)} kg${unknown > 0 ? " or more" : ""}: look at both`;
