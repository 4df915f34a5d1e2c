// The cautions that stand under figures shown to a person, in one place. They add to the maker's data and local codes and never replace them.

import { aidCaution } from "./figure.ts";

/** What a figure is about, for the caution that it carries. */
export type CautionTopic =
  "general" | "electrical" | "stored-energy" | "lifting" | "slings" | "heat" | "magnets" | "noise" | "times" | "scores";

/** The caution of each topic, beginning with the one that stands under every figure. */
export const cautions: Readonly<Record<CautionTopic, string>> = {
  general: `${aidCaution}.`,
  electrical:
    `${aidCaution}. High-voltage work is for qualified people. ` +
    "A computed time or limit proves nothing: prove at the terminals, with a tester tried before and after on a known source.",
  "stored-energy": `${aidCaution}. Block or let down stored energy by the maker's method; work on springs and pressure is for trained people.`,
  lifting: `${aidCaution}. Weight is one of many causes of injury: people, floor, grip and space count too. Where in doubt use lifting gear.`,
  slings: `${aidCaution}. Rigging is for competent riggers: the tag and the marking on the gear come before any table, and nobody stands under a load.`,
  heat: `${aidCaution}. Measure the surface before touching it; limits are for brief touch by healthy adults.`,
  magnets: `${aidCaution}. People with an implant follow their doctor's and the maker's advice and keep away from strong magnets.`,
  noise: `${aidCaution}. Local law sets the levels from which ear protection is offered and worn.`,
  times: `${aidCaution}. Times are estimates on the basis named; never hurry a precaution to meet one.`,
  scores: `${aidCaution}. A score by a published method is no label and no statement of conformity.`,
};
