// Every generator, loaded when its turn comes: the registry of checks comes first, since others read the checks.

type Generated = { readonly path: string; readonly text: string };
export type Generator = (
  project: string,
) => Generated | readonly Generated[] | Promise<Generated | readonly Generated[]>;

export const generators: readonly (() => Promise<Generator>)[] = [
  async () => (await import("./check-registry.ts")).generate,
  async () => (await import("./calc-schema.ts")).generate,
  async () => (await import("./check-schema.ts")).generate,
  async () => (await import("./settings-schema.ts")).generate,
  async () => (await import("./output-schemas.ts")).generate,
  async () => (await import("./grammar.ts")).generate,
  async () => (await import("./reference-words.ts")).generate,
  async () => (await import("./reference-kinds.ts")).generate,
  async () => (await import("./reference-checks.ts")).generate,
  async () => (await import("./reference-figures.ts")).generate,
  async () => (await import("./reference-commands.ts")).generate,
  async () => (await import("./tablet-script.ts")).generate,
  async () => (await import("./coverage.ts")).generate,
];
