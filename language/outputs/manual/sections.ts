// Which sections a document made of the manual's pieces shows, and for whom. HTML and PDF both ask here; each lays its own sections out in
// their order.

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
  "preparation",
  "isolation",
  "strip",
  "refit",
  "finish",
  "mishaps",
  "waste",
  "record",
  "lifting",
  "handover",
  "torque",
  "layout",
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
  "lifting",
] as const satisfies readonly (ManualSection | "recorded" | "closing")[];

type ManualSection = (typeof manualSections)[number];
export type SectionName = ManualSection | (typeof refitBookSections)[number];

/**
 * Who reads the manual. Whatever is about somebody's safety stands for all of them: nobody is given less of it.
 */
export const readers = ["technician", "teacher", "customer"] as const;
export type Reader = (typeof readers)[number];

/** What a reader has no use for: papers that are filled in at a bench which is not theirs. */
const without: Readonly<Record<Reader, readonly ManualSection[]>> = {
  technician: [],
  // Nothing is handed over and no unit has a record, but torques and places are what is taught by.
  teacher: ["record", "handover"],
  customer: ["preparation", "record", "handover", "torque", "layout"],
};

export const sectionsFor = (reader: Reader): readonly ManualSection[] =>
  manualSections.filter((section) => !without[reader].includes(section));
