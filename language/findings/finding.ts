// A finding: what is wrong, where, why, and what to do. Plain data that every output and the editor render; nothing is decided here.

/** How much a finding weighs. Clean means: no error, no warning, no question. */
export type Severity = (typeof severities)[number];
/** The heaviest first. */
export const severities = ["error", "warning", "question", "hint"] as const;

/** A stretch of a file, in UTF-16 code units from its start; `end` is the first one after it. */
export interface Span {
  readonly file: string;
  readonly start: number;
  readonly end: number;
}

/** One link in the chain of facts that makes a finding true, or what a rule rests on (it begins with `sourceWord`). */
export interface Because {
  readonly says: string;
  readonly at?: Span;
}

export const sourceWord = "source: ";

/** Where a figure or a rule was published: `published` as a reader would look it up. */
export function fromSource(published: string): Because {
  return { says: `${sourceWord}${published}` };
}

export interface TextEdit {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** A remedy. `certain` ones may be applied without asking; none of them ever fills in a torque, a wait, a voltage or a text beside a hazard. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly TextEdit[];
  readonly certain: boolean;
  /** Where the author has to go on: an offset in the file of the first edit, counted after the edits. */
  readonly cursor?: number;
}

export interface Finding {
  /** Readable code, family first: `sequence/still-held`. */
  readonly code: string;
  readonly severity: Severity;
  /** One sentence without a full stop, the author's name first. */
  readonly says: string;
  readonly at: Span;
  readonly because: readonly Because[];
  readonly fixes: readonly Fix[];
  /** The builds that it holds in, by name; empty where the unit has one build only, or where it does not depend on the build. */
  readonly builds: readonly string[];
  /** `unused` is shown faded by an editor. */
  readonly tag?: "unused";
}
