// Writes a commented file to begin with.

import { resolve } from "node:path";
import { CannotRun, command } from "../command.ts";
import { shownFrom, writeNew } from "../files.ts";
import { isOn } from "../project-run.ts";
import { starter } from "../starter.ts";

export default command({
  name: "new",
  summary: "Write a commented file to begin with: a small invented machine and its procedure",
  usage: "new FILE",
  example: "stripdown new pump.strip",
  options: [
    { name: "force", about: "Write over a file that is there already" },
    { name: "quiet", about: "Do not say what was written" },
  ],
  async run(args, io) {
    const [name, ...more] = args.positionals;
    if (name === undefined || more.length > 0)
      throw new CannotRun("new needs the name of one file, such as pump.strip");
    if (!name.endsWith(".strip")) throw new CannotRun(`${name}: the name of a procedure's file ends in .strip`);
    const cwd = io.cwd ?? process.cwd(),
      path = resolve(cwd, name),
      shown = shownFrom(cwd)(path);
    writeNew(path, starter, isOn(args, "force"), shown);
    if (!isOn(args, "quiet")) io.out(`Written: ${shown}. Next: stripdown check ${shown}\n`);
    return 0;
  },
});
