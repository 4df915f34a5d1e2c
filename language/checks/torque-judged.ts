// Every torque of a model that can be held against its thread: size, class and a value are given. What cannot be reckoned is left out.

import { assessTorque, type TighteningQuestion, type TorqueAssessment } from "../figures/tightening.ts";
import { isFigureError, type FigureError } from "../figures/figure.ts";
import type { Model, Tie, Torque } from "../model/model.ts";
import type { BenchContext } from "./check.ts";
import type { Assumptions } from "../figures/assumptions.ts";
import { bySpelling, kept } from "../model/kept.ts";
import { assumptionsOf, highest } from "./sums.ts";

export interface JudgedTorque {
  readonly tie: Tie;
  readonly torque: Torque;
  readonly judged: TorqueAssessment;
}

/** What a torque of this fastener is asked with; undefined where size or class is not given. */
export function torqueQuestion(tie: Tie): TighteningQuestion | undefined {
  const className = tie.propertyClass ?? tie.grade,
    friction = tie.figures.get("friction");
  if (!tie.size || className === undefined) return undefined;
  return {
    size: tie.size,
    className,
    head: tie.drive?.kind === "hex-socket" ? "socket-cap" : "hex",
    ...(typeof friction === "number" ? { frictionThread: friction, frictionHead: friction } : {}),
  };
}

const judgedIn = kept<Model, Map<Assumptions, readonly JudgedTorque[]>>();

/** In the order of the ties. Worked out once a model: several checks ask. */
export function judgedTorques(model: Model, context: Pick<BenchContext, "settings">): readonly JudgedTorque[] {
  const assumptions = assumptionsOf(context.settings),
    known = judgedIn(model, () => new Map());
  let judged = known.get(assumptions);
  if (!judged) known.set(assumptions, (judged = judge(model, assumptions)));
  return judged;
}

type Assess = (spelled: string, torque: number, question: TighteningQuestion) => TorqueAssessment | FigureError;
const assessments = kept<Assumptions, Assess>();

/** Shops use few screws: one torque on one thread is reckoned once for all the files of a run. */
function assessed(torque: number, question: TighteningQuestion, assumptions: Assumptions): ReturnType<Assess> {
  const assess = assessments(assumptions, () =>
      bySpelling((_, torque, question: TighteningQuestion) => assessTorque(torque, question, assumptions)),
    ),
    { size, className, head, frictionThread = "" } = question;
  return assess(`${torque} ${size.designation} ${className} ${head} ${frictionThread}`, torque, question);
}

function judge(model: Model, assumptions: Assumptions): JudgedTorque[] {
  const found: JudgedTorque[] = [];
  for (const tie of model.ties) {
    const question = torqueQuestion(tie);
    if (!tie.fastener || !question) continue;
    for (const torque of tie.torques) {
      if (!torque.value) continue;
      const judged = assessed(highest(torque.value), question, assumptions);
      if (!isFigureError(judged)) found.push({ tie, torque, judged });
    }
  }
  return found;
}
