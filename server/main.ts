// The server as a Node process: over IPC, or over standard input and output with --stdio.

import { readdirSync, readFileSync, realpathSync, statSync } from "node:fs";
import { createConnection, ProposedFeatures } from "vscode-languageserver/node";
import { serve } from "./server.ts";
import type { Disk } from "./workspace.ts";

const disk: Disk = {
  readText(path) {
    try {
      const text = readFileSync(path, "utf8");
      return text.includes("\0") ? { problem: "unreadable", says: "it is no text file" } : { text };
    } catch (error) {
      return (error as NodeJS.ErrnoException).code === "ENOENT" ? { problem: "missing" } : { problem: "unreadable", says: "it cannot be opened" };
    }
  },
  isFile: (path) => { try { return statSync(path).isFile(); } catch { return false; } },
  real(path) { try { return realpathSync.native(path); } catch { return path; } },
  list(folder) {
    const found: string[] = [], queue = [folder];
    for (const here of queue) {
      let entries;
      try { entries = readdirSync(here, { withFileTypes: true }); } catch { continue; }
      for (const entry of entries) {
        if (entry.isDirectory() && entry.name !== "node_modules" && !entry.name.startsWith(".")) queue.push(`${here}/${entry.name}`);
        else if (entry.isFile() && entry.name.endsWith(".strip")) found.push(`${here}/${entry.name}`);
      }
    }
    return found.sort();
  },
};

serve(createConnection(ProposedFeatures.all), disk);
