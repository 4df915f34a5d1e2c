// Headings and sentences of the manual, in British English.

import { counted, inside, list, sentence } from "./phrases.ts";

export const manual = {
  htmlLang: "en-GB",
  contents: "Contents",
  sections: {
    identification: "What this manual is for", who: "Who may do it", use: "How to use this manual", safety: "Safety first", works: "How it works",
    tools: "Tools and gear",
    bill: "Consumables and spares", parts: "Parts", fasteners: "Fasteners and joints", strip: "Strip", refit: "Refit", finish: "Final tests",
    fluids: "Fluids", record: "Record",
  },
  title: (unit: string) => unit,
  of: (section: string, procedure: string) => `${section}: ${procedure}`,

  // Identification.
  unit: "Unit", build: "Build", procedure: "Procedure", unitRevision: "Revision of the unit", procedureRevision: "Revision of the procedure",
  date: "Date", content: "Content (SHA-256)",
  files: "Made from", approval: "Approved by", notGiven: "not given", notApproved: "not approved: this is a draft", serial: "Serial number",
  mass: "Mass of the unit",
  aim: "Comes off", before: "Before this work",

  // Who.
  crew: (count: number) => sentence(`At least ${count === 1 ? "1 person" : `${count} people`}`),
  role: (role: string, title: string) => sentence(`${title}: ${inside(role)}`),
  roleForHazard: (role: string, hazard: string) => sentence(`${role}, for: ${inside(hazard)}`),
  qualified: "Only people who are trained for this work and authorised for it, by local rules.",
  highVoltage: "Electrical work is for qualified people only.",

  // Use.
  useLines: [
    "Read the whole manual before you begin.",
    "Do the steps in the order in which they stand, one line at a time. Tick the box when the line is done.",
    "A warning stands before the line that it belongs to.",
    "Write readings down where the line asks for them. If a reading is outside its limits, do what the line says.",
    "If something is not as written, stop and ask. Write it down in the record.",
    "After a break in the work, take every proof again before you go on.",
    "Where a mass, a torque or an amount is not given, find it out before you do the line.",
  ] as readonly string[],
  torqueNote: "A torque stands in both systems of units; only one of the two is the maker's or the author's own figure.",
  signalTable: "Signal words", signalWord: "Word", signalMeans: "It means",

  // Safety.
  cautions: "The maker's data, local rules and codes, and licensed or authorised persons come first. This manual is an aid and no risk assessment.",
  messages: "Messages", hazards: "Hazards and their precautions", precautions: "Precautions, in this order",
  dismissed: "Kinds of hazard that the author has dismissed", notConsidered: "Kinds of hazard that nobody has answered for",
  notConsideredNote: "The author has neither declared nor dismissed these. Find out for yourself whether they are there:",
  noHazards: "Hazards that the author has declared: none. That says nothing about the machine.",
  dismissedKind: "Kind", dismissedWhy: "Why, in the author's words",
  hazardMark: (sign: string) => `ISO 7010-${sign}`,
  signAlt: (meaning: string) => `Warning sign: ${meaning}`,
  inSteps: "It stands again before the lines that it belongs to.",

  // Tools.
  spanners: "Spanners, sockets, keys and drivers", tool: "Tool", forWhat: "For", computed: "by the head standards; the fastener itself says nothing",
  wrenches: "Torque wrenches", range: "Range", calibration: "Calibration", accuracy: "Accuracy",
  wrenchNone: "No wrench of the workshop's list covers it", torque: "Torque",
  lifting: "Lifting", load: "Load", massHangs: "Mass as it hangs", gear: "Gear", capacity: "Capacity", people: "People", line: "Line",
  partsWithout: (count: number) => (count === 1 ? "1 part with mass not given" : `${count} parts with mass not given`),
  liftingNote: "Slings and eyebolts: by their own marking, by people trained to sling. Nobody stands under a load.",
  otherTools: "Other tools and containers", noTools: "No fastener says what tool it takes.",
  wear: "To wear",

  // Tables.
  number: "No.", name: "Name", kind: "Kind", count: "Count", size: "Size", partNo: "Part number", standard: "Standard", fresh: "New", joins: "Joins",
  class: "Class", passes: "Passes and sequence",
  slingLegs: (legs: number | undefined, angle: string | undefined) => [legs === undefined ? "" : `a leg; ${legs === 1 ? "1 leg" : `${legs} legs`}`,
    angle === undefined ? "" : `at ${angle} to the horizontal`].filter(Boolean).join(" "),
  hangsOn: (what: string, on: string) => `${what} to ${on}`,
  freshGrades: { certain: "always", worn: "if worn" },
  pieces: (count: number) => String(count),
  massColumn: "Mass", note: "Note", fastenersCaption: "Fasteners", jointsCaption: "Joints",
  grade: "Needed", item: "Item", amount: "Amount", packs: "Packs", why: "Why",
  fluid: "Fluid", volume: "Volume", drainsAt: "Drains at", fillsAt: "Fills at", bleedsAt: "Bleeds at", uses: "Fill with", waste: "Waste",

  // Steps.
  done: (line: string) => `Line ${line} done`,
  reading: "Reading", passesFails: "As it should be? Yes / No", signed: "Name and signature",
  noStrip: "This procedure takes nothing off.",
  noRefit: "The way back could not be worked out. Do not begin before it can: see the findings.",
  writtenRefit: "The way back is written by the author.",
  problem: "The bench refused this line: see the findings.",
  pictureMissing: (file: string, why: string) => sentence(`Picture ${file} is not shown: ${why}`),
  pictureOff: (file: string) => sentence(`Picture: ${file}`),
  patternAlt: (count: number, order: string) => `Bolt circle of ${count}, numbered in the order of tightening: ${order}`,
  patternCaption: "The number in each circle is its turn; begin at any one.",
  given: (conditions: readonly string[]) => `${list(conditions)}:`,

  // Record.
  recordLines: ["Unit, serial number", "Work begun, date and time", "Work ended, date and time", "Done by", "Checked by a second person",
    "Torque wrenches used, number and calibration", "Not as written (sheared, seized, broken, missing, wrong part): what, and what was done"] as readonly string[],
  recordNote: "Keep this sheet with the unit.",
  madeWith: "Made by Stripdown from the procedure as code.",
  summaryFindings: (count: number) => `${counted(count, "finding")} open`,
};
