// Which threads there are: pitches of the metric and unified series and the sizes of pipe threads. Data and look-up; no formula.

/** Coarse pitches in mm by nominal diameter in mm. Source: ISO 261 and ISO 262 (M1.6 to M36 read second-hand; the rest from memory). */
export const coarsePitches: ReadonlyMap<number, number> = new Map([
  [1, 0.25],
  [1.2, 0.25],
  [1.4, 0.3],
  [1.6, 0.35],
  [1.8, 0.35],
  [2, 0.4],
  [2.5, 0.45],
  [3, 0.5],
  [3.5, 0.6],
  [4, 0.7],
  [5, 0.8],
  [6, 1],
  [7, 1],
  [8, 1.25],
  [10, 1.5],
  [12, 1.75],
  [14, 2],
  [16, 2],
  [18, 2.5],
  [20, 2.5],
  [22, 2.5],
  [24, 3],
  [27, 3],
  [30, 3.5],
  [33, 3.5],
  [36, 4],
  [39, 4],
  [42, 4.5],
  [45, 4.5],
  [48, 5],
  [52, 5],
  [56, 5.5],
  [60, 5.5],
  [64, 6],
]);

/** Fine pitches in mm by nominal diameter in mm, those of ISO 262 and the further ones of ISO 261 (second-hand and memory). */
export const finePitches: ReadonlyMap<number, readonly number[]> = new Map<number, readonly number[]>([
  [1, [0.2]],
  [1.2, [0.2]],
  [1.4, [0.2]],
  [1.6, [0.2]],
  [1.8, [0.2]],
  [2, [0.25]],
  [2.5, [0.35]],
  [3, [0.35]],
  [3.5, [0.35]],
  [4, [0.5]],
  [5, [0.5]],
  [6, [0.75]],
  [7, [0.75]],
  [8, [1, 0.75]],
  [9, [1, 0.75]],
  [10, [1.25, 1, 0.75]],
  [11, [1, 0.75]],
  [12, [1.5, 1.25, 1]],
  [14, [1.5, 1.25, 1]],
  [15, [1.5, 1]],
  [16, [1.5, 1]],
  [17, [1.5, 1]],
  [18, [2, 1.5, 1]],
  [20, [2, 1.5, 1]],
  [22, [2, 1.5, 1]],
  [24, [2, 1.5, 1]],
  [25, [2, 1.5, 1]],
  [26, [1.5]],
  [27, [2, 1.5, 1]],
  [28, [2, 1.5, 1]],
  [30, [3, 2, 1.5, 1]],
  [32, [2, 1.5]],
  [33, [3, 2, 1.5]],
  [35, [1.5]],
  [36, [3, 2, 1.5]],
  [38, [1.5]],
  [39, [3, 2, 1.5]],
  [40, [3, 2, 1.5]],
  [42, [4, 3, 2, 1.5]],
  [45, [4, 3, 2, 1.5]],
  [48, [4, 3, 2, 1.5]],
  [50, [3, 2, 1.5]],
  [52, [4, 3, 2, 1.5]],
  [56, [4, 3, 2, 1.5]],
  [60, [4, 3, 2, 1.5]],
  [64, [4, 3, 2, 1.5]],
]);

/** Pipe threads: major diameter in mm and threads per inch. */
export interface PipeThread {
  readonly diameter: number;
  readonly threadsPerInch: number;
}

/** G (ISO 228-1) and R, Rp, Rc (ISO 7-1) by nominal size. Source: ISO 228-1, from memory. */
export const gasThreads: ReadonlyMap<string, PipeThread> = new Map(
  rows(`1/16 7.723 28, 1/8 9.728 28, 1/4 13.157 19, 3/8 16.662 19, 1/2 20.955 14,
  5/8 22.911 14, 3/4 26.441 14, 7/8 30.201 14, 1 33.249 11, 1-1/8 37.897 11, 1-1/4 41.910 11, 1-1/2 47.803 11, 1-3/4 53.746 11, 2 59.614 11,
  2-1/4 65.710 11, 2-1/2 75.184 11, 2-3/4 81.534 11, 3 87.884 11, 3-1/2 100.330 11, 4 113.030 11`),
);

/** NPT and its kin by nominal size: outside diameter of the pipe. Source: ASME B1.20.1, from memory. */
export const nptThreads: ReadonlyMap<string, PipeThread> = new Map(
  rows(`1/16 7.938 27, 1/8 10.287 27, 1/4 13.716 18, 3/8 17.145 18, 1/2 21.336 14,
  3/4 26.670 14, 1 33.401 11.5, 1-1/4 42.164 11.5, 1-1/2 48.260 11.5, 2 60.325 11.5, 2-1/2 73.025 8, 3 88.900 8, 3-1/2 101.600 8, 4 114.300 8`),
);

function rows(text: string): [string, PipeThread][] {
  return text.split(",").map((row) => {
    const [size = "", diameter, tpi] = row.trim().split(/\s+/);
    return [size, { diameter: Number(diameter), threadsPerInch: Number(tpi) }];
  });
}
