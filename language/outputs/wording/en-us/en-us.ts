// The American English catalogue: the British one with the words and spellings that differ on the other side. A test names each sentence
// that still holds a British word. Terms, all from memory: fasteners ASME B18.12, isolation 29 CFR 1910.147, signal words ANSI Z535.4; the
// rest common practice.

import { enGb } from "../en-gb/en-gb.ts";
import { kindWords } from "../en-gb/kinds.ts";
import { inside, sentence } from "../en-gb/phrases.ts";
import { kindsOf } from "../kinds.ts";
import type { Wording } from "../wording.ts";
import { some } from "./phrases.ts";

/** What is said otherwise, in sentences that hold no name and no figure: an author's words are never touched. */
const otherwise: readonly (readonly [RegExp, string])[] = [
  [/\bStrip\b/g, "Disassembly"],
  [/\bstrip\b/g, "disassembly"],
  [/\bRefit\b/g, "Reassembly"],
  [/\brefit\b/g, "reassembly"],
  [/\bTick the box\b/g, "Check the box"],
  [/\btick the step\b/g, "check off the step"],
  [/\bits tick\b/g, "its check mark"],
  [/\bUntick\b/g, "Uncheck"],
  [/\bTicked\b/g, "Checked-off"],
  [/\bticked\b/g, "checked off"],
  [/\brenews\b/g, "replaces"],
  [/\brenewed\b/g, "replaced"],
  [/\bis fitted\b/g, "is installed"],
  [/\bfits nothing\b/g, "installs nothing"],
  [/\bFit (?=new|dry)/g, "Install "],
  [/uthoris/g, "uthoriz"],
  [/metre\b/g, "meter"],
  [/litre\b/g, "liter"],
];

function spelled<T>(value: T): T;
function spelled(value: unknown): unknown {
  if (typeof value === "string") return otherwise.reduce((text, [from, to]) => text.replace(from, to), value);
  if (Array.isArray(value)) return value.map((each) => spelled<unknown>(each));
  return typeof value === "object" && value !== null
    ? Object.fromEntries(Object.entries(value).map(([key, each]) => [key, spelled<unknown>(each)]))
    : value;
}

const { acts, document, refit, bill, manual, draw, labels, layoutSheet, torqueSheet, record, refitBook } =
    spelled(enGb),
  { lines, figures, instructions, tablet, benchSheets } = spelled(enGb),
  threaded = { strip: "Remove", refit: "Install and tighten" };

/** "Fit" of the tables is "Install" here; a verb that holds it goes on as it stands. */
const installed = <K extends string, W extends { readonly strip: string; readonly refit: string }>(
  all: Readonly<Record<K, W>>,
): Readonly<Record<K, W>> =>
  Object.fromEntries(
    Object.entries<W>(all).map(([kind, words]) => [
      kind,
      {
        ...words,
        strip: words.strip.replace(/^Undo$/, "Disconnect"),
        refit: words.refit.replace(/^Fit\b/, "Install").replace(/\bfit$/, "install"),
      },
    ]),
  ) as Readonly<Record<K, W>>;

const parts = installed(kindWords.parts),
  fasteners = installed(kindWords.fasteners),
  joints = installed(kindWords.joints);

export const enUs: Wording = {
  ...enGb,
  tag: "en-US",
  language: "English (United States)",
  kinds: kindsOf({
    ...kindWords,
    plain: { strip: "Remove", refit: "Install" },
    parts: {
      ...parts,
      bush: { ...parts.bush, title: "Bushing" },
      circlip: { ...parts.circlip, title: "Retaining ring" },
      "split-pin": { ...parts["split-pin"], title: "Cotter pin" },
      loom: { ...parts.loom, title: "Wiring harness" },
    },
    fasteners: {
      ...fasteners,
      screw: threaded,
      bolt: threaded,
      nut: threaded,
      "lock-nut": threaded,
      stud: { strip: "Unscrew", refit: "Screw in" },
      "set-screw": threaded,
      plug: { strip: "Unscrew", refit: "Screw in and tighten" },
    },
    joints: {
      ...joints,
      gland: { title: "Cable gland", strip: "Loosen and pull out", refit: "Pull in and tighten" },
      spline: { ...joints.spline, strip: "Pull off the splines" },
      "slide-fit": { ...joints["slide-fit"], title: "Slip fit", strip: "Pull off" },
      "shrink-fit": { ...joints["shrink-fit"], strip: "Warm and pull off" },
      "clevis-pin": { ...joints["clevis-pin"], strip: "Unpin and pull out" },
      solder: { ...joints.solder, strip: "Desolder" },
      magnetic: { ...joints.magnetic, strip: "Pull off against the magnets" },
      "lock-wire": { ...joints["lock-wire"], title: "Safety wire" },
    },
    uses: { ...kindWords.uses, "lock-wire": "lockwire", "split pin": "cotter pin" },
    precautions: {
      ...kindWords.precautions,
      "prove-dead": { title: "Test for absence of voltage", back: undefined },
      earth: { title: "Ground", back: "Take the ground off" },
    },
    sources: { ...kindWords.sources, mains: { title: "Line supply" } },
    drives: {
      ...kindWords.drives,
      hex: { tool: "wrench" },
      "hex-socket": { tool: "hex key" },
      slot: { tool: "slotted screwdriver" },
      "pin-spanner": { tool: "pin wrench" },
    },
    facings: Object.fromEntries(
      Object.entries(kindWords.facings).map(([word, says]) => [word, says.replace(/wards$/, "ward")]),
    ) as typeof kindWords.facings,
    sequences: { ...kindWords.sequences, "centre-out": { title: "From the center out" } },
  }),
  acts: {
    ...acts,
    some,
    spanner: (tool, size) =>
      size ? (tool === "wrench" || tool.endsWith("key") ? `${size} ${tool}` : `${tool} ${size}`) : tool,
    leftHand: "Left-hand thread: clockwise loosens, counterclockwise tightens.",
    fingerTight: (what) => sentence(`Install ${what} finger-tight`),
    renew: (what) => sentence(`Replace ${what}: install new`),
    consequence: { ...acts.consequence, renew: (what) => `replace ${what}` },
    newEvery: (times) => sentence(times === 1 ? "New at every disassembly" : `New every ${times} disassemblies`),
  },
  lines: { ...lines, refitOf: (number, title) => `Reassembly of step ${number}: ${title}` },
  figures,
  document,
  refit,
  bill: {
    ...bill,
    pieces: (count) => `qty ${count}`,
    lots: {
      pair: (pieces, lots) => `qty ${pieces} (${lots} ${lots === 1 ? "pair" : "pairs"})`,
      set: (pieces, lots) => `qty ${pieces} (${lots} ${lots === 1 ? "set" : "sets"})`,
      setWith: (pieces, lots, others) => `qty ${pieces} (${lots} ${lots === 1 ? "set" : "sets"} with ${others})`,
      inSet: (pieces, first) => `qty ${pieces} (in the set with ${first})`,
    },
    every: (times) => (times === 1 ? "new at every disassembly" : `new every ${times} disassemblies`),
  },
  manual: {
    ...manual,
    htmlLang: "en-US",
    spanners: "Wrenches, sockets, keys and drivers",
  },
  draw: {
    ...draw,
    groupOf: (count, size) => sentence(size === "" ? `Qty ${count}` : `Qty ${count}, ${size}`),
  },
  labels: { ...labels, count: (count) => `qty ${count}` },
  torqueSheet,
  layoutSheet: {
    ...layoutSheet,
    count: (count) => (count === undefined ? "count not given: count them" : count === 1 ? "" : `qty ${count}`),
  },
  record: {
    ...record,
    notTicked: (line) => `Not checked off: ${line}`,
    wantedLine: (part, count, thing) =>
      [`${part}${count === undefined ? "" : `, qty ${count}`}`, thing === "" ? "" : `for ${inside(thing)}`]
        .filter(Boolean)
        .join(", "),
  },
  refitBook: {
    ...refitBook,
    title: (procedure, serial) => `Reassembly book: ${procedure}${serial === "" ? "" : `, serial number ${serial}`}`,
    staysOn: (what) => `${what}: no line of the reassembly takes it off`,
  },
  tablet: { ...tablet, progress: (done, all) => `${done} of ${all} lines checked off` },
  benchSheets,
  instructions,
};
