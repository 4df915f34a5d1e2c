// The languages that there are, and the one that answers a tag.

import { de } from "./de/de.ts";
import { enGb } from "./en-gb/en-gb.ts";
import { enUs } from "./en-us/en-us.ts";
import { es } from "./es/es.ts";
import { fr } from "./fr/fr.ts";
import type { Wording } from "./wording.ts";

/** Every language that there is, by BCP 47 tag. */
export const wordings: Readonly<Record<string, Wording>> = Object.fromEntries(
  [enGb, enUs, de, fr, es].map((wording) => [wording.tag, wording]),
);

/**
 * The language asked for, by its tag in any case: `de-AT` is answered by `de`, `en` by the first English one, as RFC 4647 looks up
 * (section 3.4). Undefined where there is no such catalogue.
 */
export function wordingFor(tag: string): Wording | undefined {
  const own = Object.values(wordings),
    wanted = tag.toLowerCase().split("-");
  for (let parts = wanted.length; parts > 0; parts--) {
    const range = wanted.slice(0, parts).join("-");
    const found =
      own.find((each) => each.tag.toLowerCase() === range) ??
      (parts === 1 ? own.find((each) => each.tag.toLowerCase().split("-")[0] === range) : undefined);
    if (found) return found;
  }
  return undefined;
}

export const defaultWording: Wording = enGb;
