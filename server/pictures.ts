// Pictures for a page that loads them by itself: the server reads the head of a file and no more, and says where it lies. A file outside
// of the folder, by whatever link, is not named to the page.

import { pictureEndings, pictureKindOf, pictureSize, type OutputOptions } from "../language/index.ts";
import type { ManualParams } from "../shared/protocol.ts";
import type { Files } from "./files.ts";
import { isBelow, resolvePath, uriOf } from "./uris.ts";

/** A camera puts a small picture and more before the size of the large one. In bytes. */
const head = 256 * 1024;
/** Larger files are no photo of a workshop. */
const largest = 40 * 1024 * 1024;

type Found = NonNullable<ReturnType<NonNullable<OutputOptions["picture"]>>>;

export interface LoadedPictures {
  readonly picture: NonNullable<OutputOptions["picture"]>;
  /** Addresses of the files, by the number that stands for each in the page. */
  readonly uris: readonly string[];
}

/** What a page may load of a folder; `allowed` as the client says it. */
export function picturesFor(files: Files, folder: string, allowed: ManualParams["pictures"]): LoadedPictures {
  const uris: string[] = [],
    known = new Map<string, Found>();
  const look = (path: string): Found => {
    const kind = pictureKindOf(path);
    if (/^[a-z][a-z0-9+.-]+:/i.test(path) && !isBelow(path, folder)) return { problem: "it lies outside the project" };
    if (!isBelow(files.real(path), files.real(folder))) return { problem: "it lies outside the project" };
    if (!kind) return { problem: `it is none of ${pictureEndings.join(", ")}` };
    if (!files.isFile(path)) return { problem: "there is no such file" };
    if (allowed === "untrusted")
      return { problem: "nobody has said yet that this folder is trusted; the command to manage workspace trust does" };
    const read = allowed === "shown" ? files.head?.(path, head) : undefined;
    if (!read)
      return { problem: "the live manual shows only what lies on a disk; the manual of the command line has it" };
    if (read.size > largest) return { problem: `it is too large (at most ${largest / 1048576} MB are shown)` };
    if (!kind.begins(read.bytes))
      return { problem: `it is no ${path.slice(path.lastIndexOf(".") + 1).toLowerCase()} picture inside` };
    uris.push(uriOf(path));
    return { type: kind.type, base64: "", address: `picture:${uris.length - 1}`, ...pictureSize(read.bytes) };
  };
  return {
    uris,
    picture(written, fromFile) {
      const path = /^[a-z][a-z0-9+.-]+:/i.test(written) ? written : resolvePath(fromFile, written);
      let found = known.get(path);
      if (!found) known.set(path, (found = look(path)));
      return found;
    },
  };
}
