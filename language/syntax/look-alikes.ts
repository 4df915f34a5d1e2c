// Letters of other scripts that look like Latin ones: they come with pasted text, and no eye finds them.

const pairs = [
  ["а", "a"],
  ["е", "e"],
  ["о", "o"],
  ["р", "p"],
  ["с", "c"],
  ["х", "x"],
  ["у", "y"],
  ["і", "i"],
  ["ј", "j"],
  ["ѕ", "s"],
  ["А", "A"],
  ["В", "B"],
  ["Е", "E"],
  ["К", "K"],
  ["М", "M"],
  ["Н", "H"],
  ["О", "O"],
  ["Р", "P"],
  ["С", "C"],
  ["Т", "T"],
  ["Х", "X"],
  ["У", "Y"],
  ["І", "I"],
  ["Ј", "J"],
  ["Ѕ", "S"],
  ["Α", "A"],
  ["Β", "B"],
  ["Ε", "E"],
  ["Ζ", "Z"],
  ["Η", "H"],
  ["Ι", "I"],
  ["Κ", "K"],
  ["Μ", "M"],
  ["Ν", "N"],
  ["Ο", "O"],
  ["Ρ", "P"],
  ["Τ", "T"],
  ["Υ", "Y"],
  ["Χ", "X"],
  ["ο", "o"],
  ["ν", "v"],
] as const;
const latin: ReadonlyMap<string, string> = new Map(pairs);

/** The same word with Latin letters where it mixes them with others that look alike; undefined for a word of one script. */
export function withLatinLetters(word: string): { readonly word: string; readonly letter: string } | undefined {
  if (!/[A-Za-z]/.test(word)) return undefined;
  let letter: string | undefined,
    now = "";
  for (const sign of word) {
    const as = latin.get(sign);
    if (as !== undefined) letter ??= sign;
    now += as ?? sign;
  }
  return letter === undefined || /[\p{Script=Cyrillic}]/u.test(now) ? undefined : { word: now, letter };
}
