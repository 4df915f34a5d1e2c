// The dimensions a quantity can have. A closed list: what is not here cannot be written with a unit.

/**
 * Every dimension of the language, in the order in which reference pages print them.
 *
 * - `pressure` is gauge pressure throughout: 0 bar is the air outside. There is no unit for absolute pressure.
 * - `frequency` holds Hz and the rotating speed rpm (`kind: "speed"` in the unit table tells them apart).
 * - `voltage` keeps dc and ac apart by the kind of the unit; plain V says neither.
 * - `share` is a part of a whole; 100 % is 1.
 */
export const dimensions = [
  "torque",
  "length",
  "mass",
  "volume",
  "force",
  "pressure",
  "angle",
  "time",
  "temperature",
  "voltage",
  "current",
  "capacitance",
  "resistance",
  "energy",
  "power",
  "frequency",
  "flow",
  "vibration",
  "flux",
  "share",
] as const;

export type Dimension = (typeof dimensions)[number];

/** What a dimension is called in a sentence to a user, and its SI unit as the figures use it. */
export const dimensionNames: Readonly<Record<Dimension, { readonly title: string; readonly si: string }>> = {
  torque: { title: "torque", si: "N·m" },
  length: { title: "length", si: "m" },
  mass: { title: "mass", si: "kg" },
  volume: { title: "volume", si: "m³" },
  force: { title: "force", si: "N" },
  pressure: { title: "pressure", si: "Pa" },
  angle: { title: "angle", si: "rad" },
  time: { title: "time", si: "s" },
  temperature: { title: "temperature", si: "K" },
  voltage: { title: "voltage", si: "V" },
  current: { title: "current", si: "A" },
  capacitance: { title: "capacitance", si: "F" },
  resistance: { title: "resistance", si: "Ω" },
  energy: { title: "energy", si: "J" },
  power: { title: "power", si: "W" },
  frequency: { title: "frequency", si: "Hz" },
  flow: { title: "flow", si: "m³/s" },
  vibration: { title: "vibration velocity", si: "m/s" },
  flux: { title: "magnetic flux density", si: "T" },
  share: { title: "share", si: "1" },
};
