// Blocks, text blocks and runs of comments that fold; and selections that grow from word to line to block.

import { FoldingRangeKind, type FoldingRange, type SelectionRange } from "vscode-languageserver";
import { eachItem, placeAt } from "../../language/index.ts";
import { feature } from "../feature.ts";

export default feature({
  name: "folding",
  abilities: () => ({ foldingRangeProvider: true, selectionRangeProvider: true }),
  start(session, answer) {
    session.connection.onFoldingRanges(
      answer("Folding", ({ textDocument: { uri } }): FoldingRange[] => {
        const looked = session.see(uri),
          found: FoldingRange[] = [];
        if (!looked) return [];
        const {
          items,
          scan: { tokens, comments },
        } = looked.file.tree;
        eachItem(items, (item) => {
          if (!item.block || item.block.last <= item.block.first) return;
          const open = tokens[item.block.first]!,
            close = tokens[item.block.last]!;
          // The closing brace stays in sight.
          if (close.line - 1 > open.line)
            found.push({
              startLine: open.line,
              endLine: close.text === "}" && !close.invented ? close.line - 1 : close.endLine,
            });
        });
        for (const token of tokens)
          if (token.endLine > token.line) found.push({ startLine: token.line, endLine: token.endLine });
        for (let i = 0; i < comments.length; i++) {
          let last = i;
          while (
            comments[i]!.ownLine &&
            comments[last + 1]?.ownLine &&
            comments[last + 1]!.line === comments[last]!.line + 1
          )
            last++;
          if (last > i)
            found.push({ startLine: comments[i]!.line, endLine: comments[last]!.line, kind: FoldingRangeKind.Comment });
          i = last;
        }
        return found;
      }),
    );
    session.connection.onSelectionRanges(
      answer("Selection", ({ textDocument: { uri }, positions }): SelectionRange[] => {
        const looked = session.see(uri);
        if (!looked) return [];
        const { file, checked, path } = looked,
          { tokens } = file.tree.scan;
        return positions.map((position): SelectionRange => {
          const { path: items, token } = placeAt(file.tree, session.offset(file, position)),
            spans: [number, number][] = [[0, file.text.length]];
          for (const item of items) {
            spans.push([tokens[item.first]!.startOffset, tokens[item.last]!.endOffset! + 1]);
            if (item.block && item.block.last > item.block.first && token && token.index > item.block.first)
              spans.push([tokens[item.block.first]!.endOffset! + 1, tokens[item.block.last]!.startOffset]);
          }
          const argument = items[items.length - 1]?.arguments.find(
            (one) => token && one.first <= token.index && token.index <= one.last,
          );
          if (argument) spans.push([tokens[argument.first]!.startOffset, tokens[argument.last]!.endOffset! + 1]);
          if (token) spans.push([token.startOffset, token.endOffset! + 1]);
          let range: SelectionRange | undefined;
          for (const [start, end] of spans) {
            const next = session.range(checked, { file: path, start, end });
            if (range && JSON.stringify(range.range) === JSON.stringify(next)) continue;
            range = range ? { range: next, parent: range } : { range: next };
          }
          return range!;
        });
      }),
    );
  },
});
