// Which procedure does which: `do` and `refit by`, in both directions.

import {
  SymbolKind,
  type CallHierarchyIncomingCall,
  type CallHierarchyItem,
  type CallHierarchyOutgoingCall,
  type Range,
} from "vscode-languageserver";
import { mentionAt, mentionsIn, mentionsOf, type Declaration, type Mention } from "../../language/index.ts";
import { feature } from "../feature.ts";
import type { Session, WithTexts } from "../session.ts";

export default feature({
  name: "calls",
  abilities: () => ({ callHierarchyProvider: true }),
  start(session, answer) {
    const { connection } = session;
    connection.languages.callHierarchy.onPrepare(
      answer("Calls", ({ textDocument: { uri }, position }): CallHierarchyItem[] => {
        const looked = session.see(uri, true),
          here = looked && mentionAt(looked.checked.project, looked.file, session.offset(looked.file, position));
        const declared =
          here?.word === "procedure"
            ? declarationOf(looked!.checked, here.symbol)
            : looked && around(looked.checked, looked.path, session.offset(looked.file, position));
        return declared ? [item(session, looked!.checked, declared)] : [];
      }),
    );
    connection.languages.callHierarchy.onIncomingCalls(
      answer("Calls", ({ item: { uri, data } }): CallHierarchyIncomingCall[] => {
        const looked = session.see(uri, true),
          from = new Map<Declaration, Range[]>();
        if (!looked) return [];
        for (const mention of mentionsOf(looked.checked.project, String(data))) {
          const caller = isCall(mention) ? around(looked.checked, mention.file, mention.start) : undefined;
          if (caller)
            from.set(caller, [
              ...(from.get(caller) ?? []),
              session.range(looked.checked, { file: mention.file, start: mention.start, end: mention.end }),
            ]);
        }
        return [...from].map(([caller, fromRanges]) => ({ from: item(session, looked.checked, caller), fromRanges }));
      }),
    );
    connection.languages.callHierarchy.onOutgoingCalls(
      answer("Calls", ({ item: { uri, data } }): CallHierarchyOutgoingCall[] => {
        const looked = session.see(uri, true),
          caller = looked && declarationOf(looked.checked, String(data)),
          to = new Map<Declaration, Range[]>();
        if (!looked || !caller) return [];
        const file = looked.checked.project.files.get(caller.file)!,
          [start, end] = wholeOf(looked.checked, caller);
        for (const mention of mentionsIn(looked.checked.project, file)) {
          const called =
            isCall(mention) && mention.start >= start && mention.end <= end
              ? declarationOf(looked.checked, mention.symbol)
              : undefined;
          if (called)
            to.set(called, [
              ...(to.get(called) ?? []),
              session.range(looked.checked, { file: mention.file, start: mention.start, end: mention.end }),
            ]);
        }
        return [...to].map(([called, fromRanges]) => ({ to: item(session, looked.checked, called), fromRanges }));
      }),
    );
  },
});

const isCall = ({ role, word, item: { entry } }: Mention): boolean =>
  role !== "declared" &&
  word === "procedure" &&
  (entry?.word === "do" || entry?.word === "refit" || entry?.word === "needs");
const symbolOf = (one: Declaration): string => `${one.file}#${one.word} ${one.id}`;

function declarationOf(checked: WithTexts, symbol: string): Declaration | undefined {
  for (const file of checked.project.files.values())
    for (const one of file.declarations) if (one.word === "procedure" && symbolOf(one) === symbol) return one;
  return undefined;
}

function wholeOf(checked: WithTexts, { file, item: { first, last } }: Declaration): [number, number] {
  const { tokens } = checked.project.files.get(file)!.tree.scan;
  return [tokens[first]!.startOffset, tokens[last]!.endOffset! + 1];
}

const around = (checked: WithTexts, path: string, offset: number): Declaration | undefined =>
  checked.project.files.get(path)?.declarations.find((one) => {
    if (one.word !== "procedure") return false;
    const [start, end] = wholeOf(checked, one);
    return start <= offset && offset <= end;
  });

function item(session: Session, checked: WithTexts, one: Declaration): CallHierarchyItem {
  const [start, end] = wholeOf(checked, one),
    { uri, range } = session.location(checked, { file: one.file, start, end });
  return {
    name: one.id,
    detail: one.name === one.id ? "" : one.name,
    kind: SymbolKind.Function,
    uri,
    range,
    selectionRange: session.range(checked, one.at),
    data: symbolOf(one),
  };
}
