// What is told about a hazard beside its name, in the same order everywhere: what it is, how to keep away from it, who may.

import type { Wording } from "../wording/wording.ts";
import type { HazardText } from "./line.ts";

/** Signal word, kind and name in one sentence. */
export const hazardHead = (hazard: HazardText, { document, kinds }: Wording): string =>
  document.hazardHead(hazard.signal ? kinds.signal(hazard.signal) : document.noSignal, hazard.kindTitle, hazard.name);

export function hazardFacts(hazard: HazardText, { document }: Wording): string[] {
  return [
    hazard.about,
    hazard.harm && document.harm(hazard.harm),
    hazard.source && document.source(hazard.source),
    ...(hazard.figures.length > 0 ? [document.figures(hazard.figures)] : []),
    hazard.pushes && document.pushes(hazard.pushes),
    hazard.keepOut && document.keepOut(hazard.keepOut),
    hazard.wear.length > 0 ? document.wear(hazard.wear) : "",
    hazard.who && document.who(hazard.who),
  ].filter((fact) => fact !== "");
}

/** On the way back the precautions were taken long before: which of them have to stand is told again, those without a kind in their own words. */
export function mustStand(hazard: HazardText, { document }: Wording): string[] {
  return hazard.precautions.length === 0 || hazard.isTakenBack === true
    ? []
    : [
        document.mustStand(
          hazard.precautions.map(({ kind, title, text }) =>
            kind === "other" && text !== "" ? text.replace(/\.$/, "") : title,
          ),
        ),
      ];
}
