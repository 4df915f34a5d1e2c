// The settings of the editor, by their name under `stripdown.`; each has its sentence in the package. Plain types; imports nothing.

export interface EditorSettings {
  /** Hints beside the lines. */
  readonly hints: boolean;
  /** Lines above steps and procedures. */
  readonly lenses: boolean;
  /** Units shown first; "project": as stripdown.json says. */
  readonly system: "project" | "metric" | "us";
  /** Of the manual beside the text and of the papers that are written. */
  readonly manual: ManualSettings;
}
export interface ManualSettings {
  /** The tag of the language of the built-in words; undefined: the usual one. */
  readonly language: string | undefined;
  /** Whom it is for. */
  readonly reader: (typeof manualReaders)[number];
}

export const manualReaders = ["technician", "teacher", "customer"] as const;

export const defaultEditorSettings: EditorSettings = {
  hints: true,
  lenses: true,
  system: "project",
  manual: { language: undefined, reader: "technician" },
};

/** Whatever came over the wire, with the default for all that is missing or strange. */
export function readEditorSettings(value: unknown): EditorSettings {
  const given = fieldsOf(value);
  return {
    hints: typeof given["hints"] === "boolean" ? given["hints"] : defaultEditorSettings.hints,
    lenses: typeof given["lenses"] === "boolean" ? given["lenses"] : defaultEditorSettings.lenses,
    system: given["system"] === "metric" || given["system"] === "us" ? given["system"] : "project",
    manual: readManualSettings(given["manual"]),
  };
}

/** The same of the papers alone; `usual` stands for all that is missing or strange. */
export function readManualSettings(
  value: unknown,
  usual: ManualSettings = defaultEditorSettings.manual,
): ManualSettings {
  const { language, reader } = fieldsOf(value);
  return {
    language: typeof language === "string" && language !== "" ? language : usual.language,
    reader: manualReaders.find((one) => one === reader) ?? usual.reader,
  };
}

const fieldsOf = (value: unknown): Readonly<Record<string, unknown>> =>
  (typeof value === "object" && value !== null ? value : {}) as Record<string, unknown>;
