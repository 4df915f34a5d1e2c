// Words that clear a danger: no answer of a figure may hold one.

const words = [
  "safe(ly)?",
  "within (the |its )?(limits?|guidelines?|range|tolerance|capacity)",
  "ok",
  "okay",
  "pass(ed)?",
  "compl(y|ies|iant)",
  "acceptable",
  "allowed",
  "dead",
  "discharged",
  "harmless",
  "no (risk|danger)",
  "may be (lifted|touched)",
];
/** Finds the first of them. */
export const clearing = new RegExp(`\\b(${words.join("|")})\\b`, "i");
