// Sentences of whole documents that all outputs share, and the headings of the refit and the bill, in British English.

import { capital, counted, inside, list, sentence } from "./phrases.ts";

export const document = {
  draftMark: "DRAFT",
  draftLine: (openFindings: number, why: readonly string[]) =>
    `DRAFT: ${[why.includes("not-approved") ? "not approved" : "", openFindings > 0 ? `${counted(openFindings, "finding")} open` : ""].filter(Boolean).join(", ")}. Do not work by it.`,
  cautionLine: "The maker's data, local rules and licensed or authorised persons come first. This document is an aid and no risk assessment.",
  contentHash: (hash: string) => `Content: ${hash.slice(0, 16)}`,
  noSignal: "HAZARD",
  hazardFigure: (word: string, value: string) => `${word.replaceAll("-", " ")} ${value}`,
  figures: (figures: readonly string[]) => sentence(figures.join(", ")),
  keepOut: (distance: string) => sentence(`Keep others ${distance} away`),
  wear: (things: readonly string[]) => sentence(`Wear: ${list(things.map(inside))}`),
  who: (role: string) => sentence(`Only for: ${inside(role)}`),
  pushes: (what: string) => sentence(`Pushes: ${what}`),
  source: (source: string) => sentence(`Source: ${inside(source)}`),
  mustStand: (precautions: readonly string[]) => sentence(`Must stand before you go on: ${list(precautions.map(inside))}`),
  on: (what: string) => `${capital(what)}:`,
  picture: (alt: string) => sentence(`Picture: ${alt}`),
};

export const refit = {
  halves: { strip: "Strip", refit: "Way back", finish: "Final tests" },
  columns: ["Draft", "Procedure", "Half", "Step", "Line", "Action", "Count", "Tool", "Torque", "Goes to", "More"] as readonly string[],
  noRefit: "The way back could not be worked out: see the findings.",
};

export const bill = {
  title: "Bill of consumables and spares",
  forUnits: (units: number) => `For ${counted(units, "unit")}`,
  grades: { certain: "Needed for certain", worn: "Only if found worn, damaged, or asked for by a reading" },
  columns: ["Draft", "Grade", "Item", "Sort", "Size", "Part number", "Standard", "For one", "For all", "Packs", "Pack", "Delivery time",
    "Shelf life", "Why", "Used at"] as readonly string[],
  sorts: { part: "Part", fastener: "Fastener", joint: "Joint", consumable: "Consumable", fluid: "Fluid" },
  pieces: (count: number) => `${count} off`,
  notGiven: (uses: number) => (uses === 1 ? "amount not given" : `amount not given for ${uses} uses`),
  and: (parts: readonly string[]) => parts.join(", and "),
  packs: (count: number, atLeast: boolean) => `${atLeast ? "at least " : ""}${counted(count, "pack")}`,
  packOf: (text: string) => `pack of ${text}`,
  lead: (time: string) => `delivery ${time}`,
  shelfLife: (time: string) => `keeps ${time}`,
  nothing: "Nothing is used up and nothing is renewed, by what the procedures say.",
  notGivenNote: "Where an amount is not given, look it up before you order: a blank would read as none.",
  reasons: {
    "rule": "always new", "standing-rule": "always new by the shop's standing rule", "destroyed": "undoing destroys it",
    "joint-kind": "its joint needs a new one",
    "act": "the procedure renews it", "worn": "new when worn", "damaged": "new when damaged", "as-a-set": "new as a set", "by-pairs": "new in pairs",
    "every": "new after some strips",
    "reading": "if the reading asks for it", "chosen": "of the size that the reading asks for", "scrap": "the old one is scrapped",
    "kind-not-said": "of a kind that is used once; the procedure does not say new or old",
  },
  every: (strips: number) => `new every ${strips} strips`,
  each: (text: string) => `for one: ${text}`,
  usedOn: (things: readonly string[]) => `for ${things.map(inside).join("; ")}`,
  step: (title: string) => title,
};
