// The door of the quantities: units, numbers, quantities and thread sizes. It imports nothing else of ours.

export { dimensionNames, dimensions, type Dimension } from "./dimensions.ts";
export {
  findUnit,
  nearestUnits,
  unitNamed,
  units,
  unitWords,
  usualUnits,
  type Unit,
  type UnitGroup,
  type UnitKind,
} from "./units.ts";
export { parseNumber, type WrittenNumber } from "./number.ts";
export {
  comparePair,
  convert,
  convertValue,
  format,
  fromSi,
  isProblem,
  makeQuantity,
  parseQuantity,
  quantityOf,
  rounded,
  si,
  toSi,
  type PairComparison,
  type Quantity,
  type QuantityParts,
  type QuantityProblem,
  type Rounding,
} from "./quantity.ts";
export { isThreadSize, parseThreadSize, unifiedDiameter, type ThreadSize } from "./thread-size.ts";
