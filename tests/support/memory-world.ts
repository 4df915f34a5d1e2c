// A world that lies in memory: what tests check without a disk.

import { posix } from "node:path";
import type { World } from "../../language/world/world.ts";

export interface MemoryWorld extends World {
  /** How often each file was read. */
  readonly reads: ReadonlyMap<string, number>;
}

/** Files by absolute path; the project is what lies below `folder`, save the paths in `outside`. */
export function memoryWorld(
  files: ReadonlyMap<string, string>,
  outside: readonly string[] = [],
  folder = "/",
): MemoryWorld {
  const reads = new Map<string, number>();
  return {
    reads,
    read(path) {
      reads.set(path, (reads.get(path) ?? 0) + 1);
      const text = files.get(path);
      return text === undefined ? { problem: "missing" } : { text };
    },
    exists: (path) => files.has(path),
    inside: (path) => path.startsWith(folder) && !outside.includes(path),
    resolve: (fromFile, written) => posix.resolve(posix.dirname(fromFile), written),
  };
}
