// Words that give an assurance. Which of them an author's text beside a hazard holds; nobody can promise that on paper.

/** As they stand: an assurance wherever a danger is spoken of. */
const assurances =
  /\b(?:all[ -]clear|no (?:danger|risk|hazard)|harmless|risk[ -]free|certified|compl(?:ies|iant)|OK|okay|passed(?! (?:through|over|round|around|under|along|into|between|by))|(?<!fail-|fail |intrinsically )safe(?![ -](?:working|distance|place|area|load|end)))\b/gi;

/** A state that only a proof on the day shows: "the bus is dead", "Capacitors discharged." Not top dead centre, not a dead end. */
const states =
  /\b(?:(?:is|are|now|made|been|be|stays?|remains?|goes|gone|already|until) )(?:now |then |fully |already )?(?:dead|discharged|de-?energi[sz]ed|voltage-free)\b(?![ -](?:cent|end|weight|load|man|band|stop|slow|blow))|\b(?:dead|discharged|de-?energi[sz]ed|voltage-free)(?=\s*(?:[.;:!,)]|$))/gi;

/** "Prove that it is dead", "never safe to touch": asked or denied in the same clause, not promised. */
const asked =
  /\b(?:prov(?:e[sd]?|ing)|(?:test|check|verify|confirm|ask|see|make sure)(?:s|ed|ing)? (?:that|whether|if|it|them)|must|whether)\b|(?:\b(?:not|never|nothing|nobody|unless)\b|n't\b)[^,]{0,25}$/i;

/** The first word of the text that clears a danger; undefined where none does. */
export function clearingWord(text: string): string | undefined {
  const flat = /\s\s|[^\S ]/.test(text) ? text.replace(/\s+/g, " ") : text;
  if (flat.search(assurances) < 0 && flat.search(states) < 0) return undefined;
  const found = [assurances, states]
    .flatMap((words) => [...flat.matchAll(words)])
    .sort((a, b) => a.index - b.index)
    .find((match) => !asked.test(clauseBefore(flat, match.index)));
  return found?.[0];
}

const clauseBefore = (text: string, end: number): string => /[^.:;!?,]*$/.exec(text.slice(0, end))![0];
