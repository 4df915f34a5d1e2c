// The door to the syntax of one file.

export { parse } from "./parser.ts";
export { print } from "./print.ts";
export { format } from "./format.ts";
export { eachItem, type Argument, type Block, type Comment, type Item, type Scan, type SyntaxEdit, type SyntaxError, type SyntaxFix, type Token, type Tree } from "./tree.ts";
export { linesOf, offsetAt, positionAt, type Lines, type Position } from "./lines.ts";
