// The server as a Node process: over IPC, or over standard input and output with --stdio.

import { createConnection, ProposedFeatures } from "vscode-languageserver/node";
import { disk } from "./disk.ts";
import { roomByTexts } from "./memory.ts";
import { serve } from "./server.ts";

const room = roomByTexts(),
  session = serve(createConnection(ProposedFeatures.all), room.counting(disk));
session.onChange.push(() => room.open(session.documents));
