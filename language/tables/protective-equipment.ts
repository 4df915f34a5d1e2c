// What is worn against hazards, as data: names that `wear` is mostly given, for completion and for telling a slip of the hand from a name
// of the shop's own. The list is open: another name is printed as it stands. Signs by ISO 7010 where one says it.

export interface ProtectiveEquipment {
  readonly title: string;
  /** Number in ISO 7010. */
  readonly sign?: string;
}

const gloves = "M009",
  eyes = "M004",
  feet = "M008",
  head = "M014",
  mask = "M016",
  breath = "M017",
  clothing = "M010";

const table = {
  gloves: { title: "Gloves", sign: gloves },
  "leather-gloves": { title: "Leather gloves", sign: gloves },
  "cut-gloves": { title: "Gloves against cuts", sign: gloves },
  "heat-gloves": { title: "Gloves against heat", sign: gloves },
  "nitrile-gloves": { title: "Nitrile gloves", sign: gloves },
  "chemical-gloves": { title: "Gloves against chemicals", sign: gloves },
  "insulating-gloves": { title: "Insulating gloves", sign: gloves },
  goggles: { title: "Goggles", sign: eyes },
  "safety-glasses": { title: "Safety glasses", sign: eyes },
  "eye-protection": { title: "Eye protection", sign: eyes },
  "face-shield": { title: "Face shield", sign: "M013" },
  "ear-protection": { title: "Ear protection", sign: "M003" },
  "ear-muffs": { title: "Ear muffs", sign: "M003" },
  "hearing-protection": { title: "Hearing protection", sign: "M003" },
  helmet: { title: "Helmet", sign: head },
  "head-protection": { title: "Head protection", sign: head },
  "safety-shoes": { title: "Safety shoes", sign: feet },
  "safety-boots": { title: "Safety boots", sign: feet },
  "foot-protection": { title: "Foot protection", sign: feet },
  "dust-mask": { title: "Dust mask", sign: mask },
  mask: { title: "Mask", sign: mask },
  respirator: { title: "Respirator", sign: breath },
  "breathing-protection": { title: "Breathing protection", sign: breath },
  apron: { title: "Apron", sign: "M026" },
  overalls: { title: "Overalls", sign: clothing },
  "protective-clothing": { title: "Protective clothing", sign: clothing },
  "arc-flash-clothing": { title: "Clothing against arc flash", sign: clothing },
  harness: { title: "Safety harness", sign: "M018" },
} satisfies Record<string, ProtectiveEquipment>;

export type ProtectiveEquipmentName = keyof typeof table;
export const protectiveEquipment: Readonly<Record<ProtectiveEquipmentName, ProtectiveEquipment>> = table;
