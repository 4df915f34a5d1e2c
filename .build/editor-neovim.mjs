// Neovim's built-in client (0.7 or later) against the server over standard input and output: findings, hover, a remedy.

import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { root } from "./editor-paths.mjs";

const text = `unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid" { mass 2 kg }
  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
}
procedure strip "Strip" for box {
  aim lid off
  step "Lid off" {
    remove lid
  }
}
`;

const script = (file, folder) => `
local function out(name, value) io.stdout:write(name .. '=' .. vim.fn.json_encode(value) .. '\\n') end
vim.cmd('edit ' .. '${file}')
local id = vim.lsp.start_client({ cmd = { '${process.execPath}', '${root}/dist/server.cjs', '--stdio' }, root_dir = '${folder}', name = 'stripdown' })
vim.lsp.buf_attach_client(0, id)
vim.wait(10000, function() return #vim.diagnostic.get(0) > 0 end, 20)
local found = vim.diagnostic.get(0)
out('findings', vim.tbl_map(function(d) return d.message end, found))
local function ask(method, params) local r = vim.lsp.buf_request_sync(0, method, params, 5000); for _, one in pairs(r or {}) do return one.result end end
local at = { textDocument = vim.lsp.util.make_text_document_params(0), position = { line = 9, character = 12 } }
out('hover', ask('textDocument/hover', at))
local actions = ask('textDocument/codeAction', { textDocument = at.textDocument, range = { start = at.position, ['end'] = at.position }, context = { diagnostics = {} } })
vim.lsp.util.apply_workspace_edit(actions[1].edit, 'utf-16')
vim.wait(10000, function() return #vim.diagnostic.get(0) == 0 end, 20)
out('after', vim.tbl_map(function(d) return d.message end, vim.diagnostic.get(0)))
out('line', vim.api.nvim_buf_get_lines(0, 9, 10, false)[1])
vim.cmd('qa!')
`;

/** Results like those of the editor tests; one failed result where there is no Neovim and CI asks for it. */
export async function neovimTest() {
  const folder = mkdtempSync(join(tmpdir(), "neovim-")),
    file = join(folder, "box.strip"),
    lua = join(folder, "check.lua"),
    name = "Neovim's own client: findings, hover, and a remedy that clears them";
  writeFileSync(file, text);
  writeFileSync(lua, script(file, folder));
  try {
    const said = await new Promise((resolve, reject) =>
      execFile(
        "nvim",
        ["--headless", "-u", "NONE", "-c", `luafile ${lua}`],
        { timeout: 60_000 },
        (error, stdout, stderr) => (error ? reject(error) : resolve(stdout + stderr)),
      ),
    );
    const value = (key) => JSON.parse(new RegExp(`^.*?${key}=(.*)$`, "m").exec(said)?.[1] ?? "null");
    const faults = [
      ...(String(value("findings")).includes("Lid cannot come off: still held by 4 of 4 Lid screws")
        ? []
        : [`findings: ${value("findings")}`]),
      ...(JSON.stringify(value("hover")).includes("2 kg") ? [] : [`hover: ${JSON.stringify(value("hover"))}`]),
      ...(JSON.stringify(value("after")) === "[]" || JSON.stringify(value("after")) === "{}"
        ? []
        : [`after the remedy: ${JSON.stringify(value("after"))}`]),
      ...(value("line") === "    undo lid-screws" ? [] : [`line: ${value("line")}`]),
    ];
    return [faults.length === 0 ? { name } : { name, error: `${faults.join("\n")}\n${said}` }];
  } catch (error) {
    // Where Neovim is not installed nothing is claimed of it.
    return error.code === "ENOENT" ? [] : [{ name, error: String(error) }];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
