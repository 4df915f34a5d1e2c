// Words that give an assurance. Which of them an author's text holds; nobody can promise that on paper.

/** As they stand: an assurance wherever a danger is spoken of. */
const assurances =
  /\b(?:all[ -]clear|no (?:danger|risk|hazard)|harmless|risk[ -]free|certified|compl(?:ies|iant)|OK|okay|passed(?! (?:through|over|round|around|under|along|into|between|by))|(?<!fail-|fail |intrinsically )safe(?![ -](?:working|distance|place|area|load|end)))\b/gi;

/** A state that only a proof on the day shows: "the bus is dead", "Capacitors discharged." Not top dead centre, not a dead end. */
const states =
  /\b(?:(?:is|are|now|made|been|be|stays?|remains?|goes|gone|already|until) )(?:now |then |fully |already )?(?:dead|discharged|de-?energi[sz]ed|voltage-free)\b(?![ -](?:cent|end|weight|load|man|band|stop|slow|blow))|\b(?:dead|discharged|de-?energi[sz]ed|voltage-free)(?=\s*(?:[.;:!,)]|$))/gi;

/**
 * What promises the same whatever is spoken of: a thing that is safe, or safe to touch. Beside no hazard only these are looked for, since
 * a reading may be OK and a part certified there.
 */
const promises =
  /\b(?:(?:is|are|now|made|been|be) (?:now |then |fully |completely |perfectly )?safe(?![ -](?:working|distance|place|area|load|end|for|up|at|in|under|within|side)\b)|safe to (?:touch|work|enter|open|handle|reach|proceed|approach|go on|put)|all[ -]clear|no (?:danger|risk)|harmless|risk[ -]free|(?:is|are|now|made) (?:now |fully |already )?(?:dead|de-?energi[sz]ed|voltage-free)(?![ -](?:cent|end|weight|load|man|band|stop|slow|blow)))\b/gi;

/** "Prove that it is dead", "never safe to touch": asked or denied in the same clause, not promised. */
const asked =
  /\b(?:prov(?:e[sd]?|ing)|(?:test|check|verify|confirm|ask|see|make sure)(?:s|ed|ing)? (?:that|whether|if|it|them)|must|whether)\b|(?:\b(?:not|never|nothing|nobody|unless)\b|n't\b)[^,]{0,25}$/i;

/** The first word of a text beside a hazard that clears a danger; undefined where none does. */
export const clearingWord = (text: string): string | undefined => firstOf([assurances, states], text);

/** The first words of any text that promise that a danger is gone; undefined where none do. */
export const promiseIn = (text: string): string | undefined => firstOf([promises], text);

function firstOf(patterns: readonly RegExp[], text: string): string | undefined {
  const flat = /\s\s|[^\S ]/.test(text) ? text.replace(/\s+/g, " ") : text;
  if (patterns.every((words) => flat.search(words) < 0)) return undefined;
  const found = patterns
    .flatMap((words) => [...flat.matchAll(words)])
    .sort((a, b) => a.index - b.index)
    .find((match) => !asked.test(clauseBefore(flat, match.index)));
  return found?.[0];
}

const clauseBefore = (text: string, end: number): string => /[^.:;!?,]*$/.exec(text.slice(0, end))![0];
