// The server as a Node process: over IPC, or over standard input and output with --stdio.

import { createConnection, ProposedFeatures } from "vscode-languageserver/node";
import { disk } from "./disk.ts";
import { keepSmall } from "./memory.ts";
import { serve } from "./server.ts";

keepSmall();
serve(createConnection(ProposedFeatures.all), disk);
