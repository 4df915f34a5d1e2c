// Invented procedures for the benchmark: about 270 lines each (30 parts, 40 fasteners and joints, 60 steps), all clean, and the same
// content as plain values for what a shop would use instead.

export interface MadeProcedure {
  readonly strip: string;
  /** All that the text says, as a shop would key it in YAML. */
  readonly content: { readonly [key: string]: Content };
}

/** Plain values, as YAML has them. */
export type Content = string | number | readonly Content[] | { readonly [key: string]: Content };

const sizes = ["M5x16", "M6x20", "M8x25", "M8x35", "M10x30"],
  torques = [5, 9, 22, 22, 44],
  spanners = [8, 10, 13, 13, 16];

/** `seed` changes names, sizes and order a little, so that no two files are alike. A tower: each part hangs on the one below it. */
export function makeProcedure(seed: number, parts = 30): MadeProcedure {
  const out: string[] = [
    `# Invented for the benchmark: machine ${seed}`,
    `tool tester "Two-pole tester" { kind voltage-tester  range 0..1000 V }`,
    `unit machine-${seed} "Machine ${seed}" {`,
    "  positions upright, on-side",
    "  base part-0",
    "  renew always gasket",
  ];
  const isGasket = (k: number): boolean => k % 5 === 4 && k < parts - 1;
  const solid = Array.from({ length: parts }, (_, k) => k).filter((k) => !isGasket(k)),
    top = solid[solid.length - 1]!,
    plugs = Math.min(solid.length, 17);
  const partList: Content[] = [],
    fasteners: Content[] = [],
    joints: Content[] = [],
    steps: Content[] = [];
  for (let k = 0; k < parts; k++) {
    const mass = (0.5 + ((seed + k * 7) % 40) / 10).toFixed(1),
      about = `Carries what is above it, number ${k}.`;
    const between = isGasket(k) ? `  between part-${k + 1} and part-${k - 1}` : "",
      behind = k > 6 && k % 6 === 0 && !isGasket(k) ? `part-${solid[solid.indexOf(k) + 1] ?? top}` : "";
    out.push(
      `  part part-${k}${isGasket(k) ? " gasket" : ""} "Part ${k} of ${seed}" {`,
      `    mass ${mass} kg  about "${about}"${between}${behind && `  behind ${behind}`}`,
      "  }",
    );
    partList.push({
      id: `part-${k}`,
      name: `Part ${k} of ${seed}`,
      mass: `${mass} kg`,
      about,
      ...(isGasket(k) ? { kind: "gasket", between: [`part-${k + 1}`, `part-${k - 1}`] } : {}),
      ...(behind ? { behind } : {}),
    });
  }
  for (let i = 1; i < solid.length; i++) {
    const part = solid[i]!,
      under = solid[i - 1]!,
      kind = (seed + i) % sizes.length,
      count = 4 + (i % 3) * 2;
    out.push(
      `  fastener screws-${part} screw "Screws ${part}" {`,
      `    count ${count}  size ${sizes[kind]}  class 8.8  drive hex ${spanners[kind]}  torque ${torques[kind]} N·m  passes 2`,
      `    joins part-${part} to part-${under}`,
      "  }",
    );
    fasteners.push({
      id: `screws-${part}`,
      kind: "screw",
      name: `Screws ${part}`,
      count,
      size: sizes[kind]!,
      class: 8.8,
      drive: `hex ${spanners[kind]}`,
      torque: `${torques[kind]} N·m`,
      passes: 2,
      joins: { part: `part-${part}`, to: `part-${under}` },
    });
  }
  for (let i = 1; i < plugs; i++) {
    const part = solid[i]!,
      under = solid[i - 1]!;
    out.push(`  joint plug-${part} connector "Plug ${part}" { joins part-${part} to part-${under} }`);
    joints.push({
      id: `plug-${part}`,
      kind: "connector",
      name: `Plug ${part}`,
      joins: { part: `part-${part}`, to: `part-${under}` },
    });
  }
  out.push(
    '  hazard mains electrical danger "Mains" {',
    `    on screws-${top}  source mains  voltage 230 V ac`,
    '    precaution isolate "Open the isolator." back "Close the isolator."',
    '    precaution lock-out "Lock it." back "Take off your own lock."',
    '    precaution prove-dead "Test all poles." with tester',
    "  }",
    "}",
    "",
    `procedure strip-${seed} "Strip machine ${seed}" for machine-${seed} {`,
    `  aim part-${solid[1]!} off`,
  );
  let made = 0;
  const step = (title: string, verb: string, thing: string, tray = ""): void => {
    out.push(`  step s${++made} "${title}" { ${verb} ${thing}${tray && `  into tray ${tray}`} }`);
    steps.push({ id: `s${made}`, name: title, acts: [{ verb, thing, ...(tray ? { tray } : {}) }] });
  };
  for (const verb of ["isolate", "lock-out", "prove-dead"]) step(`Mains ${verb}`, verb, "mains");
  for (let i = solid.length - 1; i >= 1; i--) {
    const part = solid[i]!,
      ring = part - 1;
    if (i < plugs) step(`Pull plug ${part}`, "undo", `plug-${part}`);
    step(`Undo screws ${part}`, "undo", `screws-${part}`, "A");
    step(`Take part ${part} off`, "remove", `part-${part}`);
    if (isGasket(ring)) step(`Take gasket ${ring} out`, "remove", `part-${ring}`);
  }
  out.push("}", "");
  const content = {
    tools: [{ id: "tester", name: "Two-pole tester", kind: "voltage-tester", range: "0..1000 V" }],
    unit: `machine-${seed}`,
    name: `Machine ${seed}`,
    positions: ["upright", "on-side"],
    base: "part-0",
    renew: ["gasket"],
    parts: partList,
    fasteners,
    joints,
    hazards: [
      {
        id: "mains",
        kind: "electrical",
        grade: "danger",
        name: "Mains",
        on: [`screws-${top}`],
        source: "mains",
        voltage: "230 V ac",
        precautions: [
          { kind: "isolate", text: "Open the isolator.", back: "Close the isolator." },
          { kind: "lock-out", text: "Lock it.", back: "Take off your own lock." },
          { kind: "prove-dead", text: "Test all poles.", with: "tester" },
        ],
      },
    ],
    procedure: {
      id: `strip-${seed}`,
      name: `Strip machine ${seed}`,
      for: `machine-${seed}`,
      aim: `part-${solid[1]!} off`,
    },
    steps,
  };
  return { strip: out.join("\n"), content };
}

/** Shapes of the YAML, as a shop would check them: types and required keys, nothing more. */
export const yamlShape = {
  type: "object",
  required: ["unit", "name", "parts", "fasteners", "steps"],
  properties: {
    tools: {
      type: "array",
      items: {
        type: "object",
        required: ["id", "name"],
        properties: {
          id: { type: "string" },
          name: { type: "string" },
          kind: { type: "string" },
          range: { type: "string", pattern: "^[0-9.]+ V$" },
        },
        additionalProperties: false,
      },
    },
    unit: { type: "string" },
    name: { type: "string" },
    positions: { type: "array", items: { type: "string" } },
    base: { type: "string" },
    renew: { type: "array", items: { type: "string" } },
    parts: {
      type: "array",
      items: {
        type: "object",
        required: ["id", "name"],
        properties: {
          id: { type: "string" },
          name: { type: "string" },
          kind: { type: "string" },
          mass: { type: "string", pattern: "^[0-9.]+ kg$" },
          about: { type: "string" },
          behind: { type: "string" },
          between: { type: "array", items: { type: "string" } },
        },
        additionalProperties: false,
      },
    },
    fasteners: {
      type: "array",
      items: {
        type: "object",
        required: ["id", "joins"],
        properties: {
          id: { type: "string" },
          kind: { type: "string" },
          name: { type: "string" },
          count: { type: "integer" },
          size: { type: "string" },
          class: { type: "number" },
          drive: { type: "string" },
          passes: { type: "integer" },
          torque: { type: "string", pattern: "^[0-9.]+ N·m$" },
          joins: { $ref: "#/$defs/joins" },
        },
        additionalProperties: false,
      },
    },
    joints: {
      type: "array",
      items: {
        type: "object",
        required: ["id", "kind", "joins"],
        properties: {
          id: { type: "string" },
          kind: { type: "string" },
          name: { type: "string" },
          joins: { $ref: "#/$defs/joins" },
        },
        additionalProperties: false,
      },
    },
    hazards: {
      type: "array",
      items: {
        type: "object",
        required: ["id", "kind"],
        properties: {
          id: { type: "string" },
          kind: { type: "string" },
          grade: { type: "string" },
          name: { type: "string" },
          on: { type: "array", items: { type: "string" } },
          source: { type: "string" },
          voltage: { type: "string", pattern: "^[0-9.]+ V (ac|dc)$" },
          precautions: {
            type: "array",
            items: {
              type: "object",
              required: ["kind", "text"],
              properties: {
                kind: { type: "string" },
                text: { type: "string" },
                back: { type: "string" },
                with: { type: "string" },
              },
              additionalProperties: false,
            },
          },
        },
        additionalProperties: false,
      },
    },
    procedure: {
      type: "object",
      required: ["id", "for"],
      properties: {
        id: { type: "string" },
        name: { type: "string" },
        for: { type: "string" },
        aim: { type: "string" },
      },
      additionalProperties: false,
    },
    steps: {
      type: "array",
      items: {
        type: "object",
        required: ["name", "acts"],
        properties: {
          id: { type: "string" },
          name: { type: "string" },
          acts: {
            type: "array",
            items: {
              type: "object",
              required: ["verb", "thing"],
              properties: { verb: { type: "string" }, thing: { type: "string" }, tray: { type: "string" } },
              additionalProperties: false,
            },
          },
        },
        additionalProperties: false,
      },
    },
  },
  additionalProperties: false,
  $defs: {
    joins: {
      type: "object",
      required: ["part", "to"],
      properties: { part: { type: "string" }, to: { type: "string" } },
      additionalProperties: false,
    },
  },
};
