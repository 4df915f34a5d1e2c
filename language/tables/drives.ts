// What the tool grips on a fastener, as data, named as in the ISO standards.

export type Drive = {
  readonly title: string;
  readonly about: string;
  /** The tool that drives it, in words; its size is printed with it. */
  readonly tool: string;
  /** What the figure after it means: a width in mm or inches, a number of the size series, or nothing. */
  readonly size: "width" | "number" | "none";
};

const table = {
  hex: { title: "Hexagon", about: "External hexagon; width across flats, ISO 272.", tool: "spanner", size: "width" },
  "hex-socket": {
    title: "Hexagon socket",
    about: "Internal hexagon, as ISO 4762; keys ISO 2936.",
    tool: "hexagon key",
    size: "width",
  },
  hexalobular: {
    title: "Hexalobular socket",
    about: "Six-lobed socket, ISO 10664.",
    tool: "hexalobular driver",
    size: "number",
  },
  square: { title: "Square", about: "External or internal square.", tool: "square key", size: "width" },
  slot: { title: "Slot", about: "One straight slot.", tool: "flat screwdriver", size: "width" },
  "cross-ph": {
    title: "Cross recess H",
    about: "Cross recess type H, ISO 4757.",
    tool: "cross-recess screwdriver H",
    size: "number",
  },
  "cross-pz": {
    title: "Cross recess Z",
    about: "Cross recess type Z, ISO 4757.",
    tool: "cross-recess screwdriver Z",
    size: "number",
  },
  spline: { title: "Spline socket", about: "Multi-toothed socket.", tool: "spline key", size: "number" },
  "pin-spanner": {
    title: "Pin holes",
    about: "Holes or slots for a pin or hook spanner.",
    tool: "pin spanner",
    size: "width",
  },
  wing: { title: "Wing", about: "Turned by hand.", tool: "hand", size: "none" },
} satisfies Record<string, Drive>;

export type DriveName = keyof typeof table;
export const drives: Readonly<Record<DriveName, Drive>> = table;
