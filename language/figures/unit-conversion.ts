// A quantity in another unit. The factors are those of the unit table; nothing is rounded before the end.

import { findUnit, nearestUnits } from "../quantities/units.ts";
import { convert, convertValue, isProblem, parseQuantity, si } from "../quantities/quantity.ts";
import { dimensionNames } from "../quantities/dimensions.ts";
import { aidCaution, argument, missing, plain, step, textIn, type Figure } from "./figure.ts";

export const convertFigure: Figure = {
  name: "convert",
  title: "A quantity in another unit",
  arguments: [argument("value", "text", "the quantity with its unit"), argument("to", "text", "the unit wanted")],
  validity: "units of one dimension; a temperature is a point on its scale, not a difference",
  source: "1 in = 0.0254 m, 1 lb = 0.45359237 kg (1959 agreement), g0 = 9.80665 m/s² (CGPM 1901); BIPM SI brochure",
  examples: ["24 N·m to lbf·ft", "100 °C to °F"],
  run(inputs) {
    const lacking = missing(convertFigure, inputs),
      value = textIn(inputs, "value"),
      to = textIn(inputs, "to");
    if (lacking || value === undefined || to === undefined)
      return lacking ?? { says: "convert needs a quantity and a unit" };
    const quantity = parseQuantity(value),
      unit = findUnit(to);
    if (isProblem(quantity))
      return { says: `value: ${quantity.problem}`, ...(quantity.nearest ? { nearest: quantity.nearest } : {}) };
    if (quantity.dimension === "temperature" && si(quantity).low < -1e-9)
      return { says: `value: ${value} lies below absolute zero, -273.15 °C` };
    if (!unit)
      return { says: `to: ${to} is no unit that is known here`, nearest: nearestUnits(to, quantity.dimension) };
    const converted = convert(quantity, unit.name);
    if (!converted)
      return {
        says: `${quantity.unit} is ${dimensionNames[quantity.dimension].title}, ${unit.name} is ${dimensionNames[unit.dimension].title} of another kind`,
      };
    return {
      values:
        converted.form === "single"
          ? [plain("value", converted.high, converted.unit)]
          : [plain("from", converted.low, converted.unit), plain("to", converted.high, converted.unit)],
      formula: "value x factor + offset",
      steps: [step(`1 ${quantity.unit} in ${unit.name}`, convertValue(1, quantity.unit, unit.name), unit.name)],
      assumptions: [],
      source: convertFigure.source,
      caution: aidCaution,
    };
  },
};
