// Which sections a document made of the manual's pieces shows. HTML and PDF both ask here; each lays its own sections out in their order.

export const manualSections = [
  "identification",
  "purpose",
  "who",
  "use",
  "safety",
  "works",
  "tools",
  "bill",
  "parts",
  "fasteners",
  "fluids",
  "diagram",
  "strip",
  "refit",
  "finish",
  "mishaps",
  "waste",
  "record",
  "glossary",
  "index",
] as const;

/** The way back of one unit, fed by its record. */
export const refitBookSections = [
  "identification",
  "recorded",
  "safety",
  "tools",
  "refit",
  "finish",
  "closing",
] as const satisfies readonly (ManualSection | "recorded" | "closing")[];

type ManualSection = (typeof manualSections)[number];
export type SectionName = ManualSection | (typeof refitBookSections)[number];
