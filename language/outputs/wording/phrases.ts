// Building blocks that every catalogue may use: capitals, full stops, lists, figures. Nothing here is of one language.

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** A sentence of ours: capital and full stop. */
export const sentence = (text: string): string =>
  text !== "" && ".!?:".includes(text[text.length - 1]!) ? capital(text) : `${capital(text)}.`;

/** `text` behind `before`, or nothing where there is none. */
export const ifAny = (before: string, text: string | undefined): string => (text ? `${before}${text}` : "");

/** Those that are there, with `between` between them. */
export const joined = (parts: readonly (string | undefined)[], between: string): string =>
  parts.filter((part) => part !== undefined && part !== "").join(between);

/** "A, B and C". */
export const listWith =
  (and: string) =>
  (items: readonly string[]): string =>
    items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} ${and} ${items[items.length - 1]!}`;

/**
 * A figure as our own texts write it (`0.5 turn`, `24.95..25.05 mm`) with the decimal sign and the unit words of a language. Unit signs
 * are the same everywhere and stay; done twice it changes nothing.
 */
export function figureIn(point: string, units: Readonly<Record<string, string>>): (text: string) => string {
  const words = Object.keys(units).sort((a, b) => b.length - a.length),
    word = new RegExp(`(\\d\\s?)(${words.join("|")})(?![\\p{L}\\d])`, "gu");
  return (text) =>
    text
      .replace(/(\d)\.(?=\d)/g, `$1${point}`)
      // The sign of an angle stands right behind its figure (ISO 80000-3, from memory).
      .replace(word, (_, before: string, unit: string, at: number, whole: string) => {
        // "1 turns" as somebody writes it is one turn.
        const isOne = before.startsWith("1") && !/[\d.,/]/.test(whole.charAt(at - 1)),
          said = (isOne ? units[unit.replace(/s$/, "")] : undefined) ?? units[unit]!;
        return said === "°" ? `${before.trimEnd()}°` : before + said;
      });
}
