// Which files this tool made: a list beside them names each with the hash of what was written. What stands there otherwise, or was changed
// since, is somebody's own and is not written over. Who writes reads the list and the old file; whether to write is decided here.

/** The list, in the folder of the files. */
export const madeList = ".stripdown-made.json";

/** Hash by name of the file. */
export type Made = Readonly<Record<string, string>>;

/** Of a list that is not there, or that somebody spoilt, nothing is known: then no file is ours. */
export function readMade(text: string | undefined): Made {
  try {
    const list: unknown = JSON.parse(text ?? "");
    return list !== null && typeof list === "object" && !Array.isArray(list) ? (list as Made) : {};
  } catch {
    return {};
  }
}

/** The list with what was just written. */
export const madeText = (made: Made, written: Made): string =>
  `${JSON.stringify(Object.fromEntries(Object.entries({ ...made, ...written }).sort(([a], [b]) => (a < b ? -1 : 1))), null, 2)}\n`;

const bytesOf = (content: string | Uint8Array): Uint8Array<ArrayBuffer> =>
  typeof content === "string" ? new TextEncoder().encode(content) : new Uint8Array(content);

/** SHA-256, in hexadecimal digits. */
export async function hashOf(content: string | Uint8Array): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", bytesOf(content));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** May `content` be written where `old` stands? Yes where we made that and nobody changed it since, and where it is the same. */
export async function mayReplace(
  made: Made,
  name: string,
  old: Uint8Array,
  content: string | Uint8Array,
): Promise<boolean> {
  const before = await hashOf(old);
  return (Object.hasOwn(made, name) && made[name] === before) || before === (await hashOf(content));
}

/** What is said of a file that is left as it is, behind its name. */
export const notOurs = "is there already and was not made by this tool, or was changed since";
