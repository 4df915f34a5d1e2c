// Which Node the command line runs on: the one place that says so beside `engines` in package.json.

const oldest = 22;

/** @returns what is wrong and what to do, or undefined where the version is new enough. */
export function tooOld(version: string): string | undefined {
  const major = Number.parseInt(version, 10);
  return major >= oldest
    ? undefined
    : `Stripdown needs Node ${oldest} or newer, and this is Node ${version}: install a newer one, or in the project's own folder write node_modules/.bin/node for node`;
}
