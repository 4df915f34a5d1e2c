// Headings and small words around printed lines, in British English.

import { inside, sentence } from "./phrases.ts";

export const lines = {
  step: (number: number) => `Step ${number}`,
  stepNamed: (number: number, title: string) => `step ${number}, ${title}`,
  continued: (title: string) => `${title} (continued)`,
  outsideSteps: "Outside the steps",
  refitOf: (number: number, title: string) => `Way back of step ${number}: ${title}`,
  refitOutside: "Outside the steps",
  finish: "Final tests",
  withTool: (tool: string) => sentence(`With: ${inside(tool)}`),
  withConsumable: (name: string) => sentence(`With: ${inside(name)}`),
  intoContainer: (container: string) => sentence(`Into ${container}`),
  sequence: (text: string) => sentence(`Sequence: ${text}`),
};

export const figures = {
  seconds: (n: number) => `${n} s`,
  minutes: (n: number) => `${n} min`,
  hours: (n: number) => `${n} h`,
};
