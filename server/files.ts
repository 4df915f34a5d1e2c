// Files outside the editor, as the server sees them: whoever starts it brings a disk, or texts that the client sent. Nothing is written.

import type { World } from "../language/index.ts";

export interface Files {
  read(path: string): ReturnType<World["read"]>;
  isFile(path: string): boolean;
  /** Links resolved, as far as the path exists. */
  real(path: string): string;
  /** How a file begins, and how many bytes it has; undefined where there is none. A file system that is no disk does not have it. */
  head?(path: string, most: number): { readonly bytes: Uint8Array; readonly size: number } | undefined;
  /** Every file below a folder that ends so, sorted. */
  list(folder: string, ending: string): readonly string[];
}

/** Files that lie in memory: those of a client whose folders are no disk of this machine. */
export interface MemoryFiles extends Files {
  put(path: string, text: string | undefined): void;
  remove(path: string): void;
}

/** `text` undefined: there is such a file, and it is no text (a picture). */
export function memoryFiles(): MemoryFiles {
  const texts = new Map<string, string | undefined>();
  return {
    read(path) {
      const text = texts.get(path);
      return text !== undefined
        ? { text }
        : texts.has(path)
          ? { problem: "unreadable", says: "it is no text file" }
          : { problem: "missing" };
    },
    isFile: (path) => texts.has(path),
    real: (path) => path,
    list: (folder, ending) =>
      [...texts.keys()]
        .filter((path) => path.endsWith(ending) && path.startsWith(folder.endsWith("/") ? folder : `${folder}/`))
        .sort(),
    put: (path, text) => {
      texts.set(path, text);
    },
    remove: (path) => {
      texts.delete(path);
    },
  };
}

/** A file of this machine's disk is asked of the disk, any other of memory. */
export function bothFiles(disk: Files, memory: Files): Files {
  const of = (path: string): Files => (/^[a-z][a-z0-9+.-]*:\/\//i.test(path) ? memory : disk);
  return {
    read: (path) => of(path).read(path),
    isFile: (path) => of(path).isFile(path),
    real: (path) => of(path).real(path),
    head: (path, most) => of(path).head?.(path, most),
    list: (folder, ending) => of(folder).list(folder, ending),
  };
}
