// The safety sign of ISO 7010 by its number, or the signs whose meaning or place holds a word. It says which sign is meant, never that one is enough.

import { safetySigns, signCategory } from "../tables/safety-signs.ts";
import { argument, plain, step, textIn, type Figure } from "./figure.ts";
import { hazardFigure } from "./hazard-figure.ts";

/** "w12", "W012", "ISO 7010-W012" to "W012"; `undefined` for what is no number of a sign. */
function codeIn(text: string): string | undefined {
  const parts = /^(?:iso\s*7010[\s-]*)?([a-z])\s*(\d{1,3})$/i.exec(text.trim());
  return parts ? `${parts[1]!.toUpperCase()}${parts[2]!.padStart(3, "0")}` : undefined;
}

/** The three numbers of the table nearest to one that it lacks, of its letter. */
function nearestCodes(code: string): readonly string[] {
  const number = (one: string): number => Number(one.slice(1));
  return safetySigns
    .map((sign) => sign.code)
    .filter((one) => one[0] === code[0])
    .sort((a, b) => Math.abs(number(a) - number(code)) - Math.abs(number(b) - number(code)))
    .slice(0, 3);
}

export const safetySignFigure: Figure = hazardFigure({
  name: "safety-sign",
  title: "Safety sign by its number or by a word",
  topic: "general",
  arguments: [argument("sign", "text", "number of the sign, or a word of its meaning")],
  validity: "signs that a strip-down meets, not the whole standard; the sign that a site needs is the site's to decide",
  source: "ISO 7010 and ISO 3864-1 through two public lists of the signs (read)",
  examples: ["W017", "hot", "gloves"],
  answer(inputs) {
    const text = textIn(inputs, "sign")!,
      code = codeIn(text),
      wanted = text.toLowerCase();
    const found = code
      ? safetySigns.filter((sign) => sign.code === code)
      : safetySigns.filter((sign) => ` ${sign.meaning} ${sign.at}`.toLowerCase().includes(` ${wanted}`));
    if (found.length === 0 || wanted === "")
      return {
        says: `safety-sign: no sign of the table ${code ? `has the number ${code}` : `holds "${text}"`}`,
        nearest: code ? nearestCodes(code) : [],
      };
    return {
      values: found.map((sign) => plain(sign.code, sign.meaning)),
      formula: "row of the table; the letter gives the look",
      steps: found.map(({ code, at }) => {
        const { title, look } = signCategory(code);
        return step(`${code}: ${title}, ${look}; where: ${at}`);
      }),
    };
  },
});
