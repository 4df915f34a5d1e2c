// The shape of a check. One file a check holds its code, title, reason, failing and mended example, and the check itself;
// `explain`, the reference page, the settings schema, the SARIF rules and the tests are made from these files.

import type { Problem, Performance, Reason } from "../bench/trace.ts";
import type { Because, Fix, Severity, Span } from "../findings/finding.ts";
import type { CheckFacts } from "../findings/surveyed.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import type { Project, SourceFile } from "../names/project.ts";
import type { Settings } from "../world/settings.ts";
import type { World } from "../world/world.ts";

/** A finding without what the runner adds: code, severity, builds. */
export interface Draft {
  readonly at: Span;
  readonly says: string;
  readonly because?: readonly Because[];
  readonly fixes?: readonly Fix[];
  /** Where one code speaks at two weights; never above the check's own unless the settings raise it. */
  readonly severity?: Severity;
  readonly tag?: "unused";
  /** One statement would answer it and all others of this code with the same text here: they are said at the first of them. */
  readonly answer?: Answer | undefined;
  /** Another finding that says this mistake already: this is one of its reasons then. */
  readonly within?: Span | undefined;
}

/** Takes a finding as it is made. Not a generator: of the seventy checks that each file goes through nearly all find nothing. */
export type Say = (draft: Draft) => void;

export interface Answer {
  /** Equal for all that it answers. */
  readonly key: string;
  /** It answers findings of other codes as well: the gravest speaks. */
  readonly across?: boolean;
  /** The statement and the place that it belongs to, where it is not what each of them says already. */
  readonly because?: Because;
  /** What is said at the others where they say the same; "used here too" if not given. */
  readonly again?: string;
}

/** What a check may ask beside its own argument. */
export interface CheckContext {
  readonly project: Project;
  readonly settings: Settings;
  /** For what is asked of the disk: is the picture there? */
  readonly world: World;
}

/** What is asked beside a problem of the bench before it is worded. */
export interface Met extends CheckContext {
  /** The one that it was found in. */
  readonly performance: Performance;
}

/** What it needs to word a thing: names, counts, reasons of other rules. */
export interface BenchContext extends CheckContext {
  readonly model: Model;
  /** Name of a thing as the author would say it. */
  name(thing: ThingIndex): string;
  /** The reason in words, by the check of its own rule. */
  because(reason: Reason): Because;
}

export interface Check extends CheckFacts {
  /** Names the fault and reads well in `# allow CODE: reason`; family first. */
  readonly code: string;
  /** A text with exactly this one finding; `#  ^^^ text` marks the line above with what it says. */
  readonly fails: string;
  /** The same, mended: no finding. */
  readonly mended: string;
  /** Where the rule comes from, when it is published: a standard, a handbook; else "common practice". */
  readonly source?: string;
  /** One of the following is given. They return nothing at all: a generator in their place would never run, and is refused by its type. */
  readonly file?: (file: SourceFile, say: Say, context: CheckContext) => undefined;
  readonly model?: (model: Model, say: Say, context: BenchContext) => undefined;
  /** What it says of a model hangs on files that the model was not made of: it is asked again whenever any file changed. */
  readonly asksAllFiles?: boolean;
  /** Words a problem that the bench found under this code. */
  readonly problem?: (problem: Problem, context: BenchContext) => Draft;
  /** Words one reason of this rule, as a link of the chain; needed where other problems may give it as a further reason. */
  readonly reason?: (reason: Reason, context: BenchContext) => string;
  readonly performance?: (performance: Performance, say: Say, context: BenchContext) => undefined;
}

/** Identity, for the types: `export default check({ … })`. */
export function check(of: Check): Check {
  return of;
}
