// Printed words of the kinds, in British English: the tables are written in it, so they are read as they stand. Another language
// gives its own words here, by the names of the same tables.

import {
  drives,
  fastenerKinds,
  fluidKinds,
  hazardKinds,
  jointKinds,
  kindIn,
  partKinds,
  precautions,
  sequences,
  signals,
  sources,
  type SignalName,
} from "../../../tables/index.ts";

type Half = "strip" | "refit";

const plain: Readonly<Record<Half, string>> = { strip: "Remove", refit: "Fit" };

export const kinds = {
  partVerb: (kind: string, half: Half) => kindIn(partKinds, kind)?.[half] ?? plain[half],
  fastenerVerb: (kind: string, half: Half) => (kindIn(fastenerKinds, kind) ?? fastenerKinds.screw)[half],
  jointVerb: (kind: string, half: Half) => kindIn(jointKinds, kind)?.[half] ?? plain[half],
  part: (kind: string) => kindIn(partKinds, kind)?.title ?? "",
  fastener: (kind: string) => kindIn(fastenerKinds, kind)?.title ?? "",
  joint: (kind: string) => kindIn(jointKinds, kind)?.title ?? "",
  hazard: (kind: string) => kindIn(hazardKinds, kind)?.title ?? kind,
  hazardAbout: (kind: string) => kindIn(hazardKinds, kind)?.about ?? "",
  precaution: (kind: string) => kindIn(precautions, kind)?.title ?? kind,
  /** At the head of a line; the words of the author say what an `other` one is. */
  precautionShort: (kind: string) => (kind === "other" ? "Precaution" : (kindIn(precautions, kind)?.title ?? kind)),
  precautionBack: (kind: string) => kindIn(precautions, kind)?.back,
  fluid: (kind: string) => kindIn(fluidKinds, kind)?.title ?? "",
  fluidWaste: (kind: string) => kindIn(fluidKinds, kind)?.waste,
  fluidContainer: (kind: string) => kindIn(fluidKinds, kind)?.container,
  jointUse: (use: string) => use,
  source: (kind: string) => kindIn(sources, kind)?.title ?? kind,
  drive: (kind: string) => kindIn(drives, kind)?.title ?? kind,
  driveTool: (kind: string) => kindIn(drives, kind)?.tool ?? kind,
  sequence: (kind: string) => kindIn(sequences, kind)?.title ?? kind,
  signal: (signal: SignalName) => signals[signal].title.toUpperCase(),
  signalAbout: (signal: SignalName) => signals[signal].about,
};
