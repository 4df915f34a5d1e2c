// The door to the tables: kinds and their behaviour, as data.

export * from "./act-kinds.ts";
export * from "./part-kinds.ts";
export * from "./fastener-kinds.ts";
export * from "./joint-kinds.ts";
export * from "./fluid-kinds.ts";
export * from "./hazard-kinds.ts";
export * from "./precautions.ts";
export * from "./sources.ts";
export * from "./safety-signs.ts";
export * from "./signals.ts";
export * from "./drives.ts";
export * from "./sequences.ts";
export * from "./position-words.ts";
export * from "./tapped.ts";
export * from "./synonyms.ts";
export * from "./lookup.ts";
