// The world as the compiler sees it: texts by path. Command line, server and tests each give their own; the compiler itself
// touches no disk. Paths use `/` and are compared as they are.

export interface World {
  /** The text of a file; `missing` where there is none; a problem in trade words where it cannot be read as text (binary, not UTF-8, too large, no permission). */
  read(
    path: string,
  ):
    | { readonly text: string }
    | { readonly problem: "missing" }
    | { readonly problem: "unreadable"; readonly says: string };
  /** Is there such a file (a picture, a video)? */
  exists(path: string): boolean;
  /** Is the path, links resolved, inside the project: the folder of `stripdown.json`, else the one given? */
  inside(path: string): boolean;
  /** `relative`, written in a file, as a path; never leaves a trailing slash. */
  resolve(fromFile: string, relative: string): string;
}
