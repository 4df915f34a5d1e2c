// Words of the labels and of the sheets for the bench, in British English.

import { inside, sentence } from "./phrases.ts";

export const labels = {
  title: "Labels for bags and trays",
  printAt: "Print at 100 %, without margins of the printer's own.",
  nothing: "No line puts anything into a bag or a tray.",
  place: (kind: "tray" | "bag", label: string) => `${kind === "tray" ? "Tray" : "Bag"} ${label}`,
  from: (unit: string, procedure: string) => [unit, procedure].filter(Boolean).join(": "),
  count: (count: number) => `${count} off`,
  some: (count: number, of: number) => `${count} of ${of}`,
  countNotGiven: "count not given",
  discard: "not kept: a new one is fitted",
  item: (item: {
    name: string;
    id: string;
    count: string;
    size: string;
    discard: boolean;
    line: string;
    step: number | undefined;
  }) =>
    [item.name, item.count, item.size, `[${item.id}]`, `line ${item.line}`, item.discard ? labels.discard : ""]
      .filter(Boolean)
      .join(", "),
  columns: [
    "Draft",
    "Place",
    "Id",
    "Name",
    "Count",
    "Size",
    "Step",
    "Line",
    "Note",
    "Unit",
    "Procedure",
  ] as readonly string[],
};

export const torqueSheet = {
  title: "Torque sheet",
  nothing: "The refit tightens nothing.",
  columns: {
    line: "Line",
    fastener: "Fastener",
    count: "Count",
    thread: "Thread, class",
    passes: "Passes, order",
    metric: "Metric",
    us: "US",
    tool: "Tool, torque wrench",
    note: "Note",
    set: "Set at",
    wrenchNo: "Wrench no.",
    initials: "Initials",
  },
  csv: [
    "Draft",
    "Procedure",
    "Step",
    "Line",
    "Id",
    "Fastener",
    "Count",
    "Thread",
    "Class",
    "Metric",
    "US",
    "Passes",
    "Sequence",
    "Order",
    "Tool",
    "Torque wrench",
    "Note",
    "Set at",
    "Wrench no.",
    "Initials",
  ] as readonly string[],
  pass: (number: number, share: string, metric: string, us: string) => `${number}: ${share} = ${metric} (${us})`,
  passes: (count: number) => `${count} passes`,
  order: (numbers: string) => `Order: ${numbers}`,
  forPieces: (value: string, pieces: number | "rest") =>
    pieces === "rest" ? `${value} for the rest` : `${value} for ${pieces}`,
  stage: (number: number, value: string) => `stage ${number}: ${value}`,
  whileDoing: (value: string, what: string) => `${value} while: ${what}`,
  notGiven: "not given",
  none: "no torque",
  fresh: { certain: "new one", worn: "new if worn" },
  lubricant: (name: string) => `with ${inside(name)}`,
  threadLocker: (name: string) => `on the thread: ${inside(name)}`,
  leftHand: "left-hand thread",
  noWrench: "none of the list covers it",
  note: "Only one of the two systems is the author's own figure. Where a torque is not given, find it out before you tighten.",
};

export const layoutSheet = {
  title: "Layout sheet",
  nothing: "This procedure takes no part off.",
  note: "Lay the parts down in this order, left to right. They go back as the refit says, about from the last to the first.",
  csv: [
    "Draft",
    "Procedure",
    "Place",
    "Line",
    "Id",
    "Name",
    "Count",
    "Comes along",
    "Mass",
    "Goes to",
    "Note",
    "Step",
  ] as readonly string[],
  count: (count: number | undefined) =>
    count === undefined ? "count not given: count them" : count === 1 ? "" : `${count} off`,
  goesTo: (where: string) => sentence(`Goes to ${where}`),
  tray: (label: string) => `tray ${label}`,
  bag: (label: string) => `bag ${label}`,
  massOf: (mass: string, unknown: number) =>
    unknown === 0
      ? mass
      : mass === ""
        ? "mass not given"
        : `${mass}, and ${unknown === 1 ? "1 part" : `${unknown} parts`} with mass not given`,
  discard: "Not kept: a new one is fitted.",
  line: (line: string, step: string) => [line, step].filter(Boolean).join(" "),
};
