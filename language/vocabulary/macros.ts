// Shapes that several words share, each a shape itself. Only their spelling lives here; shapes.ts in `syntax` gives them meaning.
//
// Notation: word = itself; <id> = a name that is declared here; <name> <label> <string> <count> <thread> <timecode> <item> = one
// token (an item: lid, cap.3); <kind:part> = a word of a closed list; <torque> … <any> = a quantity of that dimension;
// [ ] may be missing; ( a | b ) one of them; ( )* any number of times; ',' = that sign.

export const macros: Readonly<Record<string, string>> = {
  ids: "<id> (',' <id>)*",
  names: "<name> (',' <name>)*",
  items: "<item> (',' <item>)*",
  labels: "<label> (',' <label>)*",
  some: "(<count> of <items> | rest of <items> | <items>)",
  manner:
    "(with <name> | into (tray <label> | bag <label> | <name>) | passes <count> | by <count> people | together | <place> | <string>)*",
  place: "(after <items> | before <items> | first | last)",
  reading: "(at [least | most] <any> | with <name> | as found | <else> | <place>)*",
  else: "else (renew <items> | choose <items> from <choice> (',' <choice>)* | repeat from <name> | scrap <items> | <string>)",
  choice: "(<name> | <figure> [<unit:length>])",
  state: "<item> [fails | removed]",
  condition: "<state> ((and <state>)* | (or <state>)*)",
  variant: "<id> [<string>]",
  span: "(<number> ('..' <number> | (',' <number>)*) | <names>)",
};

/** Words that hide a name where they stand, so that nothing may be declared by such a name. */
export const reservedNames: ReadonlySet<string> = new Set(["all", "none", "rest", "each", "on", "to", "tray", "bag"]);
