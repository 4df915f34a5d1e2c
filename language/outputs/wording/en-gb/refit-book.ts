// Words of the book of the way back that a record feeds, in British English. They tell what was written down and clear nothing.

export const refitBook = {
  title: (procedure: string, serial: string) =>
    `Refit book: ${procedure}${serial === "" ? "" : `, serial number ${serial}`}`,
  sections: { recorded: "What the record says", closing: "Closing list" },
  file: "Record",
  lead: [
    "This book holds the refit of one unit, with what its record says of the strip at the lines that it touches.",
    "Every proof of the record is void. Take it again before the line that needs it.",
    "What the record does not say is not known. Look before you go on.",
  ] as readonly string[],
  whole: "For the whole refit",
  at: (line: string, says: string) => `Record, line ${line}: ${says}`,
  reading: (what: string, figure: string, limits: string, outside: boolean) =>
    `${what}: ${figure}${outside ? ", outside its limits" : ""}${limits === "" ? "" : ` (${limits})`}`,
  notTicked: "Not ticked: look whether it was done.",
  chosen: (what: string, chosen: string) => `${what}, chosen: ${chosen}`,
  notChosen: (what: string) => `${what}: which one was chosen is not written down`,
  ticked: "The record has this line ticked.",

  closingNote: "All that the record leaves open. A line is open until somebody who may do so signs it.",
  nothing: "The record leaves nothing open. This reads the record alone and says nothing about the machine.",
  left: "What is open",
  wanted: "Parts that are wanted",
  agreed: "Not as written, and nobody has agreed",
  outside: "Readings outside their limits, and what is not as it should be",
  temporary: "Temporary things and caps that the strip puts on",
  ticks: "Boxes not ticked at the strip",
  other: "What else is missing or differs",
  capped: (what: string) => `Cap on ${what}`,
  comesOff: (what: string, line: string) => `${what}: comes off at line ${line}`,
  staysOn: (what: string) => `${what}: no line of the refit takes it off`,
};
