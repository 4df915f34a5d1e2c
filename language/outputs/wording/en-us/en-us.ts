// The American English catalogue: the British one with the words and spellings that differ on the other side. A test names each sentence
// that still holds a British word. Terms, all from memory: fasteners ASME B18.12, isolation 29 CFR 1910.147, signal words ANSI Z535.4; the
// rest common practice.

import { enGb } from "../en-gb/en-gb.ts";
import { kindWords } from "../en-gb/kinds.ts";
import { inside, sentence } from "../en-gb/phrases.ts";
import { kindsOf } from "../kinds.ts";
import type { Wording } from "../wording.ts";
import { some } from "./phrases.ts";

const {
    acts,
    document,
    refit,
    bill,
    manual,
    draw,
    labels,
    layoutSheet,
    torqueSheet,
    record,
    refitBook,
    lines,
    figures,
    instructions,
  } = enGb,
  threaded = { strip: "Remove", refit: "Install and tighten" },
  titles = { strip: "Disassembly", refit: "Reassembly", finish: "Final tests" };

/** "Fit" of the tables is "Install" here; a verb that holds it goes on as it stands. */
const installed = <K extends string>(
  all: Readonly<Record<K, { readonly title: string; readonly strip: string; readonly refit: string }>>,
): Readonly<Record<K, { readonly title: string; readonly strip: string; readonly refit: string }>> =>
  Object.fromEntries(
    Object.entries<{ readonly title: string; readonly strip: string; readonly refit: string }>(all).map(
      ([kind, { title, strip, refit: fit }]) => [
        kind,
        {
          title,
          strip: strip.replace(/^Undo$/, "Disconnect"),
          refit: fit.replace(/^Fit\b/, "Install").replace(/\bfit$/, "install"),
        },
      ],
    ),
  ) as Readonly<Record<K, { readonly title: string; readonly strip: string; readonly refit: string }>>;

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
      screw: { title: "Screw", ...threaded },
      bolt: { title: "Bolt", ...threaded },
      nut: { title: "Nut", ...threaded },
      "lock-nut": { title: "Locknut", ...threaded },
      stud: { title: "Stud", strip: "Unscrew", refit: "Screw in" },
      "set-screw": { title: "Setscrew", ...threaded },
      plug: { title: "Plug", strip: "Unscrew", refit: "Screw in and tighten" },
    },
    joints: {
      ...joints,
      gland: { title: "Cable gland", strip: "Loosen and pull out", refit: "Pull in and tighten" },
      spline: { ...joints.spline, strip: "Pull off the splines" },
      "slide-fit": { ...joints["slide-fit"], title: "Slip fit", strip: "Pull off" },
      "shrink-fit": { ...joints["shrink-fit"], strip: "Warm and pull off" },
      magnetic: { ...joints.magnetic, strip: "Pull off against the magnets" },
      "lock-wire": { ...joints["lock-wire"], title: "Safety wire" },
    },
    uses: { ...kindWords.uses, "lock-wire": "lockwire" },
    precautions: {
      ...kindWords.precautions,
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
    sequences: { ...kindWords.sequences, "centre-out": { title: "From the center out" } },
  }),
  acts: {
    ...acts,
    some,
    spanner: (tool, size) =>
      size ? (tool === "wrench" || tool.endsWith("key") ? `${size} ${tool}` : `${tool} ${size}`) : tool,
    leftHand: "Left-hand thread: clockwise loosens, counterclockwise tightens.",
    fingerTight: (what) => sentence(`Install ${what} finger-tight`),
    isNew: "Install new.",
    goesOnDry: "Install dry: nothing on the faces.",
    newEvery: (times) => sentence(`New every ${times} disassemblies`),
  },
  lines,
  figures,
  document: {
    ...document,
    cautionLine:
      "The maker's data, local rules and licensed or authorized persons come first. This document is an aid and no risk assessment.",
  },
  refit: { ...refit, halves: titles },
  bill: {
    ...bill,
    pieces: (count) => `qty ${count}`,
    lots: {
      pair: (pieces, lots) => `qty ${pieces} (${lots} ${lots === 1 ? "pair" : "pairs"})`,
      set: (pieces, lots) => `qty ${pieces} (${lots} ${lots === 1 ? "set" : "sets"})`,
    },
    every: (times) => `new every ${times} disassemblies`,
    reasons: { ...bill.reasons, every: "new after some disassemblies" },
  },
  manual: {
    ...manual,
    htmlLang: "en-US",
    sections: { ...manual.sections, strip: titles.strip, refit: titles.refit },
    qualified: "Only people who are trained for this work and authorized for it, by local rules.",
    cautions:
      "The maker's data, local rules and codes, and licensed or authorized persons come first. This manual is an aid and no risk assessment.",
    spanners: "Wrenches, sockets, keys and drivers",
  },
  draw: {
    ...draw,
    titles: { ...draw.titles, strip: "Disassembly diagram" },
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
    wantedLine: (part, count, thing) =>
      [`${part}${count === undefined ? "" : `, qty ${count}`}`, thing === "" ? "" : `for ${inside(thing)}`]
        .filter(Boolean)
        .join(", "),
  },
  refitBook: {
    ...refitBook,
    title: (procedure, serial) => `Reassembly book: ${procedure}${serial === "" ? "" : `, serial number ${serial}`}`,
    lead: [
      "This book holds the way back of one unit, with what its record says of the disassembly at the lines that it touches.",
      ...refitBook.lead.slice(1),
    ],
    temporary: "Temporary things and caps that the disassembly puts on",
    ticks: "Boxes not ticked at the disassembly",
  },
  instructions: {
    ...instructions,
    terms: instructions.terms.map(
      ([word, means]) => [word, means.replace("metre", "meter").replace("litre", "liter")] as const,
    ),
  },
};
