// The first thing that a test run does: the Node that runs it is new enough.

export default function assertNodeVersion(): void {
  const major = Number(process.versions.node.split(".")[0]);
  if (major < 22)
    throw new Error(
      `The tests need Node 22 or newer, this is ${process.versions.node}: run them by npm test, which brings its own`,
    );
}
