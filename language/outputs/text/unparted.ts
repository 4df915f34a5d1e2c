// A figure and its unit, which no line parts.

/** Signs of units as any of our languages prints them behind a figure. Where one is a word as well, no line ends there either. */
const unit =
  /(\d) (?=(?:[µmk]?m|in|ft|k?g|t|lb|oz|N·m|lbf(?:·(?:ft|in))?|k?N|m?bar|[kM]?Pa|psi|[km]?V|m?A|k?W|[µunm]F|[kM]?(?:Ω|ohm)|m?T|°[CF]|s|min|h|m?L|ml|US (?:qt|gal)|%|rpm|t?r\/min|min⁻¹|Hz|dB|deg|J)(?![\p{L}\d]))/gu;

/** A figure and its unit stay on one line (ISO 80000-1, 7.1.4, from memory: a space between them; that no line ends there is common practice). */
export const unparted = (text: string): string => text.replace(unit, "$1\u00a0").replace(/± (?=\d)/g, "±\u00a0");
