// Headings and small words around printed lines, in British English.

import { inside, sentence } from "./phrases.ts";

export const lines = {
  step: (number: number) => `Step ${number}`,
  stepNamed: (number: number, title: string) => `step ${number}, ${title}`,
  pieces: (title: string, pieces: readonly string[]) => `${title} (${pieces.join(", ")})`,
  only: (says: string, what: string) => `${says} (${what})`,
  continued: (title: string) => `${title} (continued)`,
  outsideSteps: "Outside the steps",
  refitOf: (number: number, title: string) => `Refit of step ${number}: ${title}`,
  refitOutside: "Outside the steps",
  finish: "Final tests",
  withTool: (tool: string) => sentence(`With: ${inside(tool)}`),
  withConsumable: (name: string) => sentence(`With: ${inside(name)}`),
  intoContainer: (container: string) => sentence(`Into ${container}`),
  sequence: (text: string) => sentence(`Sequence: ${text}`),
};

export const figures = {
  /** A figure with the decimal point of our own texts, as this language writes it. */
  number: (text: string) => text,
  plusMinus: (percent: string) => `± ${percent} %`,
  share: (percent: string) => `${percent} %`,
  seconds: (n: number) => `${n} s`,
  minutes: (n: number) => `${n} min`,
  hours: (n: number) => `${n} h`,
};
