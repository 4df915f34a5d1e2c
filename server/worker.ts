// The server in a browser's worker. It has no disk: the client sends the texts of its folders.

import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from "vscode-languageserver/browser";
import { serve } from "./server.ts";

type WorkerScope = ConstructorParameters<typeof BrowserMessageReader>[0];
const scope = globalThis as unknown as WorkerScope;

serve(
  createConnection(ProposedFeatures.all, new BrowserMessageReader(scope), new BrowserMessageWriter(scope)),
  undefined,
);
