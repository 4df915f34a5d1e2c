// How much room the engine leaves for what is thrown away. Left to itself it lets a heap of 20 MB grow to 130 MB before it collects, since
// a check leaves much behind; what a check keeps is small. So the room goes by what is kept: little of it costs next to nothing to
// collect where little is kept, and would cost the time of an answer where much is.

import { constants, PerformanceObserver } from "node:perf_hooks";
import { getHeapStatistics, setFlagsFromString } from "node:v8";

/** `kept`: up to so many MB of it. `percent`: room on top of it. `young`: by how much the room for new objects may grow at a time. */
interface Room {
  readonly kept: number;
  readonly percent: number;
  readonly young: 1 | 2;
}

const rooms: readonly Room[] = [
  { kept: 25, percent: 40, young: 1 },
  { kept: 45, percent: 100, young: 2 },
  { kept: Infinity, percent: 150, young: 2 },
];

/** Takes the smallest room, and a larger one as the texts ask for it, for as long as the process runs. */
export function keepSmall(): void {
  let now: Room | undefined;
  const take = (megabytes: number): void => {
    const next = rooms.find(({ kept }) => megabytes <= kept)!;
    if (next === now) return;
    now = next;
    setFlagsFromString(`--heap-growing-percent=${next.percent}`);
    setFlagsFromString(`--semi-space-growth-factor=${next.young}`);
  };
  take(0);
  new PerformanceObserver((list) => {
    const full = list
      .getEntries()
      .some((one) => (one as { detail?: { kind?: number } }).detail?.kind === constants.NODE_PERFORMANCE_GC_MAJOR);
    if (full) take(getHeapStatistics().used_heap_size / 1e6);
  }).observe({ entryTypes: ["gc"] });
}
