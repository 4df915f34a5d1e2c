// Precautions that a reason speaks of, in a sentence of a finding.

import type { Reason } from "../bench/trace.ts";
import type { Model } from "../model/model.ts";
import { listed } from "./bench-check.ts";

const longest = 60;

/**
 * "isolate, lock-out and "Keep your hands out of the joint"": by their kinds, which stand last among the words of the reason, and those of
 * the open kind, whose word says nothing by itself, by what is written there.
 */
export function precautionsSaid({ words, numbers }: Pick<Reason, "words" | "numbers">, model: Model): string {
  const kinds = numbers.length > 0 ? words.slice(-numbers.length) : words;
  return listed(kinds.map((kind, i) => (kind === "other" ? quoted(model.precautions[numbers[i] ?? -1]?.text) : kind)));
}

function quoted(text: string | undefined): string {
  if (text === undefined || text.trim() === "") return "the precaution written other";
  const whole = text.replace(/\s+/g, " ").trim().replace(/\.$/, "");
  return `"${whole.length > longest ? `${whole.slice(0, longest).replace(/\s+\S*$/, "")}…` : whole}"`;
}
