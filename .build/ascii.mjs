// A bundle with no sign beyond ASCII. What the bundler leaves of them stands in patterns, which it does not touch, and each may be written
// by its number there. One such sign makes the engine keep the whole text at two bytes a sign for as long as the process runs.

/**
 * The same program. Throws for a sign behind a backslash, which has no such spelling.
 * @param {string} program
 * @returns {string}
 */
export function asAscii(program) {
  // By its two halves where it lies beyond the first plane.
  // oxlint-disable-next-line no-control-regex
  return program.replace(/\\?[^\0-\x7f]/g, (sign) => {
    if (sign.length > 1)
      throw new Error(`"${sign}" in a pattern cannot be written by its number: leave out the backslash`);
    return `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`;
  });
}
