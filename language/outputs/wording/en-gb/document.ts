// Sentences of whole documents that all outputs share, and the headings of the refit and the bill, in British English.

import type { BuildChoice } from "../../../model/model.ts";
import { capital, counted, inside, list, sentence } from "./phrases.ts";

function choiceName(choice: BuildChoice): string {
  switch (choice.is) {
    case "named":
      return choice.name;
    case "fails":
      return `${choice.name} failing`;
    case "reading-before-fails":
      return "the reading before failing";
    case "optional":
      return choice.title || "the optional part";
    case "choice":
      return `choice ${choice.number}`;
  }
}

export const document = {
  draftMark: "DRAFT",
  draftLine: (openFindings: number, why: readonly string[]) =>
    `DRAFT: ${[why.includes("not-approved") ? "not approved" : "", openFindings > 0 ? `${counted(openFindings, "finding")} open` : ""].filter(Boolean).join(", ")}. Do not work by it.`,
  cautionLine:
    "The maker's data, local rules and licensed or authorised persons come first. This document is an aid and no risk assessment.",
  contentHash: (hash: string) => `Content: ${hash.slice(0, 16)}`,
  noSignal: "HAZARD",
  hazardFigure: (word: string, value: string) => `${word} ${value}`,
  /** A title before what it is the title of. */
  titled: (title: string, text: string) => `${title}: ${text}`,
  /** Of the larger before the smaller: unit, procedure, build. */
  titles: (titles: readonly string[]) => titles.join(": "),
  /** Several texts that each may hold commas, one after another. */
  parts: (texts: readonly string[]) => texts.join("; "),
  /** What sets a build apart; of several choices the first leads. */
  build: (choices: readonly BuildChoice[]) => {
    const names = choices.map(choiceName);
    return names.length < 2 ? (names[0] ?? "plain") : `${names[0]} with ${list(names.slice(1))}`;
  },
  /** Behind a title that stands apart from its text. */
  colon: ":",
  hazardHead: (signal: string, kind: string, name: string) => `${signal}: ${kind}: ${name}`,
  dated: (date: string) => `Date: ${date}.`,
  figures: (figures: readonly string[]) => sentence(figures.join(", ")),
  /** Of its kind in general: what the author says of this one stands before it. */
  harm: (what: string) => sentence(`What can happen, in general: ${what}`),
  keepOut: (distance: string) => sentence(`Keep others at least ${distance} away`),
  wear: (things: readonly string[]) => sentence(`Wear: ${list(things.map(inside))}`),
  who: (role: string) => sentence(`Only for: ${inside(role)}`),
  pushes: (what: string) => sentence(`Pushes: ${what}`),
  source: (source: string) => sentence(`Source: ${inside(source)}`),
  mustStand: (precautions: readonly string[]) =>
    sentence(
      `Before you go on, make sure that ${precautions.length === 1 ? "this precaution is" : "these precautions are"} still in place: ${list(precautions.map(inside))}`,
    ),
  on: (what: string) => `${capital(what)}:`,
  picture: (alt: string) => sentence(`Picture: ${alt}`),
};

export const refit = {
  halves: { strip: "Strip", refit: "Refit", finish: "Final tests" },
  columns: [
    "Draft",
    "Procedure",
    "Half",
    "Step",
    "Line",
    "Action",
    "Count",
    "Tool",
    "Torque",
    "Goes to",
    "More",
  ] as readonly string[],
  noRefit: "The refit could not be worked out: see the findings.",
};

export const bill = {
  title: "Bill of consumables and spares",
  forUnits: (units: number) => sentence(`For ${counted(units, "unit")}`),
  grades: { certain: "Needed for certain", worn: "Only if found worn, damaged, or asked for by a reading" },
  columns: [
    "Draft",
    "Grade",
    "Item",
    "Sort",
    "Size",
    "Part number",
    "Standard",
    "For one",
    "For all",
    "Packs",
    "Pack",
    "Delivery time",
    "Shelf life",
    "Why",
    "Used at",
  ] as readonly string[],
  sorts: { part: "Part", fastener: "Fastener", joint: "Joint", consumable: "Consumable", fluid: "Fluid" },
  pieces: (count: number) => `${count} off`,
  lots: {
    pair: (pieces: number, lots: number) => `${pieces} off (${counted(lots, "pair")})`,
    set: (pieces: number, lots: number) => `${pieces} off (${counted(lots, "set")})`,
    setWith: (pieces: number, lots: number, others: string) => `${pieces} off (${counted(lots, "set")} with ${others})`,
    inSet: (pieces: number, first: string) => `${pieces} off (in the set with ${first})`,
  },
  notGiven: (uses: number) => (uses === 1 ? "amount not given" : `amount not given for ${uses} uses`),
  and: (parts: readonly string[]) => parts.join(", and "),
  packs: (count: number, atLeast: boolean) => `${atLeast ? "at least " : ""}${counted(count, "pack")}`,
  packsOf: (packs: string, pack: string) => `${packs} (pack of ${pack})`,
  lead: (time: string) => `delivery ${time}`,
  shelfLife: (time: string) => `keeps ${time}`,
  nothing: "Nothing is used up and nothing is renewed, by what the procedures say.",
  notGivenNote: "Where an amount is not given, look it up before you order: a blank would read as none.",
  reasons: {
    rule: "always new",
    "standing-rule": "always new by the shop's standing rule",
    destroyed: "undoing destroys it",
    act: "the procedure renews it",
    worn: "new when worn",
    damaged: "new when damaged",
    "as-a-set": "new as a set",
    "by-pairs": "new in pairs",
    reading: "if the reading asks for it",
    chosen: "of the size that the reading asks for",
    scrap: "the old one is scrapped",
    "kind-not-said": "of a kind that is used once; the procedure does not say new or old",
  },
  every: (strips: number) => (strips === 1 ? "new at every strip" : `new every ${strips} strips`),
  each: (text: string) => `for one: ${text}`,
  usedOn: (things: readonly string[]) => `for ${things.map(inside).join("; ")}`,
};
