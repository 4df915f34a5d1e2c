// Time per action from published tables: service worksheets, assembly tables, measured strips, field estimates, and recalled cards marked so.
// The bases differ by a factor of two and more, so every row names its own; a figure without its basis is not given out.

import type { Standing } from "./motion-times.ts";

/** One row: an action, its condition and its time, s. */
export interface ActionTime {
  readonly action: string;
  readonly condition: string;
  readonly seconds: number;
  readonly standing: Standing;
}

/** A published table of times. */
export interface TimeTable {
  readonly id: string;
  readonly method: string;
  readonly basis: string;
  readonly source: string;
  readonly rows: readonly ActionTime[];
}

/** Service worksheet: per fastener or part; set-aside and tool times are rows of their own. */
export const SERVICE_WORKSHEET: TimeTable = {
  id: "worksheet",
  method: "design-for-service worksheet",
  basis: "skilled bench work on a small instrument, hand tools",
  source:
    "Disassembly worksheet, pressure recorder, Design for Six Sigma: a Roadmap for Product Development, p. 374 (read)",
  rows: [
    time("fetch and put back a tool", "code 5700", 4.2),
    time("set a removed item aside", "code 5500", 1.4),
    time("remove a screw", "code 1700", 8),
    time("remove a screw, harder access", "code 1710", 11.3),
    time("loosen a set screw", "code 4401 or 1700", 8),
    time("unplug a connection", "code 4100", 6.4),
    time("remove a knob, cover or board, loose", "code 1500", 2.4),
    time("turn the assembly over", "code 5800", 4.5),
  ],
};

/** Strip of a toy car measured with students, and times per fastener computed from it; everything included. */
const MEASURED_STRIP: TimeTable = {
  id: "measured",
  method: "measured (learning factory, toy car 1:8)",
  basis: "first attempts by students, part removal included",
  source: "DASCEN-LF disassembly data, Technical University of Munich; Procedia CIRP 134 (2025) 277 (read)",
  rows: [
    time("S1 body and spoiler off", "hand tools; 2 splints", 58),
    time("S2 battery out", "hand tools; 2 splints, 1 cable, 1 clip", 44),
    time("S3 two rear tyres off", "hand tools; 2 cap nuts", 79),
    time("S3 two rear tyres off", "cordless screwdriver; 2 cap nuts", 59),
    time("S4 two front tyres off", "hand tools; 2 cap nuts", 81),
    time("S4 two front tyres off", "cordless screwdriver; 2 cap nuts", 36),
    time("S5 front axle with dampers off", "hand tools; 7 screws T10", 149),
    time("S5 front axle with dampers off", "cordless screwdriver; 7 screws T10", 97),
    time("S6 two small dampers off", "hand tools; 2 screws T7, 2 screws hex 2.5", 142),
    time("S6 two small dampers off", "cordless screwdriver; 2 screws T7, 2 screws hex 2.5", 83),
    time("S7 chassis or core off", "hand tools; 6 screws T10, 1 motor cable", 125),
    time("S7 chassis or core off", "cordless screwdriver; 6 screws T10, 1 motor cable", 96),
    time("S8 two big dampers off", "hand tools; 2 screws T7, 2 screws hex 2.5", 106),
    time("S8 two big dampers off", "cordless screwdriver; 2 screws T7, 2 screws hex 2.5", 83),
    time("per screw, all work of step S5", "hand tools", 20.1, "computed"),
    time("per screw, all work of step S5", "cordless", 13.9, "computed"),
    time("per screw, all work of step S7", "hand tools", 20.8, "computed"),
    time("per screw, all work of step S7", "cordless", 13, "computed"),
    time("per screw, steps S6 and S8", "hand tools", 28.8, "computed"),
    time("per screw, steps S6 and S8", "cordless", 20.8, "computed"),
    time("per cap nut, steps S3 and S4", "hand tools", 35.5, "computed"),
    time("per cap nut, steps S3 and S4", "cordless", 23.8, "computed"),
  ],
};

/** Handling times of manual assembly, for refit estimates. */
const ASSEMBLY_HANDLING: TimeTable = {
  id: "assembly-handling",
  method: "design-for-assembly (manual)",
  basis: "one part in the hand, bench assembly",
  source: "Mechanical Assemblies, ch. 15, Fig. 15-1 (read)",
  rows: [
    time(
      "handling code 00",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      1.13,
    ),
    time(
      "handling code 10",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      1.5,
    ),
    time(
      "handling code 20",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      1.8,
    ),
    time(
      "handling code 30",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      1.95,
    ),
    time(
      "handling code 01",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      1.43,
    ),
    time(
      "handling code 11",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      1.8,
    ),
    time(
      "handling code 21",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      2.1,
    ),
    time(
      "handling code 31",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      2.25,
    ),
    time(
      "handling code 02",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      1.69,
    ),
    time(
      "handling code 12",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      2.06,
    ),
    time(
      "handling code 22",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      2.36,
    ),
    time(
      "handling code 32",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      2.51,
    ),
    time(
      "handling code 03",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      1.84,
    ),
    time(
      "handling code 13",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      2.25,
    ),
    time(
      "handling code 23",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      2.57,
    ),
    time(
      "handling code 33",
      "first digit: total symmetry under 360, to 540, to 720, 720°; second: size and thickness",
      2.73,
    ),
  ],
};

/** Insertion times of manual assembly, for refit estimates. */
export const ASSEMBLY_INSERTION: TimeTable = {
  id: "assembly-insertion",
  method: "design-for-assembly (manual)",
  basis: "one part fitted, bench assembly",
  source: "Open Mechanical Engineering Journal 10, p. 173, Tables 3 and 4; assembly time slides (read)",
  rows: [
    time("insertion code 00", "place, easy, no hold down", 1.5),
    time("insertion code 01", "", 2.5),
    time("insertion code 06", "", 5.5),
    time("insertion code 08", "", 6.5),
    time("insertion code 10", "obstructed", 4),
    time("insertion code 13", "", 6),
    time("insertion code 16", "", 8),
    time("insertion code 17", "", 9),
    time("insertion code 31", "snap or press at once", 5),
    time("insertion code 39", "screw, not easy to align", 8),
    time("insertion code 48", "", 8.5),
  ],
};

/** Bolting up a class 150 flange joint on site; gasket, alignment and handling included. */
const FLANGE_BOLT_UP: TimeTable = {
  id: "flange-bolt-up",
  method: "field bolt-up estimate",
  basis: "site estimate in man-hours",
  source: "Estimator's Piping Man-Hour Manual, p. 84; flange bolting data slides (read)",
  rows: [
    time("bolt up one 2 in flange joint", "4 bolts", 2520),
    time("bolt up one 3 in flange joint", "4 bolts", 2880),
    time("bolt up one 4 in flange joint", "8 bolts", 4320),
    time("bolt up one 6 in flange joint", "8 bolts", 5400),
    time("bolt up one 8 in flange joint", "8 bolts", 7560),
    time("bolt up one 10 in flange joint", "12 bolts", 9720),
    time("bolt up one 12 in flange joint", "12 bolts", 12240),
    time("bolt up one 14 in flange joint", "12 bolts", 13680),
    time("bolt up one 16 in flange joint", "16 bolts", 15840),
    time("bolt up one 18 in flange joint", "16 bolts", 17280),
    time("bolt up one 20 in flange joint", "20 bolts", 19800),
    time("bolt up one 24 in flange joint", "20 bolts", 23760),
  ],
};

/** Elemental times of corrective maintenance, recalled. */
const MAINTENANCE_ELEMENTS: TimeTable = {
  id: "maintenance",
  method: "MIL-HDBK-472 Procedure V",
  basis: "per fastener, electronic equipment",
  source: "MIL-HDBK-472 Notice 1 (1984), from memory, not seen",
  rows: [
    time("remove standard screw", "", 9.6, "memory"),
    time("replace standard screw", "", 15.6, "memory"),
    time("remove hex or Allen set screw", "", 10.2, "memory"),
    time("replace hex or Allen set screw", "", 25.8, "memory"),
    time("remove captive screw", "", 9, "memory"),
    time("replace captive screw", "", 12, "memory"),
    time("remove quarter-turn fastener", "", 4.8, "memory"),
    time("replace quarter-turn fastener", "", 3, "memory"),
    time("remove thumbscrew", "", 3.6, "memory"),
    time("replace thumbscrew", "", 4.8, "memory"),
    time("remove machine screw", "", 12.6, "memory"),
    time("replace machine screw", "", 27.6, "memory"),
    time("remove nut or bolt", "", 20.4, "memory"),
    time("replace nut or bolt", "", 26.4, "memory"),
    time("remove retaining ring", "", 12, "memory"),
    time("replace retaining ring", "", 17.4, "memory"),
  ],
};

/** Every table above, the ones read first. */
export const TIME_TABLES: readonly TimeTable[] = [
  SERVICE_WORKSHEET,
  MEASURED_STRIP,
  ASSEMBLY_HANDLING,
  ASSEMBLY_INSERTION,
  FLANGE_BOLT_UP,
  MAINTENANCE_ELEMENTS,
];

function time(action: string, condition: string, seconds: number, standing: Standing = "read"): ActionTime {
  return { action, condition, seconds, standing };
}
