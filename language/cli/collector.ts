// A word to Node's collector, said once, by the import: no object is put among the old ones before it has grown old. A run over many
// files makes each model, performs it and drops it. The collector learns from the first of them that such objects live long, makes
// those of later files old from birth, and then takes all that the dead ones lead to for alive: a seventh of the time and a third of
// the memory of a check of a thousand files.

import { setFlagsFromString } from "node:v8";

setFlagsFromString("--no-allocation-site-pretenuring");
