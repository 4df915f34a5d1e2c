// Signal words of safety messages and the pictograms of substances, by published tables.
// They name the word that a described harm asks for; weighing the harm stays with the author.

/** Signal words of ANSI Z535 and ISO 3864. */
export type SignalWord = "DANGER" | "WARNING" | "CAUTION" | "NOTICE";

/** What may happen, and whether it will or could. */
export type Consequence = "death or serious injury" | "minor or moderate injury" | "damage to property only";
export type Likelihood = "will" | "could";

/**
 * Signal word of a message, and whether the safety alert symbol stands before it.
 * Source: ANSI Z535.6 through three pages on signal words (read).
 */
export function signalWord(
  likelihood: Likelihood,
  consequence: Consequence,
): { readonly word: SignalWord; readonly alertSymbol: boolean } {
  switch (consequence) {
    case "death or serious injury":
      return { word: likelihood === "will" ? "DANGER" : "WARNING", alertSymbol: true };
    case "minor or moderate injury":
      return { word: "CAUTION", alertSymbol: true };
    case "damage to property only":
      return { word: "NOTICE", alertSymbol: false };
  }
}

/** Pictograms of the GHS by code. Source: GHS through three pages (read). */
export const GHS_PICTOGRAMS: readonly { readonly code: string; readonly name: string; readonly for: string }[] = [
  { code: "GHS01", name: "exploding bomb", for: "explosives" },
  { code: "GHS02", name: "flame", for: "flammable liquids cat. 1-3, aerosols 1-2, gases, solids" },
  { code: "GHS03", name: "flame over circle", for: "oxidisers" },
  { code: "GHS04", name: "gas cylinder", for: "gases under pressure" },
  { code: "GHS05", name: "corrosion", for: "skin corrosion 1, eye damage 1, corrosive to metals" },
  { code: "GHS06", name: "skull and crossbones", for: "acute toxicity 1-3" },
  {
    code: "GHS07",
    name: "exclamation mark",
    for: "acute toxicity 4, skin and eye irritation 2, skin sensitisation, STOT SE 3",
  },
  { code: "GHS08", name: "health hazard", for: "respiratory sensitisation, CMR, STOT, aspiration" },
  { code: "GHS09", name: "environment", for: "aquatic hazard" },
];
