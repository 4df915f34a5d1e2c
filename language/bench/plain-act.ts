// An act that nobody wrote: the inverse of an event, with the place of the act that it answers.

import type { Act } from "../model/act.ts";

const bare: Omit<Act, "verb" | "at" | "wordEnd"> = {
  names: [],
  count: undefined,
  rest: false,
  on: [],
  labels: [],
  stage: undefined,
  amount: undefined,
  tool: undefined,
  into: undefined,
  passes: undefined,
  people: undefined,
  together: false,
  back: false,
  fingerTight: false,
  facing: undefined,
  after: [],
  before: [],
  first: false,
  last: false,
  limits: undefined,
  asFound: false,
  consequences: [],
  id: undefined,
  text: "",
  text2: "",
  points: [],
  from: undefined,
  to: undefined,
};

export function plainAct(verb: string, like: Act, more: Partial<Act> = {}): Act {
  return { ...bare, verb, at: like.at, wordEnd: like.wordEnd, ...more };
}
