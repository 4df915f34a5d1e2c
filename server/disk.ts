// The disk of this machine, read only. Files larger than a procedure can be, and such as are no UTF-8 text, are refused in words.

import { closeSync, fstatSync, openSync, readdirSync, readFileSync, readSync, realpathSync, statSync } from "node:fs";
import type { Files } from "./files.ts";

const largest = 20 * 1024 * 1024;
const skipped: ReadonlySet<string> = new Set(["node_modules"]);
const decoder = new TextDecoder("utf-8", { fatal: true });

/** On Windows a path with a drive is `/c:/…` here and `c:/…` there. */
const native = (path: string): string => (/^\/[a-z]:/i.test(path) ? path.slice(1) : path);
const ours = (path: string): string => {
  const slashed = path.replaceAll("\\", "/");
  return /^[a-z]:/i.test(slashed) ? `/${slashed[0]!.toLowerCase()}${slashed.slice(1)}` : slashed;
};

export const disk: Files = {
  read(path) {
    try {
      const stat = statSync(native(path));
      if (!stat.isFile()) return { problem: "unreadable", says: "it is no plain file" };
      if (stat.size > largest) return { problem: "unreadable", says: "it is too large to be a procedure" };
      const bytes = readFileSync(native(path));
      if (bytes.includes(0)) return { problem: "unreadable", says: "it is no text file (it holds a byte of value 0)" };
      return { text: decoder.decode(bytes) };
    } catch (error) {
      if (error instanceof TypeError) return { problem: "unreadable", says: "it is no UTF-8 text: save it as UTF-8" };
      const { code } = error as NodeJS.ErrnoException;
      return code === "ENOENT" || code === "ENOTDIR"
        ? { problem: "missing" }
        : { problem: "unreadable", says: "it cannot be opened" };
    }
  },
  isFile: (path) => {
    try {
      return statSync(native(path)).isFile();
    } catch {
      return false;
    }
  },
  real,
  head(path, most) {
    let file: number | undefined;
    try {
      file = openSync(native(path), "r");
      const stat = fstatSync(file);
      if (!stat.isFile()) return undefined;
      const bytes = new Uint8Array(Math.min(most, stat.size));
      return { bytes: bytes.subarray(0, readSync(file, bytes)), size: stat.size };
    } catch {
      return undefined;
    } finally {
      if (file !== undefined) closeSync(file);
    }
  },
  list(folder, ending) {
    const found: string[] = [],
      queue = [folder],
      seen = new Set<string>();
    for (const here of queue) {
      const at = real(here);
      if (seen.has(at)) continue; // a link in a circle
      seen.add(at);
      let entries;
      try {
        entries = readdirSync(native(here), { withFileTypes: true });
      } catch {
        continue;
      }
      for (const entry of entries) {
        const path = `${here.endsWith("/") ? here : `${here}/`}${entry.name}`;
        if (entry.isDirectory() && !skipped.has(entry.name) && !entry.name.startsWith(".")) queue.push(path);
        else if (entry.name.endsWith(ending) && (entry.isFile() || entry.isSymbolicLink())) found.push(path);
      }
    }
    return found.sort();
  },
};

function real(path: string): string {
  try {
    return ours(realpathSync.native(native(path)));
  } catch {
    /* a part of it does not exist: its folder may */
  }
  const at = path.lastIndexOf("/");
  return at <= 0 ? path : `${real(path.slice(0, at))}${path.slice(at)}`;
}
