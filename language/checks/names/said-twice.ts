// One word said twice of one thing: only the first is read, and nobody sees which.

import { saidOnce } from "../../vocabulary/said-once.ts";
import { writtenCondition } from "../../model/conditions.ts";
import { headSpan, wordOf, type Line } from "../../model/cursor.ts";
import type { Project } from "../../names/project.ts";
import { textOf } from "../../names/strings.ts";
import type { Item } from "../../syntax/index.ts";
import { check, type Say } from "../check.ts";
import { canHold, linesUnder, variantsOf, type UnderConditions } from "../condition-chains.ts";
import { itemsOf } from "../items-of.ts";
import { declaredName } from "../space-of-names.ts";

export default check({
  code: "names/said-twice",
  title: "The same is said twice of one thing",
  severity: "error",
  why: "Only the first of the two is read: a voltage, a torque or a count that was meant to be changed stays as it was. What holds for one build alone stands under a condition, and the other under the opposite one.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      option heater
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" {
        count 4
        if heater { count 6 }
    #               ^^^^^^^ Lid screws: count is said twice, and only the first is read (if heater)
        joins lid to foot
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      option heater
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" {
        unless heater { count 4 }
        if heater { count 6 }
        joins lid to foot
      }
    }
  `,
  file(source, say, { project }) {
    // What a damaged text says twice may be two versions of it: that is said there.
    if (source.tree.errors.length > 0) return;
    const items = itemsOf(source);
    for (let i = 0; i < items.length; i++) {
      const item = items[i]!,
        once = item.entry && !item.broken && item.block ? saidOnce.get(item.entry.word) : undefined;
      if (once && mayBeTwice(item.block!.items, once)) twiceIn({ item, source }, once, project, say);
    }
  },
});

/** Has a line the word of another one, or stands one under a condition? Of most things neither is so, and then no table is made. */
function mayBeTwice(items: readonly Item[], once: ReadonlySet<string>): boolean {
  for (let i = 0; i < items.length; i++) {
    const word = items[i]!.entry?.word;
    if (word === undefined) continue;
    if (word === "if" || word === "unless") return true;
    if (!once.has(word)) continue;
    for (let j = 0; j < i; j++) if (items[j]!.entry?.word === word) return true;
  }
  return false;
}

function twiceIn(line: Line, once: ReadonlySet<string>, project: Project, say: Say): void {
  const seen = new Map<string, UnderConditions[]>();
  for (const second of linesUnder(line)) {
    const word = wordOf(second.line);
    if (!once.has(word)) continue;
    const before = seen.get(word);
    if (!before) {
      seen.set(word, [second]);
      continue;
    }
    const first = before.find(
      (one) =>
        !isForSome(one) &&
        !isForSome(second) &&
        textOfLine(one.line) !== textOfLine(second.line) &&
        canHold([...one.chain, ...second.chain], variantsOf(project)),
    );
    before.push(second);
    if (!first) continue;
    const when = [...new Set([...first.chain, ...second.chain].map(writtenCondition))].join(", ");
    say({
      at: headSpan(second.line),
      says: `${nameOf(line)}: ${word} is said twice, and only the first is read${when === "" ? "" : ` (${when})`}`,
      because: [{ says: `the first: ${textOfLine(first.line)}`, at: headSpan(first.line) }],
    });
  }
}

function textOfLine(line: Line): string {
  const { start, end } = headSpan(line);
  return line.source.text.slice(start, end).replaceAll(/\s+/g, " ");
}

function nameOf({ item, source }: Line): string {
  const printed = item.arguments.find(({ slot }) => slot === "string");
  return printed
    ? textOf(source.tree.scan.tokens[printed.first]!)
    : (declaredName(source, item)?.text ?? source.tree.scan.tokens[item.arguments[0]!.first]!.text);
}

/** `torque 9 N·m for 2`: each line is about other pieces. */
const isForSome = ({ line: { item, source } }: UnderConditions): boolean =>
  source.tree.scan.tokens.slice(item.first, item.last + 1).some(({ text }) => text === "for");
