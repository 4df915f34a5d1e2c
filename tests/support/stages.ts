// Small machines that a loose text is set inside, so that an example shows only what it is about.

const topWords = new Set([
  "use",
  "unit",
  "procedure",
  "tool",
  "consumable",
  "role",
  "torque-table",
  "temporary",
  "warn",
]);

export interface Staged {
  readonly text: string;
  /** How many lines stand before the text, and how far it is indented. */
  readonly lines: number;
  readonly columns: number;
}

/** A text that holds no unit and no procedure, as declarations of a small unit; any other as it is. */
export function staged(text: string): Staged {
  const words = text
    .split("\n")
    .filter((line) => /^[a-z]/.test(line))
    .map((line) => /^[a-z-]+/.exec(line)![0]);
  if (words.length === 0 || words.some((word) => topWords.has(word))) return { text, lines: 0, columns: 0 };
  const inside = text
    .trimEnd()
    .split("\n")
    .map((line) => (line === "" ? "" : `  ${line}`))
    .join("\n");
  return { text: `unit stage "Stage" {\n  base frame\n  part frame "Frame"\n${inside}\n}\n`, lines: 3, columns: 2 };
}
