// Figures that stay with their units where lines are broken by somebody else: a browser, a renderer.

/** Signs of units as any of our languages prints them behind a figure. Where one is a word as well, no line ends there either. */
const unit =
  /(\d) (?=(?:[µmk]?m|in|ft|k?g|t|lb|oz|N·m|lbf(?:·(?:ft|in))?|k?N|m?bar|[kM]?Pa|psi|[km]?V|m?A|k?W|[µunm]F|[kM]?(?:Ω|ohm)|m?T|°[CF]|s|min|h|m?L|ml|US (?:qt|gal)|%|rpm|t?r\/min|min⁻¹|Hz|dB|deg|J)(?:[^A-Za-z0-9À-ɏ]|$))/g;

/** Of what kind a voltage or current is, and whose quart it is. */
const more = /(\d\u00a0(?:[km]?V|m?A|US)) (?=(?:[ad]c|[AD]C|C[CA]|qt|gal)(?:[^A-Za-z0-9À-ɏ]|$))/g;

/** What is in every text that is changed by it: most texts are only asked this. */
const mayPart = /\d [A-Za-zµΩ°%]|± \d/;

/** A figure and its unit stay on one line (ISO 80000-1, 7.1.4, from memory: a space between them; that no line ends there is common practice). */
export function unparted(text: string): string {
  if (!mayPart.test(text)) return text;
  const kept = text.replace(unit, "$1\u00a0"),
    whole = /[VAS] /.test(kept) ? kept.replace(more, "$1\u00a0") : kept;
  return whole.includes("± ") ? whole.replace(/± (?=\d)/g, "±\u00a0") : whole;
}
