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
  /** May the page load pictures of the folder, and if not, why: nobody has said that it is trusted, or it is no disk. Left out: no disk. */
  readonly pictures?: "shown" | "untrusted" | "no disk";
}
export interface ManualAnswer {
  readonly title: string;
  readonly body: string;
  readonly style: string;
  readonly marks: readonly { readonly id: string; readonly spot: Spot }[];
  /** Where the pictures lie that the body loads as `picture:0`, `picture:1` … */
  readonly pictures: readonly string[];
}

/** Request: the names of the files that `documentsRequest` would make, and that of the list of what was made, all in one folder. */
export const documentNamesRequest = "stripdown/documentNames";
export interface DocumentNamesParams {
  readonly uri: string;
  readonly kinds: readonly string[];
}
export interface DocumentNamesAnswer {
  readonly names: readonly string[];
  readonly list: string;
}

/**
 * Request: manual, sheets and labels of a file as they are to be written. Who asks tells what stands in the folder, since the server
 * reads none but that of the sources, and writes what the answer names. `null`: the file has no procedure to print.
 */
export const documentsRequest = "stripdown/documents";
export interface DocumentsParams extends DocumentNamesParams {
  /** Instead of what the settings say, for this once: the tag of a language, and whom the manual is for. */
  readonly language?: string;
  readonly reader?: string;
  /** Files that are there under those names, in base64; and the list of what was made, undefined where there is none. */
  readonly there: Readonly<Record<string, string>>;
  readonly list: string | undefined;
}
export interface DocumentsAnswer {
  readonly files: readonly { readonly name: string; readonly text: string }[];
  /** Somebody's own files, or such as were changed since they were made: left as they are. Each with the reason. */
  readonly left: readonly { readonly name: string; readonly why: string }[];
  /** The list with what is to be written. */
  readonly list: string;
  /** Findings that are open: what is written is a draft then. */
  readonly open: number;
  /** Pictures that the papers name and do not show. */
  readonly pictures: number;
  /** What the author has to know of them beside that, in whole sentences: texts that are not translated. */
  readonly says: readonly string[];
}

/** Request: the check of a folder as the command line prints it, and what that would end with. Texts are those of the editor where it has them. */
export const checkFolderRequest = "stripdown/checkFolder";
export interface CheckFolderParams {
  readonly uri: string;
  /** Questions and hints count as findings do. */
  readonly strict: boolean;
}
export interface CheckFolderAnswer {
  readonly text: string;
  /** 0: nothing found; 1: findings; 2: a file could not be read. */
  readonly code: number;
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
