// What is said about records of the work, in British English. It reads what was written down and clears nothing.

import { counted, inside, list } from "./phrases.ts";

const limits = (text: string): string => (text === "" ? "" : ` (limits: ${text})`);

export const record = {
  checkTitle: "Remarks on the record",
  recordOf: (file: string, serial: string) => (serial === "" ? file : `${file}, serial number ${serial}`),
  noRemark: "No remark. This reads the record alone and says nothing about the machine.",
  openTitle: "To be dealt with",
  toldTitle: "To be known",
  wantedTitle: "To be ordered",
  open: "to be dealt with",
  told: "to be known",
  checkColumns: [
    "Draft",
    "File",
    "Serial number",
    "Procedure",
    "Line",
    "Grade",
    "Remark",
    "What follows",
    "Thing",
    "Wanted",
    "How many",
    "For",
  ] as readonly string[],

  figure: (value: number, unit: string) => (unit === "" ? `${value} without a unit` : `${value} ${unit}`),
  otherRevision: (own: string, now: string) =>
    `It was made from another revision, or from other files: its content is ${own}, here it is ${now}. The lines may ask for something else`,
  otherProcedure: (procedure: string, unit: string, build: string) =>
    `${procedure} on ${unit}${build === "" ? "" : `, build ${build}`}: there is no such procedure here`,
  noLines: (procedure: string) => `${procedure}: the record holds nothing of it`,
  unknownLine: (line: string) => `There is no line ${line}`,
  unknownItem: (item: string) => `${item} is not worked on in this line`,
  unknownReading: (reading: number) => `This line has no reading ${reading}`,
  notTicked: (line: string) => `Not ticked: ${line}`,
  countMissing: (name: string, count: number | undefined) =>
    `${name}: no count${count === undefined ? "" : `, ${count} due`}`,
  countDiffers: (name: string, count: number, due: number) => `${name}: ${count} counted, ${due} due`,
  torqueMissing: (name: string, torque: string) => `${name}: no torque written down (${torque})`,
  torqueDiffers: (name: string, set: string, torque: string) => `${name}: set at ${set}, the procedure gives ${torque}`,
  torqueUnit: (name: string, set: string) => `${name}: ${set} cannot be held against the procedure's torque`,
  torqueNotGiven: (name: string, set: string) =>
    `${name}: set at ${set}, the procedure gives no figure to hold it against`,
  readingMissing: (what: string, text: string) => `${what}: no reading${limits(text)}`,
  readingUnit: (what: string, figure: string, unit: string) =>
    `${what}: ${figure} cannot be held against limits in ${unit}`,
  readingOutside: (what: string, figure: string, text: string) =>
    `${what}: ${figure} is outside its limits${limits(text)}`,
  readingWasOutside: (what: string, number: number, figure: string, text: string) =>
    `${what}: at try ${number} it was ${figure}, outside its limits${limits(text)}`,
  notAsItShouldBe: (what: string, number: number | undefined) =>
    `${what}: not as it should be${number === undefined ? "" : ` at try ${number}`}`,
  noConsequence: "The procedure does not say what follows: stop and ask.",
  notSigned: "Not signed",
  troubles: {
    sheared: "Sheared",
    "thread-damaged": "Thread damaged",
    seized: "Seized",
    broken: "Broken",
    missing: "Missing",
    "wrong-part": "Wrong part",
    other: "Not as written",
  },
  notAsWritten: (what: string, name: string, note: string, done: string, agreedBy: string, wanted: string) =>
    [
      `${what}${name === "" ? "" : `: ${name}`}`,
      note,
      done === "" ? "" : `done: ${done}`,
      agreedBy === "" ? "" : `agreed by ${agreedBy}`,
      wanted === "" ? "" : `wanted: ${wanted}`,
    ]
      .filter(Boolean)
      .join("; "),
  notAgreed: (what: string, name: string) =>
    `${what}${name === "" ? "" : `, ${inside(name)}`}: nobody has agreed to what was done`,
  notDone: (what: string, name: string) =>
    `${what}${name === "" ? "" : `, ${inside(name)}`}: neither what was done about it nor who agreed is written down`,

  calibrationOverdue: (name: string, due: string, on: string) =>
    `${name}: its calibration was due ${due}, it was used on ${on}`,
  calibrationFollows:
    "Take it again with an instrument whose calibration is in date, and ask about what was measured with this one.",
  calibrationNoDay: (name: string, due: string) =>
    `${name}: calibration due ${due}; the record gives no day of the reading to hold it against`,
  calibrationNoDate: (name: string, due: string) =>
    `${name}: calibration due “${due}” is no date, so that nothing can be held against it`,
  instrumentUnlisted: (name: string) =>
    `${name}: not among the instruments that the record lists, so that nothing is known of its calibration`,
  wantedLine: (part: string, count: number | undefined, thing: string) =>
    [`${part}${count === undefined ? "" : `, ${count} off`}`, thing === "" ? "" : `for ${inside(thing)}`]
      .filter(Boolean)
      .join(", "),

  summaryTitle: (count: number) => `Readings of ${counted(count, "record")}`,
  leftOut: (files: readonly string[]) => `Left out, since made from another revision: ${list(files)}`,
  noReadings: "The procedures ask for no reading.",
  summaryColumns: [
    "Draft",
    "Procedure",
    "Line",
    "Reading",
    "Limits",
    "Unit",
    "Figures",
    "Lowest",
    "Median",
    "Highest",
    "Mean",
    "Standard deviation",
    "Outside the limits",
    "As it should be",
    "Not as it should be",
    "Missing",
  ] as readonly string[],
  heads: {
    line: "Line",
    reading: "Reading",
    limits: "Limits",
    unit: "Unit",
    count: "Figures",
    lowest: "Lowest",
    median: "Median",
    highest: "Highest",
    mean: "Mean",
    deviation: "Standard deviation",
    outside: "Outside",
    answers: "As it should be",
    missing: "Missing",
  },
  spread: (count: number, lowest: string, highest: string, median: string, unit: string) =>
    `${counted(count, "figure")}: ${lowest} to ${highest} ${unit}, median ${median}`,
  meanAndDeviation: (mean: string, deviation: string, unit: string) =>
    `mean ${mean} ${unit}${deviation === "" ? "" : `, standard deviation ${deviation}`}`,
  outsideCount: (count: number) => `${count} outside the limits`,
  answers: (yes: number, no: number) => `${yes} as it should be, ${no} not`,
  missing: (count: number) => `${counted(count, "record")} without it`,
  limits: (text: string) => `Limits: ${text}`,
  atLeast: "at least",
  atMost: "at most",
  plotTitle: (line: string, what: string) => `${line} ${what}`,
  plotLegend: (withOutside: boolean) =>
    `Each ring is a unit${withOutside ? ", each filled square a unit outside the limits" : ""}; the arrow is the median.`,
  plotAbout: (
    count: number,
    lowest: string,
    highest: string,
    median: string,
    unit: string,
    outside: number,
    text: string,
  ) =>
    `${counted(count, "figure")} from ${lowest} to ${highest} ${unit}, median ${median}${text === "" ? "" : `, limits ${text}, ${outside} outside`}.`,
};
