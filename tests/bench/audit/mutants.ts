// One text with every rule of a module taken out in turn: what is taken out is chosen by a number when it runs (`switch.ts`).
// A rule is a condition (held to be always so, never so), one half of an `and` or `or`, the test of a list, a line that changes or
// reports something, an early return.

import { parseSync } from "vite";

/** One rule taken out, and where it stood. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  /** The function at top level that it stands in. */
  readonly inside: string | undefined;
  readonly what: string;
  /** The source of what was changed. */
  readonly source: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string";
const children = (node: Node): Node[] => Object.values(node).flat().filter(isNode);
const bare = (node: Node): Node => (node.type === "ParenthesizedExpression" ? bare(node["expression"] as Node) : node);
/** A list asked for some, each or none of its members, and what takes the test out. */
const asks: Readonly<Record<string, boolean>> = { filter: true, every: true, some: false };

/** The text with its switches; each mutant is added to the list, and its place there is its number. */
export function withSwitches(file: string, text: string, mutants: Mutant[]): string {
  const { program, errors } = parseSync(file, text, { lang: "ts" });
  if (errors.length > 0) throw new Error(`${file}: ${errors[0]!.message}`);
  const opens: { at: number; end: number; text: string }[] = [],
    closes: { at: number; start: number; text: string }[] = [];
  let inside: string | undefined;
  const add = (node: Node, what: string): number =>
    mutants.push({
      file,
      line: text.slice(0, node.start).split("\n").length,
      inside,
      what,
      source: text.slice(node.start, node.end),
    }) - 1;
  const wrap = (node: Node, before: string, after: string): void => {
    opens.push({ at: node.start, end: node.end, text: before });
    closes.push({ at: node.end, start: node.start, text: after });
  };
  const held = (node: Node, values: readonly boolean[]): void => {
    const numbers = [true, false].map((value) => (values.includes(value) ? add(node, `always ${value}`) : -1));
    wrap(node, `$held(${numbers.join()},`, ")");
  };
  const visit = (node: Node): void => {
    if (node.type === "IfStatement" || node.type === "ConditionalExpression") held(node["test"] as Node, [true, false]);
    if (node.type === "LogicalExpression" && node["operator"] !== "??")
      for (const side of [node["left"], node["right"]] as Node[]) {
        // A chain of one operator is a list: each member is left out once.
        const of = bare(side);
        if (of.type !== "LogicalExpression" || of["operator"] !== node["operator"])
          held(side, [node["operator"] === "&&"]);
      }
    if (node.type === "CallExpression") {
      const callee = node["callee"] as Node,
        value = asks[String((callee["property"] as Node | undefined)?.["name"])],
        of = (node["arguments"] as Node[])[0];
      if (callee.type === "MemberExpression" && value !== undefined && of?.type === "ArrowFunctionExpression")
        if (bare(of["body"] as Node).type !== "BlockStatement") held(of["body"] as Node, [value]);
    }
    if (node.type === "ExpressionStatement")
      wrap(node["expression"] as Node, `$kept(${add(node, "line taken out")}) && (`, ")");
    if (node.type === "BlockStatement") {
      const body = node["body"] as Node[];
      for (const line of body)
        if (/^(?:Return|Continue|Break)Statement$/.test(line.type) && (body.length > 1 || line !== body.at(-1)))
          wrap(line, `if ($kept(${add(line, "return taken out")})) `, "");
    }
    children(node).forEach(visit);
  };
  for (const line of (program as unknown as { readonly body: readonly Node[] }).body) {
    const of = (line["declaration"] as Node | null | undefined) ?? line,
      [first] = (of["declarations"] as Node[] | undefined) ?? [of];
    inside = (first?.["id"] as { readonly name?: string } | null | undefined)?.name;
    visit(line);
  }
  // The outer one opens first and closes last.
  const edits = [
    ...closes.map((edit, n) => ({ ...edit, order: [0, -edit.start, -n] })),
    ...opens.map((edit, n) => ({ ...edit, order: [1, -edit.end, n] })),
  ].sort((a, b) => a.at - b.at || a.order[0]! - b.order[0]! || a.order[1]! - b.order[1]! || a.order[2]! - b.order[2]!);
  let result = "",
    from = 0;
  for (const { at, text: put } of edits) {
    result += text.slice(from, at) + put;
    from = at;
  }
  return result + text.slice(from);
}
