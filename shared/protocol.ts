// What server and client say to each other beyond the language server protocol. Plain types; imports nothing.

/** A place in a document. Lines and characters from 0, in the encoding that the two agreed on. */
export interface Point {
  readonly line: number;
  readonly character: number;
}
export interface Spot {
  readonly uri: string;
  readonly start: Point;
  readonly end: Point;
}

/** Request: the bench at a place in a procedure; answered with `null` where the place is in none. */
export const benchRequest = "stripdown/bench";
export interface AtPlace {
  readonly uri: string;
  readonly position: Point;
}
export interface BenchItem {
  readonly name: string;
  /** "4 of 8 in", "aside", "in tray A". */
  readonly detail: string;
  readonly spot: Spot;
}
export interface BenchSection {
  readonly id: string;
  readonly title: string;
  readonly items: readonly BenchItem[];
}
export interface BenchAnswer {
  readonly procedure: string;
  readonly unit: string;
  readonly build: string;
  readonly step: string;
  /** Line of the last act done, from 1; undefined at the start. */
  readonly line: number | undefined;
  readonly position: string;
  readonly sections: readonly BenchSection[];
  /** Kinds of hazard that nobody declared or dismissed. */
  readonly notConsidered: readonly string[];
  /** Something was refused and is taken as done: what is shown rests on that. */
  readonly assumes: boolean;
}

/** Request: what undoes the step around a place; `null` outside any. */
export const refitOfStepRequest = "stripdown/refitOfStep";
export interface RefitOfStepAnswer {
  readonly step: string;
  readonly groups: readonly string[];
  readonly lines: readonly { readonly id: string; readonly says: string; readonly spot: Spot }[];
}

/** Request: what must come off before what, of the procedure around a place, else of the first one of the file. */
export const stripDiagramRequest = "stripdown/stripDiagram";
export interface DiagramNode {
  readonly number: number;
  readonly name: string;
  readonly is: "off" | "out" | "drained" | "stands" | "other";
  readonly step: string;
  readonly row: number;
  readonly after: readonly number[];
  readonly spot: Spot;
}
export interface StripDiagramAnswer {
  readonly title: string;
  readonly rows: number;
  readonly nodes: readonly DiagramNode[];
}

/** Request: the manual of a file as markup, with the place of the source that each printed line comes from. */
export const manualRequest = "stripdown/manual";
export interface ManualParams {
  readonly uri: string;
}
export interface ManualAnswer {
  readonly title: string;
  readonly body: string;
  readonly style: string;
  readonly marks: readonly { readonly id: string; readonly spot: Spot }[];
}

/** Notification to the client: what was found changed, views may ask again. */
export const changedNotification = "stripdown/changed";

/** Notification to a server that cannot read the folders itself: files came, changed, or went. `text` undefined: a file that is no text. */
export const filesNotification = "stripdown/files";
export interface FilesParams {
  readonly files: readonly { readonly uri: string; readonly text?: string; readonly gone?: boolean }[];
}

/** Schemes of the documents that the server computes: the refit of a file, and the page of a check. */
export const refitScheme = "stripdown-refit";
export const checkScheme = "stripdown-check";

/** Commands of the client that the server may name. */
export const commandNames = {
  goTo: "stripdown.goTo",
  showRefit: "stripdown.showRefit",
  showFindings: "stripdown.showFindings",
  showUses: "stripdown.showUses",
} as const;

/** What a client may say at the start. */
export interface StartOptions {
  /** It has the commands above. */
  readonly commands?: boolean;
}
