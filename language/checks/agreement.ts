// Agreement in the sentences of findings, in one place: checks word them for one thing, and here the verb and the pronoun follow a name
// that speaks of several: "Screws was scrapped before" is never read by anybody.

import type { Model } from "../model/model.ts";
import { kept } from "../model/kept.ts";
import { looksPlural } from "../tables/plural-names.ts";
import type { Draft } from "./check.ts";

const irregular: Readonly<Record<string, string>> = {
  is: "are",
  was: "were",
  has: "have",
  goes: "go",
  carries: "carry",
  does: "do",
};
const regular =
  "asks belongs comes ends falls fits hangs holds joins keeps lies needs rests runs secures sits starts stays weighs";
const several = new Map([
  ...Object.entries(irregular),
  ...regular.split(" ").map((verb): [string, string] => [verb, verb.slice(0, -1)]),
]);
const verbs = [...several.keys()].join("|");

/** Names of parts, ties and temporary things that speak of several, the longest first. A hazard is one ("Mains"); a piece is one unless it has several itself. */
const pluralsOf = (model: Model): readonly string[] =>
  plurals(model, () => {
    const things = [...model.parts, ...model.ties].filter(({ name, piece, count }) =>
      piece === "" ? looksPlural(name) : count > 1 && looksPlural(name.slice(0, -piece.length).trim()),
    );
    const temporary = [...model.temporaries.values()].filter(({ name }) => looksPlural(name));
    return [...new Set([...things, ...temporary].map(({ name }) => name))].sort((x, y) => y.length - x.length);
  });
const plurals = kept<Model, readonly string[]>();

/** A finding of this model with its verbs and pronouns after the names in it. */
export function agreed(draft: Draft, model: Model): Draft {
  const names = pluralsOf(model);
  if (names.length === 0) return draft;
  const subject = names.some((name) => draft.says.startsWith(`${name} `));
  return {
    ...draft,
    says: inAgreement(draft.says, names, subject),
    ...(draft.because
      ? { because: draft.because.map((one) => ({ ...one, says: inAgreement(one.says, names, subject) })) }
      : {}),
  };
}

/**
 * @param names names that speak of several.
 * @param subject what the finding is about is several: then "it" is "they".
 */
export function inAgreement(text: string, names: readonly string[], subject: boolean): string {
  let now = text;
  for (const name of names) {
    if (!now.includes(name)) continue;
    const after = new RegExp(
      `(?<![\\p{L}\\p{N}-]|\\bof (?:\\d+ )?)${escaped(name)}(, which)? (${verbs})(?![\\p{L}\\p{N}-])`,
      "gu",
    );
    now = now.replace(
      after,
      (_, which: string | undefined, verb: string) => `${name}${which ?? ""} ${several.get(verb)!}`,
    );
  }
  if (!subject) return now;
  // What weighs or hangs is what the bolts hold, not the bolts.
  return now
    .replace(new RegExp(`(?<=, | and )(${verbs})(?= )`, "g"), (verb) => several.get(verb)!)
    .replace(new RegExp(`\\bit (${verbs})\\b`, "g"), (all, verb: string) =>
      verb === "hangs" || verb === "weighs" ? all : `they ${several.get(verb)!}`,
    )
    .replace(/\bso it\b/g, "so they")
    .replace(/\bits joint\b/g, "their joint")
    .replace(/\b(of|with|on|holds|squeezes) it\b/g, "$1 them");
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
