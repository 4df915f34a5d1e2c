// Safety signs of ISO 7010 by number: what each means, and where a strip-down meets it. Their artwork is not held here.

/** What the letter of a number and the look of a sign say. Source: ISO 3864-1 through two public lists of the signs (read). */
export const signCategories = {
  W: { title: "warning", look: "black on yellow triangle" },
  M: { title: "mandatory", look: "white on blue disc" },
  P: { title: "prohibition", look: "black, red ring and bar on white" },
  E: { title: "way out, first aid, equipment for an emergency", look: "white on green square" },
  F: { title: "fire equipment", look: "white on red square" },
} as const;

export interface SafetySign {
  /** Number in ISO 7010: a letter of `signCategories` and three digits. */
  readonly code: string;
  readonly meaning: string;
  /** Where work on a machine meets it; ours, not the standard's. */
  readonly at: string;
}

/** Source: ISO 7010 through a public list of 332 names (read), 36 of them in a second list as well. */
export const safetySigns: readonly SafetySign[] = [
  { code: "W001", meaning: "General warning sign", at: "when no other sign fits" },
  { code: "W006", meaning: "Magnetic field", at: "strong magnets: rotors, latches" },
  { code: "W008", meaning: "Drop (fall)", at: "work at height on the machine" },
  { code: "W011", meaning: "Slippery surface", at: "oil, coolant on the floor" },
  { code: "W012", meaning: "Electricity", at: "voltage class B, charged capacitors" },
  { code: "W015", meaning: "Overhead load", at: "a part on a hoist; nobody under it" },
  { code: "W016", meaning: "Toxic material", at: "toxic fluid" },
  { code: "W017", meaning: "Hot surface", at: "over 48 degC at the touch" },
  { code: "W018", meaning: "Automatic start-up", at: "fans, pumps that may start" },
  { code: "W019", meaning: "Crushing", at: "heavy part may drop or shift" },
  { code: "W021", meaning: "Flammable material", at: "fuel, brake cleaner, solvent" },
  { code: "W022", meaning: "Sharp element", at: "burrs, sheet edges, blades" },
  { code: "W023", meaning: "Corrosive substance", at: "battery acid" },
  { code: "W024", meaning: "Crushing of hands", at: "closing parts, magnets snapping together" },
  { code: "W025", meaning: "Counterrotating rollers", at: "belts, gears, rollers" },
  { code: "W026", meaning: "Battery charging", at: "battery charging gas" },
  { code: "W028", meaning: "Oxidizing substance", at: "oxidiser" },
  { code: "W029", meaning: "Pressurized cylinder", at: "gas spring, accumulator, cylinder" },
  { code: "W035", meaning: "Falling objects", at: "unsupported part" },
  { code: "W038", meaning: "Sudden loud noise", at: "gas release" },
  { code: "W041", meaning: "Asphyxiating atmosphere", at: "nitrogen, refrigerant in a pit" },
  { code: "W042", meaning: "Arc flash", at: "work near live high-energy parts" },
  { code: "W071", meaning: "Substance or mixture presenting a health hazard", at: "GHS08 substances" },
  {
    code: "W072",
    meaning: "Substance or mixture that can cause an environmental hazard",
    at: "fluids that must not reach drains",
  },
  { code: "W079", meaning: "Hot content", at: "hot coolant or oil" },
  { code: "W080", meaning: "Hot steam", at: "radiator cap" },
  { code: "W088", meaning: "Moving blades", at: "fan, cutter" },
  { code: "W089", meaning: "Moving gears", at: "open gear train" },
  { code: "M001", meaning: "General mandatory action sign", at: "general" },
  { code: "M002", meaning: "Refer to instruction manual/booklet", at: "read the maker data first" },
  { code: "M003", meaning: "Wear ear protection", at: "noise" },
  { code: "M004", meaning: "Wear eye protection", at: "springs, circlips, fluids, grinding" },
  { code: "M005", meaning: "Connect an earth terminal to the ground", at: "earthing before work" },
  { code: "M006", meaning: "Disconnect mains plug from electrical outlet", at: "mains equipment" },
  { code: "M008", meaning: "Wear safety footwear", at: "parts of a few kilograms" },
  { code: "M009", meaning: "Wear protective gloves", at: "edges, fluids; insulating gloves need words too" },
  { code: "M010", meaning: "Wear protective clothing", at: "hot fluid" },
  { code: "M011", meaning: "Wash your hands", at: "after oil" },
  { code: "M013", meaning: "Wear a face shield", at: "proving dead, arc" },
  { code: "M014", meaning: "Wear head protection", at: "overhead load" },
  { code: "M016", meaning: "Wear a mask", at: "dust" },
  { code: "M017", meaning: "Wear respiratory protection", at: "vapour" },
  { code: "M021", meaning: "Disconnect before carrying out maintenance or repair", at: "lock-out" },
  { code: "M026", meaning: "Use protective apron", at: "fluid" },
  { code: "M027", meaning: "Check guard", at: "guard back on at refit" },
  { code: "M028", meaning: "Keep locked", at: "lock-out kept" },
  { code: "M046", meaning: "Secure gas cylinders", at: "gas bottles" },
  { code: "M056", meaning: "Ventilate before and during entering", at: "pit or tank" },
  { code: "M057", meaning: "Ensure continuous ventilation", at: "battery room" },
  { code: "M068", meaning: "Lock moving mechanical parts", at: "block moving parts" },
  { code: "P001", meaning: "General prohibition sign", at: "general" },
  { code: "P002", meaning: "No smoking", at: "fuel, battery" },
  {
    code: "P003",
    meaning: "No open flame; Fire, open ignition source and smoking prohibited",
    at: "fuel, solvent, battery gas",
  },
  { code: "P004", meaning: "No thoroughfare", at: "barrier" },
  {
    code: "P007",
    meaning: "No access for people with active implanted cardiac devices",
    at: "static field 0.5 mT and more",
  },
  { code: "P008", meaning: "No metallic articles or watches", at: "magnets, live work" },
  { code: "P010", meaning: "Do not touch", at: "hot or live" },
  { code: "P011", meaning: "Do not extinguish with water", at: "oil, electrical, lithium or sodium fires per maker" },
  { code: "P012", meaning: "No heavy load", at: "weak bench or cover" },
  { code: "P014", meaning: "No access for people with metallic implants", at: "magnets" },
  { code: "P015", meaning: "No reaching in", at: "moving parts" },
  { code: "P017", meaning: "No pushing", at: "stacked parts" },
  { code: "P028", meaning: "Do not wear gloves", at: "turning shafts, lathes" },
  { code: "P031", meaning: "Do not alter the state of the switch", at: "switch locked out" },
  { code: "P069", meaning: "Not to be serviced by users", at: "sealed units" },
  { code: "P080", meaning: "No access for unauthorized persons", at: "marked-off area" },
  { code: "E003", meaning: "First aid", at: "first aid" },
  { code: "E011", meaning: "Eyewash station", at: "acid" },
  { code: "E012", meaning: "Safety shower", at: "acid" },
  { code: "F001", meaning: "Fire extinguisher", at: "fire-watch" },
];

export const signCategory = (code: string): (typeof signCategories)[keyof typeof signCategories] =>
  signCategories[code[0] as keyof typeof signCategories];
