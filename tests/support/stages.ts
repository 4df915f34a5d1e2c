// Small machines that a loose text is set inside, so that an example shows only what it is about.

const topWords = new Set(["use", "unit", "procedure", "tool", "consumable", "role", "torque-table", "temporary", "warn"]);

/** Lines put before and after a text that holds no unit and no procedure: its declarations then belong to a small unit. */
export function staged(text: string): { readonly before: string; readonly after: string } {
  const words = text.split("\n").filter((line) => /^[a-z]/.test(line)).map((line) => /^[a-z-]+/.exec(line)![0]);
  if (words.length === 0 || words.some((word) => topWords.has(word))) return { before: "", after: "" };
  return { before: 'unit stage "Stage" {\n  base frame\n  part frame "Frame"\n', after: "}\n" };
}
