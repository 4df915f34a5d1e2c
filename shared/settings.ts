// The settings of the editor, by their name under `stripdown.`; each has its sentence in the package. Plain types; imports nothing.

export interface EditorSettings {
  /** Hints beside the lines. */
  readonly hints: boolean;
  /** Lines above steps and procedures. */
  readonly lenses: boolean;
  /** Units shown first; "project": as stripdown.json says. */
  readonly system: "project" | "metric" | "us";
}

export const defaultEditorSettings: EditorSettings = { hints: true, lenses: true, system: "project" };

/** Whatever came over the wire, with the default for all that is missing or strange. */
export function readEditorSettings(value: unknown): EditorSettings {
  const given = (typeof value === "object" && value !== null ? value : {}) as Record<string, unknown>;
  return {
    hints: typeof given["hints"] === "boolean" ? given["hints"] : defaultEditorSettings.hints,
    lenses: typeof given["lenses"] === "boolean" ? given["lenses"] : defaultEditorSettings.lenses,
    system: given["system"] === "metric" || given["system"] === "us" ? given["system"] : "project",
  };
}
