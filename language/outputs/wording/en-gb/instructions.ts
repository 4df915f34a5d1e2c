// What instructions for use hold beside the work: who answers for them, what the machine is for, when it goes wrong, waste, glossary,
// in British English.

export const instructions = {
  language: "Language",
  languageName: "English",
  original: "original instructions",
  translated: (from: string) => `translation of: ${from}`,
  notSaid: "the author does not say whether original or translated",
  maker: "Maker of the unit",
  serials: "Serial numbers",
  author: "Author",
  prepared: "Prepared by",
  checked: "Checked by",
  approved: "Approved by",
  signed: (who: string, when: string) => `${who}, ${when}`,
  otherRevision: (who: string, when: string, revision: string | undefined) =>
    `${who}, ${when}, for ${revision === undefined ? "no revision" : `revision ${revision}`}: not for the one that this was made from`,
  notSigned: "not signed",

  sections: {
    purpose: "What the machine is for",
    diagram: "What comes off before what",
    mishaps: "When it goes wrong",
    waste: "Waste",
    glossary: "Words, symbols and units",
    index: "Index",
  },
  intended: "Intended use",
  wrong: "Wrong use that is to be expected",
  intendedNotGiven: "The author does not say what the machine is for. Look it up in the maker's data before you begin.",
  mishap: "What happens",
  mishapThen: "What to do",
  mishapAlways: [
    "Before you begin, know who is called, where the way out is, and where first aid and the extinguisher are.",
    "If somebody is hurt: see that you are not hurt yourself, call for help, then give first aid as you were taught.",
    "If the work stops before its end: leave locks, tags and barriers where they are, and write down what is loose, what hangs and what is open.",
  ] as readonly string[],
  mishapsNotGiven:
    "The author names nothing that may go wrong. Find out for yourself: blockage, spill, fire, a part that falls or jams.",
  term: "Word",
  means: "It means",
  terms: [
    [
      "Line",
      "One act with its box, numbered within its step: 3.2. R before the number: on the way back. F: final tests.",
    ],
    [
      "Way back",
      "The refit as it follows from the strip: what came off last goes on first, unless something else comes before.",
    ],
    [
      "Precaution",
      "An act that stands between a person and a hazard. It counts from its tick until it is taken back or void.",
    ],
    [
      "Proof",
      "A precaution that shows by a reading or a trial that the one before it has worked. It is void after a break in the work.",
    ],
    ["Pass", "Once round all fasteners of a group in their order."],
    ["Order", "The number of a fastener is its turn in tightening."],
    ["Reading", "A figure or an answer that is written down, with its limits and with what follows outside them."],
    ["Not as written", "Anything on the machine that is not as the line says. Stop, ask, write it down."],
    ["As found", "The reading as it is before anything is set."],
    ["Hold point", "The work stops there until the person named releases it."],
    ["N·m, lbf·ft", "Torque: newton metre and pound-force foot"],
    ["mm, in", "Length: millimetre and inch"],
    ["kg, lb", "Mass: kilogram and pound"],
    ["L, US qt", "Volume: litre and US quart"],
    ["V dc, V ac", "Voltage, direct and alternating: never compared with one another"],
    ["°C, °F", "Temperature"],
  ] as readonly (readonly [string, string])[],
};
