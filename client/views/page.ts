// The frame of every view that shows markup: a strict policy, one script of ours with a nonce, styles of ours, nothing from elsewhere.

import { Uri, type Webview } from "vscode";

export interface Page {
  readonly title: string;
  readonly body: string;
  readonly style: string;
  readonly script: string;
  readonly styleSheet: string;
}

/** `body` and `style` are of our own making; `script` and `styleSheet` name files of the package. */
export function pageFor(webview: Webview, extension: Uri, page: Page): string {
  const nonce = newNonce(),
    file = (name: string): string =>
      webview.asWebviewUri(Uri.joinPath(extension, "client", "webview", name)).toString();
  const policy = `default-src 'none'; img-src data: ${webview.cspSource}; style-src ${webview.cspSource} 'nonce-${nonce}'; script-src 'nonce-${nonce}'; base-uri 'none'; form-action 'none'`;
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(page.title)}</title>
<style nonce="${nonce}">${page.style}</style>
<link rel="stylesheet" href="${file(page.styleSheet)}">
</head>
<body>
${page.body}
<script nonce="${nonce}" src="${file(page.script)}"></script>
</body>
</html>`;
}

export const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

function newNonce(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(18));
  return btoa(String.fromCharCode(...bytes));
}
