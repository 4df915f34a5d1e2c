// The door to the syntax of one file.

export { parse } from "./parser.ts";
export { print } from "./print.ts";
export { format, formatEdits } from "./format.ts";
export {
  eachItem,
  type Argument,
  type Block,
  type Comment,
  type Item,
  type Scan,
  type SyntaxEdit,
  type SyntaxError,
  type SyntaxFix,
  type Token,
  type Tree,
} from "./tree.ts";
export { linesOf, offsetAt, positionAt, type Lines, type Position } from "./lines.ts";
export { editDistance, nearNames } from "./near-names.ts";
export { tokenAt } from "./token-at.ts";
export { startOf, step, type Leaf } from "./shapes.ts";
