// Texts that take long, for what is shown of long work and breaks it off.

/** A unit with many parts, and procedures that use it: a change in the unit makes all of them be performed again. */
export function longTexts(count: number, length = 600): [name: string, text: string][] {
  const groups = Array.from({ length }, (_, i) => i);
  const unit = [
    'unit rig "Rig" {\n  base frame\n  part frame "Frame"',
    ...groups.map(
      (i) => `  part p${i} "Part ${i}"\n  fastener s${i} bolt "Bolts ${i}" { count 4  joins p${i} to frame }`,
    ),
    "}\n",
  ];
  const acts = groups.map((i) => `    undo s${i}\n    remove p${i}`).join("\n");
  return [
    ["unit.strip", unit.join("\n")],
    ...Array.from({ length: count }, (_, i): [string, string] => [
      `job-${i}.strip`,
      `use "unit.strip"\nprocedure job-${i} "Job" for rig {\n  aim all apart\n  step "All" {\n${acts}\n  }\n}\n`,
    ]),
  ];
}
