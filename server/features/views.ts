// What the client's views ask: the bench at a place, what undoes a step, the diagram of a strip, the manual with the places of its source.

import {
  benchView,
  manualPage,
  momentAt,
  ownPerformances,
  performanceAt,
  stepRefits,
  stripDiagram,
  type BenchView,
  type Span,
} from "../../language/index.ts";
import {
  benchRequest,
  manualRequest,
  refitOfStepRequest,
  stripDiagramRequest,
  type AtPlace,
  type BenchAnswer,
  type BenchItem,
  type BenchSection,
  type ManualAnswer,
  type ManualParams,
  type RefitOfStepAnswer,
  type StripDiagramAnswer,
} from "../../shared/protocol.ts";
import { feature } from "../feature.ts";
import { paperOptions } from "../papers.ts";
import { picturesFor } from "../pictures.ts";
import type { Acting, Session } from "../session.ts";

export default feature({
  name: "views",
  start(session, answer) {
    const { connection } = session;
    connection.onRequest(
      benchRequest,
      answer("The bench", ({ uri, position }: AtPlace): BenchAnswer | null => {
        const looked = session.watch(uri),
          moment = looked && momentAt(looked.checked, looked.path, session.offset(looked.file, position));
        return looked && moment ? benchAnswer(session, looked, benchView(moment)) : null;
      }),
    );
    connection.onRequest(
      refitOfStepRequest,
      answer("The refit of a step", ({ uri, position }: AtPlace): RefitOfStepAnswer | null => {
        const looked = session.watch(uri);
        if (!looked) return null;
        const offset = session.offset(looked.file, position),
          performance = performanceAt(looked.checked, looked.path, offset);
        const steps = performance
            ? stepRefits(performance, session.units(looked.project)).filter(
                ({ at }) => at.file === looked.path && at.start <= offset,
              )
            : [],
          step = steps.reduce<(typeof steps)[number] | undefined>(
            (best, one) => (!best || one.at.start >= best.at.start ? one : best),
            undefined,
          );
        return step
          ? {
              step: step.title,
              groups: step.groups,
              lines: step.lines.map(({ id, says, at }) => ({ id, says, spot: session.spot(looked.checked, at) })),
            }
          : null;
      }),
    );
    connection.onRequest(
      stripDiagramRequest,
      answer("The diagram", ({ uri, position }: AtPlace): StripDiagramAnswer | null => {
        const looked = session.watch(uri);
        if (!looked) return null;
        const performance =
          performanceAt(looked.checked, looked.path, session.offset(looked.file, position)) ??
          ownPerformances(looked.checked, looked.path)[0];
        if (!performance) return null;
        const { title, rows, nodes } = stripDiagram(performance);
        return {
          title,
          rows,
          nodes: nodes.map(({ at, ...node }) => ({ ...node, spot: session.spot(looked.checked, at) })),
        };
      }),
    );
    connection.onRequest(
      manualRequest,
      answer("The manual", ({ uri, pictures: allowed }: ManualParams): ManualAnswer | null => {
        const looked = session.look(uri);
        if (!looked) return null;
        const { checked, path, project } = looked,
          { picture, uris } = picturesFor(session.files, project.folder, allowed),
          page = manualPage(checked, path, { ...paperOptions(session, project, session.editor.manual), picture });
        return page
          ? {
              ...page,
              marks: page.marks.map(({ id, at }) => ({ id, spot: session.spot(checked, at) })),
              pictures: uris,
            }
          : null;
      }),
    );
  },
});

function benchAnswer(session: Session, { checked }: Acting, view: BenchView): BenchAnswer {
  const line = (at: Span): string => `${session.range(checked, at).start.line + 1}`,
    item = (name: string, detail: string, at: Span): BenchItem => ({ name, detail, spot: session.spot(checked, at) });
  const isHeld = new Set(view.held.map(({ id }) => id)),
    isAside = new Set(view.aside.map(({ id }) => id)),
    taken = (by: Span | undefined, tray: string): string =>
      [tray, by ? `line ${line(by)}` : ""].filter(Boolean).join(", ");
  // What can hurt stands above the long lists.
  const sections: BenchSection[] = [
    {
      id: "lapsed",
      title: "Precautions that have ended",
      items: view.lapsed.map((one) => item(one.name, "take them again", one.at)),
    },
    {
      id: "precautions",
      title: "Precautions taken",
      items: view.precautions.map((one) =>
        item(`${one.kind}: ${one.hazard}`, one.by ? `line ${line(one.by)}` : "before this procedure", one.at),
      ),
    },
    {
      id: "held",
      title: "Still in",
      items: view.ties.map((tie) =>
        item(tie.name, [tie.of > 1 ? `${tie.in} of ${tie.of} in` : "in", tie.slack].filter(Boolean).join(", "), tie.at),
      ),
    },
    {
      id: "on",
      title: "On",
      items: view.on.map((part) =>
        item(
          part.name,
          [isHeld.has(part.id) ? "held" : "", isAside.has(part.id) ? "aside" : ""].filter(Boolean).join(", "),
          part.at,
        ),
      ),
    },
    { id: "away", title: "Off", items: view.away.map((part) => item(part.name, taken(part.by, part.tray), part.at)) },
    { id: "tray", title: "Out", items: view.tiesOut.map((tie) => item(tie.name, taken(tie.by, tie.tray), tie.at)) },
    { id: "fluids", title: "Fluids", items: view.fluids.map((fluid) => item(fluid.name, fluid.is, fluid.at)) },
    { id: "temporary", title: "Put on for the work", items: view.temporaries.map((one) => item(one.name, "", one.at)) },
  ];
  return {
    procedure: view.procedure,
    unit: view.unit,
    build: view.build,
    step: view.step,
    line: view.at && Number(line(view.at)),
    position: view.position,
    sections: sections.filter(({ items }) => items.length > 0),
    notConsidered: view.notConsidered,
    assumes: view.assumes,
  };
}
