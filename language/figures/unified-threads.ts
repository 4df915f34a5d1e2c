// Unified threads of ASME B1.1: which pitches go with which size, with tap drills and clearance holes. Data and look-up; no formula.

export interface Drill {
  /** Number, letter or fraction, as drill sets are marked. */
  readonly name: string;
  /** Diameter in inches. */
  readonly inches: number;
}

export interface UnifiedThread {
  /** Size and threads per inch: `1/4-20`. */
  readonly name: string;
  readonly series: string;
  /** Tap drill for soft materials (about 75 % thread) and for steel (about 50 %); `undefined` where the source prints none. */
  readonly tapDrillSoft: Drill | undefined;
  readonly tapDrillHard: Drill | undefined;
  /** Clearance holes as drill names: close, normal, loose, and the normal one in inches. */
  readonly clearance: {
    readonly close: string;
    readonly normal: string;
    readonly loose: string;
    readonly normalInches: number;
  };
}

/** Size, series, tap drill soft, tap drill hard, clearance close, normal, normal in inches, loose. Source: ASME B1.1, ASME B18.2.8 (read second-hand). */
const table = `
#1-64 | UNC | #53 0.0595 | 1/16 0.0625 | #46 | #43 | 0.0890 | #37
#2-56 | UNC | #50 0.0700 | #49 0.0730 | 3/32 | #38 | 0.1015 | #32
#3-48 | UNC | #47 0.0785 | #44 0.0860 | #36 | #32 | 0.1160 | #30
#4-40 | UNC | #43 0.0890 | #41 0.0960 | #31 | #30 | 0.1285 | #27
#5-40 | UNC | #38 0.1015 | 7/64 0.1094 | 9/64 | 5/32 | 0.1562 | 11/64
#6-32 | UNC | #36 0.1065 | #32 0.1160 | #23 | #18 | 0.1700 | #13
#8-32 | UNC | #29 0.1360 | #27 0.1440 | #15 | #9 | 0.1960 | #3
#10-24 | UNC | #25 0.1500 | #20 0.1610 | #5 | #2 | 0.2210 | B
#12-24 | UNC | #16 0.1770 | #12 0.1890 | 0.221 | 0.228 | 0.2280 | 0.246
1/4-20 | UNC | #7 0.2010 | 7/32 0.2188 | 17/64 | 9/32 | 0.2812 | 19/64
5/16-18 | UNC | F 0.2570 | J 0.2770 | 21/64 | 11/32 | 0.3438 | 23/64
3/8-16 | UNC | 5/16 0.3125 | Q 0.3320 | 25/64 | 13/32 | 0.4062 | 27/64
7/16-14 | UNC | U 0.3680 | 25/64 0.3906 | 29/64 | 15/32 | 0.4688 | 31/64
1/2-13 | UNC | 27/64 0.4219 | 29/64 0.4531 | 17/32 | 9/16 | 0.5625 | 39/64
9/16-12 | UNC | 31/64 0.4844 | 33/64 0.5156 | 0.5781 | 0.5937 | 0.5937 | 0.6094
5/8-11 | UNC | 17/32 0.5312 | 9/16 0.5625 | 21/32 | 11/16 | 0.6875 | 47/64
3/4-10 | UNC | 21/32 0.6562 | 11/16 0.6875 | 25/32 | 13/16 | 0.8125 | 29/32
7/8-9 | UNC | 49/64 0.7656 | 51/64 0.7969 | 29/32 | 15/16 | 0.9375 | 1-1/32
1-8 | UNC | 7/8 0.8750 | 59/64 0.9219 | 1-1/32 | 1-3/32 | 1.0938 | 1-5/32
1-1/8-7 | UNC | - | - | 1-5/32 | 1-7/32 | 1.2188 | 1-5/16
1-1/4-7 | UNC | - | - | 1-9/32 | 1-11/32 | 1.3438 | 1-7/16
1-3/8-6 | UNC | - | - | 1-7/16 | 1-1/2 | 1.5000 | 1-39/64
1-1/2-6 | UNC | - | - | 1-9/16 | 1-5/8 | 1.6250 | 1-47/64
#0-80 | UNF | 3/64 0.0469 | #55 0.0520 | #51 | #48 | 0.0760 | 3/32
#1-72 | UNF | #53 0.0595 | #52 0.0635 | #46 | #43 | 0.0890 | #37
#2-64 | UNF | #50 0.0700 | #48 0.0760 | 3/32 | #38 | 0.1015 | #32
#3-56 | UNF | #45 0.0820 | #43 0.0890 | #36 | #32 | 0.1160 | #30
#4-48 | UNF | #42 0.0935 | #40 0.0980 | #31 | #30 | 0.1285 | #27
#5-44 | UNF | #37 0.1040 | #35 0.1100 | 9/64 | 5/32 | 0.1562 | 11/64
#6-40 | UNF | #33 0.1130 | #31 0.1200 | #23 | #18 | 0.1700 | #13
#8-36 | UNF | #29 0.1360 | #26 0.1470 | #15 | #9 | 0.1960 | #3
#10-32 | UNF | #21 0.1590 | #18 0.1700 | #5 | #2 | 0.2210 | B
#12-28 | UNF | #14 0.1820 | #10 0.1930 | 0.221 | 0.228 | 0.2280 | 0.246
1/4-28 | UNF | #3 0.2130 | #1 0.2280 | 17/64 | 9/32 | 0.2812 | 19/64
5/16-24 | UNF | I 0.2720 | 9/32 0.2812 | 21/64 | 11/32 | 0.3438 | 23/64
3/8-24 | UNF | Q 0.3320 | S 0.3480 | 25/64 | 13/32 | 0.4062 | 27/64
7/16-20 | UNF | 25/64 0.3906 | 13/32 0.4062 | 29/64 | 15/32 | 0.4688 | 31/64
1/2-20 | UNF | 29/64 0.4531 | 15/32 0.4688 | 17/32 | 9/16 | 0.5625 | 39/64
9/16-18 | UNF | 33/64 0.5156 | 17/32 0.5312 | 0.5781 | 0.5937 | 0.5937 | 0.6094
5/8-18 | UNF | 37/64 0.5781 | 19/32 0.5938 | 21/32 | 11/16 | 0.6875 | 47/64
3/4-16 | UNF | 11/16 0.6875 | 45/64 0.7031 | 25/32 | 13/16 | 0.8125 | 29/32
7/8-14 | UNF | 13/16 0.8125 | 53/64 0.8281 | 29/32 | 15/16 | 0.9375 | 1-1/32
1-12 | UNF | 15/16 0.9375 | 61/64 0.9531 | 1-1/32 | 1-3/32 | 1.0938 | 1-5/32
1-1/8-12 | UNF | - | - | 1-5/32 | 1-7/32 | 1.2188 | 1-5/16
1-1/4-12 | UNF | - | - | 1-9/32 | 1-11/32 | 1.3438 | 1-7/16
1-3/8-12 | UNF | - | - | 1-7/16 | 1-1/2 | 1.5000 | 1-39/64
1-1/2-12 | UNF | - | - | 1-9/16 | 1-5/8 | 1.6250 | 1-47/64
1-14 | UNS | - | - | 1-1/32 | 1-3/32 | 1.0938 | 1-5/32
1-1/8-8 | 8UN | - | - | 1-5/32 | 1-7/32 | 1.2188 | 1-5/16
1-1/4-8 | 8UN | - | - | 1-9/32 | 1-11/32 | 1.3438 | 1-7/16
1-3/8-8 | 8UN | - | - | 1-7/16 | 1-1/2 | 1.5000 | 1-39/64
1-1/2-8 | 8UN | - | - | 1-9/16 | 1-5/8 | 1.6250 | 1-47/64
`;

export const unifiedThreads: readonly UnifiedThread[] = table
  .trim()
  .split("\n")
  .map((line) => {
    const [name = "", series = "", soft = "", hard = "", close = "", normal = "", normalInches = "", loose = ""] =
      line.split(" | ");
    return {
      name,
      series,
      tapDrillSoft: drill(soft),
      tapDrillHard: drill(hard),
      clearance: { close, normal, loose, normalInches: Number(normalInches) },
    };
  });

function drill(text: string): Drill | undefined {
  const [name, inches] = text.split(" ");
  return name === undefined || inches === undefined ? undefined : { name, inches: Number(inches) };
}

const byName = new Map(unifiedThreads.map((thread) => [thread.name, thread]));

/**
 * The thread of this size and threads per inch (`1/4-20`); `undefined` for a pair that no series has. Source: ASME
 * B1.1 (read through published tables).
 */
export const findUnifiedThread = (name: string): UnifiedThread | undefined => byName.get(name);
