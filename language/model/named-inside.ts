// Names with points in them: a piece of several (`cap.3`), a thing inside a part that is a unit (`gearbox.lid`), a piece of either.

/** What a name stands for at a piece: that piece of the part that it goes through, `gearbox.left.lid`, else of the thing, `cap.left`. */
export function atPiece<T>(names: ReadonlyMap<string, T>, name: string, piece: string): T | undefined {
  const dot = name.indexOf(".");
  return (
    (dot < 0 ? undefined : names.get(`${name.slice(0, dot)}.${piece}${name.slice(dot)}`)) ??
    names.get(`${name}.${piece}`)
  );
}

/** The name of a thing as it is written where names have this prefix: `gearbox.left.lid` for `gearbox.left/lid`; undefined from elsewhere. */
export function nameFrom(prefix: string, thing: { readonly id: string }): string | undefined {
  return thing.id.startsWith(prefix) ? thing.id.slice(prefix.length).replaceAll("/", ".") : undefined;
}
