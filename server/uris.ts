// Addresses of documents and the paths that the compiler knows them by. One file has one path, however a client spells its address.

/** A `file:` address gives the plain path with `/`; any other its scheme and authority before the path. Percent signs are resolved. */
export function pathOf(uri: string): string {
  const match = /^([a-z][a-z0-9+.-]*):(?:\/\/([^/?#]*))?([^?#]*)/i.exec(uri);
  if (!match) return uri;
  const [, scheme = "", authority = "", rest = ""] = match,
    path = decoded(rest);
  if (scheme.toLowerCase() !== "file") return `${scheme.toLowerCase()}://${decoded(authority)}${path}`;
  // A drive has one spelling: clients write `c:`, `C:` and `c%3A`.
  const own = /^\/[a-z]:/i.test(path) ? `/${path[1]!.toLowerCase()}${path.slice(2)}` : path;
  return authority === "" ? own : `//${decoded(authority)}${own}`;
}

/** The address of a path, as most clients spell it. */
export function uriOf(path: string): string {
  const other = /^([a-z][a-z0-9+.-]*):\/\/([^/]*)(\/.*)?$/i.exec(path);
  if (other) return `${other[1]}://${encodeURIComponent(other[2]!).replaceAll("%2B", "+")}${encoded(other[3] ?? "")}`;
  if (path.startsWith("//")) {
    const [, , authority = "", ...rest] = path.split("/");
    return `file://${authority}${encoded(`/${rest.join("/")}`)}`;
  }
  return `file://${encoded(path)}`;
}

/** The same with `.` and `..` taken out; `written` may be a path from the folder of `fromFile`, or from the root. */
export function resolvePath(fromFile: string, written: string): string {
  const [, root = "", rest = ""] = /^([a-z][a-z0-9+.-]*:\/\/[^/]*|\/(?=\/)\/[^/]*)?(.*)$/i.exec(fromFile)!;
  const parts = written.startsWith("/") ? [] : rest.split("/").slice(0, -1);
  for (const part of written.split(/[\\/]/)) {
    if (part === "" || part === ".") continue;
    if (part === "..") {
      if (parts.length > 1) parts.pop();
    } else parts.push(part);
  }
  return `${root}${written.startsWith("/") ? `/${parts.join("/")}` : parts.join("/")}`;
}

export const folderOf = (path: string): string => path.slice(0, Math.max(0, path.lastIndexOf("/"))) || "/";
export const baseName = (path: string): string => path.slice(path.lastIndexOf("/") + 1);
export const isBelow = (path: string, folder: string): boolean =>
  path === folder || path.startsWith(folder.endsWith("/") ? folder : `${folder}/`);

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
const encoded = (path: string): string =>
  path
    .split("/")
    .map((part) =>
      encodeURIComponent(part).replace(/[!'()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`),
    )
    .join("/");
