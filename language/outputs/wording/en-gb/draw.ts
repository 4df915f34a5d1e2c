// Words in the drawings, in British English.

import { inside, list, sentence } from "./phrases.ts";

export const draw = {
  titles: { strip: "Strip diagram", pattern: "Tightening patterns", path: "Ways of the fluids" },
  of: (name: string, unit: string) => (unit === "" ? name : `${unit}: ${name}`),
  nothing: {
    strip: "This procedure takes nothing off.",
    pattern: "No group of fasteners has a pattern.",
    path: "No fluid has a path.",
  },
  sheet: (title: string, sheet: number, of: number) => `${title}, sheet ${sheet} of ${of}`,

  pieces: (name: string, count: number, of: number) =>
    of <= 1 ? name : count < of ? `${name} (${count} of ${of})` : `${name} (${of})`,
  precaution: (precaution: string, hazard: string) => `${precaution}: ${inside(hazard)}`,
  loosen: (what: string) => `Loosen: ${inside(what)}`,
  drain: (what: string) => `Drain: ${inside(what)}`,
  support: (what: string) => `Support: ${inside(what)}`,
  aside: (what: string) => `Aside: ${inside(what)}`,
  assumed: (label: string) => `${label} (refused by the bench: see the findings)`,
  outer: (label: string, sheet: number) => `after ${label}, sheet\u00a0${sheet}`,
  free: (isAll: boolean): string =>
    isAll
      ? "In any order, as far as the machine is described"
      : "After nothing else, as far as the machine is described",
  stripAbout:
    "What must come before what, as far as the machine is described. An arrow points to what comes after. It is no work instruction: the precautions stand in the steps.",
  relation: (label: string, after: readonly string[]) =>
    sentence(after.length === 0 ? label : `${label}, after ${list(after)}`),
  sorts: {
    part: "part",
    fastener: "fastener",
    joint: "joint",
    fluid: "fluid",
    precaution: "precaution",
    hold: "held up",
    aside: "moved aside",
  },

  patternAbout: (count: number, order: string | undefined) =>
    sentence(
      order === undefined
        ? `${count} fasteners where they stand`
        : `${count} fasteners, counted as the pattern runs, in the order of tightening: ${order}`,
    ),
  groupOf: (count: number, size: string) => sentence(size === "" ? `${count} off` : `${count} off, ${size}`),
  pitchCircle: (diameter: string) => sentence(`Pitch circle ${diameter}`),
  torque: (text: string) => sentence(`Torque: ${inside(text)}`),
  asSaid: (text: string) => sentence(text),
  turns: "The number in each circle is its turn.",
  turnsAnywhere: "The number in each circle is its turn; begin at any one.",
  noTurns: (isTorqueMissing: boolean): string =>
    isTorqueMissing ? "Order and torque of tightening: not given." : "Order of tightening: not given as numbers.",

  pathAbout: (stations: readonly string[], closed: boolean) =>
    sentence(`${stations.join(", then ")}${closed && stations[0] !== undefined ? `, and back to ${stations[0]}` : ""}`),
  fillsAt: (name: string) => `fill: ${inside(name)}`,
  bleedsAt: (name: string) => `bleed: ${inside(name)}`,
  drainsAt: (name: string) => `drain: ${inside(name)}`,
  port: (says: string, on: string) => sentence(on === "" ? says : `${says}, on ${inside(on)}`),
  code: (number: string) => `Code that leads to step ${number}`,
};
