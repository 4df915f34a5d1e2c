// Machines that nobody built, for laws that must hold for any: parts in a tree, each tied to the one below it, some in front of
// others, some with what lies between; and a procedure that takes it apart in an order that the declarations allow.

import fc from "fast-check";

export interface MadeUp {
  /** The file with the unit, and the one with the procedure. */
  readonly unit: string;
  readonly procedure: string;
  readonly parts: number;
}

type Fixing = "screws" | "bolts" | "press-fit" | "slide" | "rests";

interface MadePart {
  /** Which earlier part it sits on; 0 is the base. */
  readonly on: number;
  readonly by: Fixing;
  readonly count: number;
  /** A part with a number above it that sits on the same one is in front of it. */
  readonly hidden: boolean;
  readonly ring: boolean;
  readonly side: boolean;
}

const madePart = (i: number): fc.Arbitrary<MadePart> =>
  fc.record({
    on: fc.nat({ max: i }),
    by: fc.constantFrom<Fixing>("screws", "bolts", "press-fit", "slide", "rests"),
    count: fc.integer({ min: 1, max: 8 }),
    hidden: fc.boolean(),
    ring: fc.boolean(),
    side: fc.boolean(),
  });

/** A unit of two to `most` parts, and whether each comes off by itself or with what it sits on. What only rests is never turned. */
export const madeUp = (most = 12): fc.Arbitrary<MadeUp> =>
  fc
    .integer({ min: 2, max: most })
    .chain((n) =>
      fc.record({
        parts: fc.tuple(...Array.from({ length: n }, (_, i) => madePart(i))),
        deep: fc.array(fc.boolean(), { minLength: n, maxLength: n }),
        perStep: fc.integer({ min: 1, max: 4 }),
        turns: fc.boolean(),
      }),
    )
    .map(({ parts, deep, perStep, turns }) =>
      written(
        parts.map((part) => (turns && part.by === "rests" ? { ...part, by: "slide" as const } : part)),
        deep,
        perStep,
        turns,
      ),
    );

function written(parts: readonly MadePart[], deep: readonly boolean[], perStep: number, turns: boolean): MadeUp {
  const unit: string[] = [
      'unit made "Made-up machine" {',
      ...(turns ? ["  positions upright, on-side"] : []),
      "  base p0",
      '  part p0 "Base"',
    ],
    acts: string[][] = [];
  const needs = (part: MadePart): string => (turns && part.side ? "  needs on-side" : "");
  parts.forEach((part, k) => {
    const i = k + 1,
      under = `p${part.on}`;
    // In front of it is the last part that sits on the same one and comes off before it.
    const front = part.hidden ? parts.findLastIndex((other, j) => j > k && other.on === part.on) : -1,
      behind = front < 0 ? "" : `  behind p${front + 1}`;
    const sits = part.by === "slide" ? `fits ${under} by slide-fit` : part.by === "rests" ? `rests on ${under}` : "";
    unit.push(`  part p${i} "Part ${i}" { ${sits}${behind}${needs(part)} }`);
    if (part.by === "screws" || part.by === "bolts")
      unit.push(
        `  fastener f${i} ${part.by === "screws" ? "screw" : "bolt"} "Fastener ${i}" { count ${part.count}  joins p${i} to ${under} }`,
      );
    if (part.by === "press-fit") unit.push(`  joint j${i} press-fit "Joint ${i}" { joins p${i} to ${under} }`);
    if (part.ring) unit.push(`  part r${i} o-ring "Ring ${i}" { between p${i} and ${under}  renew always }`);
  });
  unit.push("}");
  // The highest number first: whatever is in front of a part has a higher one, and so has what sits on it. Some stay on what they sit
  // on and are taken off that later, on the bench.
  const later: number[] = [];
  const turn = (part: MadePart): string[] => (turns ? [`turn to ${part.side ? "on-side" : "upright"}`] : []);
  const off = (i: number): void => {
    const part = parts[i - 1]!;
    acts.push([
      ...turn(part),
      ...(part.by === "screws" || part.by === "bolts" ? [`undo f${i}`] : []),
      `remove p${i}`,
      ...(part.ring ? [`remove r${i}`] : []),
    ]);
  };
  const hides = new Set(parts.flatMap((part) => (part.hidden ? [part.on] : [])));
  for (let i = parts.length; i > 0; i--) {
    const part = parts[i - 1]!,
      stays = deep[i - 1]! && part.on > 0 && !part.hidden && !hides.has(part.on) && part.by !== "rests" && !turns;
    if (
      stays &&
      !parts.some((other, k) => other.hidden && parts.findLastIndex((one, j) => j > k && one.on === other.on) === i - 1)
    )
      later.push(i);
    else off(i);
  }
  for (const i of later) off(i);
  const steps: string[] = [];
  for (let i = 0; i < acts.length; i += perStep)
    steps.push(
      `  step {\n${acts
        .slice(i, i + perStep)
        .flat()
        .map((act) => `    ${act}`)
        .join("\n")}\n  }`,
    );
  if (turns) steps.push("  step {\n    turn to upright\n  }");
  return {
    unit: `${unit.join("\n")}\n`,
    procedure: `use "unit.strip"\n\nprocedure apart "Apart" for made {\n  aim all apart\n${steps.join("\n")}\n}\n`,
    parts: parts.length,
  };
}
