// Threads by their designation, each looked up in the standards once: a shop uses few, and several checks ask for that of each fastener.

import { threadOf } from "../figures/threads.ts";
import { bySpelling } from "../model/kept.ts";
import type { ThreadSize } from "../quantities/index.ts";

const threads = bySpelling((_, size: ThreadSize) => threadOf(size));

/** What `threadOf` says of it: lengths in m, areas in m²; an error for a size that no table has. */
export const knownThread = (size: ThreadSize): ReturnType<typeof threadOf> => threads(size.designation, size);
