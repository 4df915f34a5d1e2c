// Each rule of the language about declarations, on a unit of a few lines.

import { expect, test } from "vitest";
import { built, unit } from "./build.ts";

test("pieces of one name pair up: part, host, fastener", () => {
  const { part, tie, ids } = built(
    unit(
      `part arm { pieces left, right  fits b }\npart pad { pieces left, right  fits arm }\nfastener bolts bolt { pieces left, right  count 4  joins arm to b }`,
    ),
  );
  expect(ids(part("pad.left").hosts)).toEqual(["arm.left"]);
  expect([ids(tie("bolts.right").lowers), tie("bolts.right").count]).toEqual([["arm.right"], 4]);
});

test("a range of pieces; `count 2 per cap` has two for each cap", () => {
  const { tie, model, ids } = built(
    unit(`part cap { pieces 1..3 }\nfastener cap-bolts bolt { count 2 per cap  joins cap to b }`),
  );
  expect(model.ties.map((one) => one.id)).toEqual(["cap-bolts.1", "cap-bolts.2", "cap-bolts.3"]);
  expect([tie("cap-bolts.2").count, ids(tie("cap-bolts.2").lowers)]).toEqual([2, ["cap.2"]]);
});

test("what one piece alone has, and its own name", () => {
  const { part, ids, model } = built(
    unit(`part seal-ring\npart cap "Cap" { pieces 1..2 own-place  piece 2 { behind seal-ring } }`),
  );
  expect([ids(part("cap.1").behind), ids(part("cap.2").behind), part("cap.2").name, part("cap.1").ownPlace]).toEqual([
    [],
    ["seal-ring"],
    "Cap 2",
    true,
  ]);
  expect([...model.scopes.get("")!.keys()]).toContain("cap.2");
});

test("`joins each of` with as many pieces as names: one each, in order; else each hangs on the last", () => {
  const text = (head: string): string => unit(`part x\npart y\nfastener f bolt { ${head}  joins each of x, y to b }`);
  expect((({ tie, ids }) => [ids(tie("f.1").lowers), ids(tie("f.2").lowers)])(built(text("pieces 1..2")))).toEqual([
    ["x"],
    ["y"],
  ]);
  expect((({ tie, ids }) => ids(tie("f").lowers))(built(text("count 4")))).toEqual(["x", "y"]);
});

test("washers: one under each head, or so many in all", () => {
  const { tie } = built(
    unit(`part lid\npart w washer\npart s lock-washer\nfastener f bolt { count 8  joins lid to b  with w  with 3 s }`),
  );
  expect(tie("f").washers.map((one) => one.count)).toEqual([8, 3]);
});

test("a fastener may join three parts", () => {
  const { tie, ids } = built(
    unit(`part shaft\npart cylinder { fits b }\nfastener f bolt { joins shaft to cylinder, b }`),
  );
  expect(ids(tie("f").uppers)).toEqual(["cylinder", "b"]);
});

test("a type is taken over, and what is said again replaces it; a type of a file that is used", () => {
  const { tie } = built(
    `use "shop.strip"\n${unit(`part lid\nfastener f { like m6  torque 7 N·m  joins lid to b }`)}`,
    "u",
    undefined,
    { "shop.strip": `fastener m6 screw "M6" { size M6x16  torque 9 N·m  class 8.8 }` },
  );
  expect([
    tie("f").kind,
    tie("f").size?.designation,
    tie("f").propertyClass,
    tie("f").torques.map((one) => one.value?.low),
  ]).toEqual(["screw", "M6", "8.8", [7]]);
});

test("a hazard takes over the words, the kind and the signal word of its type as well", () => {
  const { model } = built(
    `use "shop.strip"\n${unit(`part lid\nhazard start rotating { like can-start  on lid }\nhazard own rotating warning "Fan" { like can-start  on lid }`)}`,
    "u",
    undefined,
    { "shop.strip": `hazard can-start rotating danger "Machine can start" { precaution try-start "Press start." }` },
  );
  expect(model.hazards.map(({ name, signal }) => `${signal}: ${name}`)).toEqual([
    "danger: Machine can start",
    "warning: Fan",
  ]);
});

test("a part that is a unit has the mass of that unit, else of its base, and its base's supply, save what it says itself", () => {
  const inner = (mass: string) =>
    `\nunit inner { base case\n${mass}\npart case { mass 60 kg  supply 400 V ac }\npart lid { mass 5 kg  rests on case } }`;
  const of = (own: string, mass: string) => {
    const gear = built(unit(`part gear { is unit inner ${own} }`) + inner(mass)).part("gear");
    return [gear.mass?.low, gear.massFrom, gear.supply?.low];
  };
  expect(of("", "mass 70 kg")).toEqual([70, "unit", 400]);
  expect(of("", "")).toEqual([60, "base", 400]);
  expect(of("mass 80 kg  supply 230 V ac", "mass 70 kg")).toEqual([80, "part", 230]);
});

test("a ring of `like` ends", () => {
  expect(built(unit(`part x { like y }\npart y { like x  mass 2 kg }`)).part("x").mass?.low).toBe(2);
});

test("the standing rule of the unit is told from a statement on the thing", () => {
  const { part } = built(
    unit(`renew always gasket\npart g gasket { between b and b }\npart h gasket { renew when worn }`),
  );
  expect([part("g").renew, part("h").renew]).toMatchObject([
    { when: "always", said: false },
    { when: "worn", said: true },
  ]);
});

test("torque of the unit's standard, from the table by the size of the thread; a rivet takes none", () => {
  const text = `torque-table dry { size M6 9 N·m  size M8 22 N·m }\n${unit(`torque standard dry\npart lid\nfastener f { size M8x20  joins lid to b }\nfastener r rivet { joins lid to b }\nfastener own { size M6  torque 5 N·m  joins lid to b }`)}`;
  const { tie } = built(text);
  expect(tie("f").torques).toMatchObject([{ is: "standard", table: "dry", value: { low: 22 } }]);
  expect([tie("r").torques, tie("own").torques.map((one) => one.value?.low)]).toEqual([[], [5]]);
});

test("joints part as their kind says; a fluid that must be caught does so by its kind", () => {
  const { tie, model } = built(
    unit(
      `part x\njoint a press-fit { joins x to b }\njoint c connector { joins x to b }\njoint w weld { joins x to b }\nfluid gas refrigerant\nfluid water { drains at x }`,
    ),
  );
  expect(["a", "c", "w"].map((id) => [tie(id).passing, tie(id).oneWay])).toEqual([
    [true, false],
    [false, false],
    [false, true],
  ]);
  expect(model.fluids.map((fluid) => [fluid.recover, fluid.filled])).toEqual([
    [true, true],
    [false, false],
  ]);
});

test("a message declared once lies on every thing of its kind or name", () => {
  const { part } = built(
    unit(`warn caution "Sharp edge." on shim, lid\npart lid { danger "Heavy." }\npart s shim\npart other`),
  );
  expect([part("lid"), part("s"), part("other")].map((one) => one.messages.map((message) => message.text))).toEqual([
    ["Heavy.", "Sharp edge."],
    ["Sharp edge."],
    [],
  ]);
});

const gearbox = `unit g "Gearbox" {\n  base case\n  part case\n  part shaft { fits case }\n  fastener f bolt { joins shaft to case }\n}\n`;

test("a unit inside a part: its base is that part, its names have a scope of their own", () => {
  const { model, part, tie, ids } = built(
    gearbox + unit(`part gearbox { is unit g }\nfastener hold bolt { joins gearbox to b }`),
  );
  expect(model.parts.map((one) => one.id)).toEqual(["b", "gearbox", "gearbox/shaft"]);
  expect([
    ids(part("gearbox/shaft").hosts),
    ids(tie("gearbox/f").uppers),
    ids(model.scopes.get("gearbox/")!.get("case")!),
  ]).toEqual([["gearbox"], ["gearbox"], ["gearbox"]]);
  expect(model.scopes.get("")!.has("shaft")).toBe(false);
});

test("from outside the base of a unit inside is the part, by the name that it has there", () => {
  const hose = `part hose\njoint at pipe-union { joins hose to gearbox.case }\n`;
  const one = built(gearbox + unit(`part gearbox { is unit g }\n${hose}`)),
    two = built(
      gearbox +
        unit(
          `part gearbox { pieces left, right  is unit g }\n${hose}joint by pipe-union { joins hose to gearbox.left.case }`,
        ),
    );
  expect(one.ids(one.tie("at").uppers)).toEqual(["gearbox"]);
  expect(two.ids(two.tie("at").uppers)).toEqual(["gearbox.left", "gearbox.right"]);
  expect(two.ids(two.tie("by").uppers)).toEqual(["gearbox.left"]);
});

test("several of one unit, and a unit that would hold itself", () => {
  const { model } = built(gearbox + unit(`part gearbox { pieces left, right  is unit g }`));
  expect(model.parts.map((one) => one.id)).toEqual([
    "b",
    "gearbox.left",
    "gearbox.right",
    "gearbox.left/shaft",
    "gearbox.right/shaft",
  ]);
  // How deep it looks is no matter, as long as it ends.
  expect(built(unit(`part inner { is unit u }`)).model.parts.length).toBeLessThan(4);
});

test("names that nothing has are left out, and a name declared twice counts once", () => {
  const { part, tie, ids, model } = built(
    unit(`part lid { behind nothing, b }\npart lid\nfastener f bolt { joins lid, ghost to b }`),
  );
  expect([ids(part("lid").behind), ids(tie("f").lowers), model.parts.length]).toEqual([["b"], ["lid"], 2]);
});

test("names are compared after NFC", () => {
  const { tie, ids } = built(unit(`part de\u0301flecteur\nfastener f bolt { joins d\u00e9flecteur to b }`));
  expect(ids(tie("f").lowers)).toEqual(["d\u00e9flecteur"]);
});

test("texts: escapes, and text blocks without their indentation", () => {
  const { part } = built(
    unit('part x { about "A \\"good\\" one, C:\\\\x" }\npart y { about """\n      First.\n        Second.\n    """ }'),
  );
  expect([part("x").about, part("y").about]).toEqual(['A "good" one, C:\\x', "First.\n  Second."]);
});

test("no prefix of a text throws", () => {
  const text =
    gearbox +
    unit(
      `variants early, late\nif late { part x { mass 3 kg  behind b } }\npart cap { pieces 1..3 }\nfastener f bolt { count 2 per cap  joins cap to b  torque 3 N·m (27 lb-in) }\nhazard h spring danger { on f  precaution block "In." back "Out." }`,
    );
  for (let end = 0; end <= text.length; end++) {
    let problem = "";
    try {
      built(text.slice(0, end));
    } catch (error) {
      problem = String(error);
    }
    // Before its declaration there is no such unit: that is this helper's own word, everything else is a fault.
    expect(problem === "" || problem === "Error: no unit u", `${end}: ${problem}`).toBe(true);
  }
});
