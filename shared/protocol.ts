// What server and client say to each other beyond the language server protocol. Plain types; imports nothing.

/** Request `stripdown/bench`: the bench at a place in a procedure. */
export const benchRequest = "stripdown/bench";

export interface BenchParams {
  readonly uri: string;
  /** From 0, in UTF-16 code units. */
  readonly line: number;
  readonly character: number;
}

export interface BenchItem {
  readonly name: string;
  /** "4 of 8 in", "aside", "in tray A". */
  readonly detail: string;
  /** Where it is declared. */
  readonly uri: string;
  readonly line: number;
  readonly character: number;
}

export interface BenchSection {
  readonly title: string;
  readonly items: readonly BenchItem[];
}

/** Undefined where the cursor stands in no procedure. */
export interface BenchAnswer {
  readonly procedure: string;
  /** The act after which this is the bench. */
  readonly after: string;
  readonly position: string;
  readonly sections: readonly BenchSection[];
  readonly notConsidered: readonly string[];
}
