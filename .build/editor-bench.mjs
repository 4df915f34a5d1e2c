// How quick the built server is, over standard input and output: start, edits, questions, memory, for documents of about 300, 2,000 and
// 10,000 lines, with the JSON server (shapes only) beside it in the same run. Prints a table; fails nothing. Node's clock, this machine.

import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { buildAll } from "./build.mjs";
import { root } from "./editor-paths.mjs";

const aims = {
  start: [300, 400, 700],
  edit: [
    [6, 25],
    [20, 60],
    [100, 200],
  ],
  ask: [
    [5, 20],
    [15, 40],
    [60, 120],
  ],
  read: [
    [6, 25],
    [20, 60],
    [120, 250],
  ],
  peak: [110, 180, 400],
};

if (!process.env.NO_BUILD) await buildAll({ only: "server" });
const { createProtocolConnection, StreamMessageReader, StreamMessageWriter } =
  await import("vscode-languageserver/node.js").catch(() => import("vscode-languageserver/node"));

/** A unit and one procedure of about so many lines. */
function text(lines) {
  const groups = Math.round((lines - 20) / 9),
    out = ['unit rig "Rig" {', "  base frame", "  positions up, down", '  part frame "Frame" { mass 40 kg }'];
  for (let i = 1; i <= groups; i++) {
    out.push(`  part p${i} "Part ${i}" { mass ${(i % 40) + 1} kg }`);
    out.push(
      `  fastener s${i} bolt "Bolts ${i}" {`,
      `    count 4  size M8x30  class 8.8  drive hex 13  torque 24 N·m`,
      `    joins p${i} to frame`,
      "  }",
    );
  }
  out.push("}", 'procedure strip "Strip" for rig {', "  aim all apart", "  crew 2");
  for (let i = 1; i <= groups; i++) {
    if (i % 5 === 1) out.push(`  step k${i} "Take part ${i} off" {`);
    const heavy = (i % 40) + 1 > 22 ? " by 2 people" : "";
    out.push(
      ...((i % 40) + 1 > 22 ? [`    support p${i}`] : []),
      `    undo s${i}  into tray A`,
      `    remove p${i}${heavy}`,
    );
    if (i % 5 === 0 || i === groups) out.push("  }");
  }
  out.push('  finish { test "Turns by hand" }', "}", "");
  return out.join("\n");
}

function json(lines) {
  const steps = Array.from({ length: Math.round(lines / 6) }, (_, i) => ({
    act: i % 2 ? "remove" : "undo",
    what: `p${i}`,
    count: i % 9,
    note: "N·m",
  }));
  return `${JSON.stringify({ $schema: "./schema.json", steps }, null, 2)}\n`;
}

async function session(command, args, folder, pull = false) {
  const started = performance.now(),
    child = spawn(command, args, { stdio: ["pipe", "pipe", "inherit"] });
  const rpc = createProtocolConnection(new StreamMessageReader(child.stdout), new StreamMessageWriter(child.stdin)),
    waiting = new Map();
  rpc.onNotification("textDocument/publishDiagnostics", (told) => {
    const one = waiting.get(told.uri);
    if (one && (told.version ?? one.version) >= one.version) {
      waiting.delete(told.uri);
      one.resolve(performance.now());
    }
  });
  for (const method of ["client/registerCapability", "workspace/configuration", "workspace/diagnostic/refresh"])
    rpc.onRequest(method, (p) => (method === "workspace/configuration" ? p.items.map(() => null) : null));
  rpc.listen();
  await rpc.sendRequest("initialize", {
    processId: process.pid,
    rootUri: pathToFileURL(folder).href,
    workspaceFolders: [{ uri: pathToFileURL(folder).href, name: "bench" }],
    capabilities: {
      textDocument: {
        ...(pull ? { diagnostic: {} } : {}),
        publishDiagnostics: { versionSupport: true, relatedInformation: true },
        documentSymbol: { hierarchicalDocumentSymbolSupport: true },
        // As the extension's client says it.
        completion: {
          completionItem: { snippetSupport: true },
          completionList: {
            itemDefaults: ["commitCharacters", "editRange", "insertTextFormat", "insertTextMode", "data"],
          },
        },
      },
    },
    initializationOptions: { provideFormatter: true },
  });
  await rpc.sendNotification("initialized", {});
  const findings = (uri, version) =>
    new Promise((resolve, reject) => {
      waiting.set(uri, { version, resolve });
      setTimeout(() => reject(new Error("no findings in 60 s")), 60_000).unref();
    });
  /** Sends something and waits for the findings that belong to it: pushed ones, or such as are asked for right after. */
  const answered = async (uri, version, send) => {
    if (pull) {
      await send();
      await rpc.sendRequest("textDocument/diagnostic", { textDocument: { uri } });
      return performance.now();
    }
    const due = findings(uri, version);
    await send();
    return await due;
  };
  return { rpc, child, started, findings, answered };
}

const share = (list, q) => [...list].sort((a, b) => a - b)[Math.min(list.length - 1, Math.floor(list.length * q))];
const both = (list) => `${share(list, 0.5).toFixed(0)}/${share(list, 0.95).toFixed(0)}`;
const memory = (pid, what) => {
  try {
    return Number(new RegExp(`${what}:\\s+(\\d+)`).exec(readFileSync(`/proc/${pid}/status`, "utf8"))[1]) / 1024;
  } catch {
    return NaN;
  }
};

async function measure(name, command, args, make, extension, methods, pull = false) {
  const row = { name, start: [], edit: [], burst: [], asked: {}, peak: [], rss100: 0, rss1000: 0 };
  for (const lines of [300, 2000, 10000]) {
    const folder = mkdtempSync(join(tmpdir(), "bench-")),
      file = join(folder, `work.${extension}`),
      uri = pathToFileURL(file).href,
      source = make(lines);
    writeFileSync(file, source);
    if (extension === "json") writeFileSync(join(folder, "schema.json"), '{"type":"object"}');
    const starts = [];
    let s;
    for (let i = 0; i < 3; i++) {
      s?.child.kill();
      s = await session(command, args, folder, pull);
      const first = await s.answered(uri, 1, () =>
        s.rpc.sendNotification("textDocument/didOpen", {
          textDocument: { uri, languageId: extension, version: 1, text: source },
        }),
      );
      starts.push(first - s.started);
    }
    row.start.push(share(starts, 0.5));
    let version = 1;
    // What is asked about is a name in an act, or the string beside it: something that there is an answer to.
    const all = source.split("\n"),
      line = Math.floor(all.length * 0.8),
      placed = all.findIndex((one, i) => i >= line && /^\s+(?:undo |"what")/.test(one)),
      position = { line: placed, character: all[placed].search(/undo |: "/) + 6 },
      edits = [],
      asked = Object.fromEntries(Object.keys(methods).map((key) => [key, []]));
    const edit = async (put) => {
      version++;
      await s.rpc.sendNotification("textDocument/didChange", {
        textDocument: { uri, version },
        contentChanges: [
          {
            range: put
              ? { start: { line, character: 0 }, end: { line, character: 0 } }
              : { start: { line, character: 0 }, end: { line, character: 1 } },
            text: put ? " " : "",
          },
        ],
      });
    };
    const rounds = lines > 5000 ? 20 : 50;
    for (let i = 0; i < 10 + rounds; i++) {
      const from = performance.now(),
        ms = (await s.answered(uri, version + 1, () => edit(i % 2 === 0))) - from;
      if (i >= 10) edits.push(ms);
    }
    row.edit.push(edits);
    for (let i = 0; i < (lines > 5000 ? 15 : 40); i++)
      for (const [key, [method, params]] of Object.entries(methods)) {
        await edit(i % 2 === 0);
        const from = performance.now();
        await s.rpc.sendRequest(method, {
          textDocument: { uri },
          position,
          ...(typeof params === "function" ? params(position) : params),
        });
        if (i >= 5) asked[key].push(performance.now() - from);
      }
    row.asked[lines] = asked;
    await new Promise((resolve) => setTimeout(resolve, 300));
    let from = 0;
    const end = await s.answered(uri, version + 20, async () => {
      for (let i = 0; i < 20; i++) {
        await edit(i % 2 === 0);
        await new Promise((resolve) => setTimeout(resolve, 5));
      }
      from = performance.now();
    });
    row.burst.push(end - from);
    if (lines === 2000) {
      for (let i = 0; i < 1000; i++) {
        await s.answered(uri, version + 1, () => edit(i % 2 === 0));
        if (i === 99) row.rss100 = memory(s.child.pid, "VmRSS");
      }
      row.rss1000 = memory(s.child.pid, "VmRSS");
    }
    row.peak.push(memory(s.child.pid, "VmHWM"));
    s.child.kill();
    rmSync(folder, { recursive: true, force: true });
  }
  return row;
}

async function library() {
  const folder = mkdtempSync(join(tmpdir(), "bench-library-")),
    lib = join(folder, "lib.strip"),
    uriOf = (name) => pathToFileURL(join(folder, name)).href;
  writeFileSync(lib, text(120).split("procedure")[0]);
  for (let i = 0; i < 200; i++)
    writeFileSync(
      join(folder, `job-${String(i).padStart(3, "0")}.strip`),
      `use "lib.strip"\nprocedure job-${i} "Job" for rig {\n  aim p1 off\n  step "Off" {\n    undo s1\n    remove p1\n  }\n}\n`,
    );
  const s = await session(process.execPath, [`${root}/dist/server.cjs`, "--stdio"], folder),
    seen = s.findings(uriOf("job-100.strip"), 1);
  await s.rpc.sendNotification("textDocument/didOpen", {
    textDocument: { uri: uriOf("lib.strip"), languageId: "strip", version: 1, text: readFileSync(lib, "utf8") },
  });
  await s.rpc.sendNotification("textDocument/didOpen", {
    textDocument: {
      uri: uriOf("job-100.strip"),
      languageId: "strip",
      version: 1,
      text: readFileSync(join(folder, "job-100.strip"), "utf8"),
    },
  });
  await seen;
  await new Promise((resolve) => setTimeout(resolve, 3000));
  const from = performance.now(),
    visible = s.findings(uriOf("job-100.strip"), 1),
    last = s.findings(uriOf("job-199.strip"), 1);
  const changed = readFileSync(lib, "utf8").replace("joins p1 to frame", "joins p1 to frame  behind p2");
  await s.rpc.sendNotification("textDocument/didChange", {
    textDocument: { uri: uriOf("lib.strip"), version: 2 },
    contentChanges: [{ text: changed }],
  });
  const first = (await visible) - from,
    all = (await last) - from;
  s.child.kill();
  rmSync(folder, { recursive: true, force: true });
  return { first, all };
}

const ours = {
  completion: ["textDocument/completion", {}],
  hover: ["textDocument/hover", {}],
  definition: ["textDocument/definition", {}],
  references: ["textDocument/references", { context: { includeDeclaration: true } }],
  rename: ["textDocument/rename", { newName: "another-name" }],
  remedies: ["textDocument/codeAction", (start) => ({ range: { start, end: start }, context: { diagnostics: [] } })],
  symbols: ["textDocument/documentSymbol", {}],
  colours: ["textDocument/semanticTokens/full", {}],
  folding: ["textDocument/foldingRange", {}],
  layout: ["textDocument/formatting", { options: { tabSize: 2, insertSpaces: true } }],
};
const quick = ["completion", "hover", "definition", "references", "rename", "remedies"];
// Started and asked as the extension does it: findings are pulled, without the wait that joins a burst of keys where they are pushed.
const server = ["--max-semi-space-size=8", `${root}/dist/server.cjs`, "--stdio"];
show(await measure("Stripdown", process.execPath, server, text, "strip", ours, true));
const jsonServer =
  process.env.JSON_SERVER ??
  `${root}/.editor/json/node_modules/vscode-langservers-extracted/bin/vscode-json-language-server`;
if (existsSync(jsonServer)) {
  const { completion, hover, symbols, folding, layout } = ours;
  show(
    await measure(
      "JSON server (shapes only)",
      process.execPath,
      [jsonServer, "--stdio"],
      json,
      "json",
      { completion, hover, symbols, folding, layout },
      true,
    ),
  );
} else console.log("No JSON server: npm run editor:install brings it");

function show(row) {
  console.log(`\n${row.name}, in ms (p50/p95); in brackets what is aimed at for 300, 2,000 and 10,000 lines`);
  const aim = (list) => (list ? `[${list.map((one) => (Array.isArray(one) ? one.join("/") : one)).join(", ")}]` : "");
  const line = (what, values, goal) =>
    console.log(`  ${what.padEnd(18)} ${values.map((value) => String(value).padStart(10)).join("")}   ${aim(goal)}`);
  line(
    "start to findings",
    row.start.map((ms) => ms.toFixed(0)),
    aims.start,
  );
  line("edit to findings", row.edit.map(both), aims.edit);
  line(
    "burst of 20 keys",
    row.burst.map((ms) => ms.toFixed(0)),
    [150, 150, 150],
  );
  for (const key of Object.keys(row.asked[300]))
    line(
      key,
      [300, 2000, 10000].map((lines) => both(row.asked[lines][key])),
      quick.includes(key) ? aims.ask : aims.read,
    );
  line(
    "peak MB",
    row.peak.map((mb) => mb.toFixed(0)),
    aims.peak,
  );
  line("10,000 to 2,000", [`${(share(row.edit[2], 0.5) / share(row.edit[1], 0.5)).toFixed(1)} x`], ["under 8"]);
  line("1,000 edits to 100", [`${((row.rss1000 / row.rss100 - 1) * 100).toFixed(0)} %`], ["within 20 %"]);
}

const { first, all } = await library();
console.log(
  `\nA library that 200 procedures use: the visible file after ${first.toFixed(0)} ms, all after ${all.toFixed(0)} ms [1,000]`,
);
process.exit(0);
