// The files that can be reached from the given ones, with what each declares. Data only; see load.ts for how it is made.

import type { Span } from "../findings/finding.ts";
import type { Item, Tree } from "../syntax/tree.ts";

export interface SourceFile {
  readonly path: string;
  readonly text: string;
  readonly tree: Tree;
  /** `use` lines: the path as resolved, and what came of it. */
  readonly uses: readonly {
    readonly path: string;
    readonly at: Span;
    readonly problem: "missing" | "unreadable" | "outside" | "cycle" | undefined;
    readonly says: string;
    readonly ring: readonly string[];
  }[];
  /** Top-level declarations in order. */
  readonly declarations: readonly Declaration[];
  /** It holds a variant, an option, a condition, an optional block or a choice: only then has a unit more than one build. */
  readonly branches: boolean;
}

/** A declaration at the top of a file. */
export interface Declaration {
  readonly word:
    | "unit"
    | "procedure"
    | "tool"
    | "consumable"
    | "role"
    | "torque-table"
    | "fastener"
    | "hazard"
    | "temporary"
    | "warn";
  readonly id: string;
  readonly name: string;
  readonly file: string;
  /** The name token. */
  readonly at: Span;
  readonly item: Item;
}

export interface Project {
  /** Every file that was reached, by path, in a fixed order. */
  readonly files: ReadonlyMap<string, SourceFile>;
  /** The files that were asked for. */
  readonly roots: readonly string[];
  /** Problems of a root that could not be read at all. */
  readonly unreadable: readonly { readonly path: string; readonly says: string }[];
  /** The declarations that this file sees: its own and those of every file that it uses, directly or not. */
  seen(file: string): ReadonlyMap<string, readonly Declaration[]>;
}
