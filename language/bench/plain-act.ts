// An act that nobody wrote: the inverse of an event, with the place of the act that it answers.

import { bareAct, type Act } from "../model/act.ts";

export const plainAct = (verb: string, like: Act, more: Partial<Act> = {}): Act =>
  Object.assign(bareAct(verb, like.at, like.wordEnd), more);
