// The catalogue of every sentence that the program itself prints. One catalogue a language; the type is that of the British English
// one, so that a language that lacks a sentence does not compile. Texts of authors never stand here.

import type { enGb } from "./en-gb/en-gb.ts";

export type Wording = typeof enGb;
