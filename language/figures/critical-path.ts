// Critical path of tasks with what must come before each: earliest finish, slack, and the tasks that decide the total.
// It plans with people without number; sharing a hoist or two pairs of hands is another question.

/** A task by name with its time and the names of the tasks before it. */
export interface PathTask {
  readonly name: string;
  readonly time: number;
  readonly after: readonly string[];
}

/** The path; times in the unit of the tasks. */
export interface CriticalPath {
  readonly total: number;
  /** Tasks without slack, in the order given. */
  readonly critical: readonly string[];
  readonly earlyFinish: ReadonlyMap<string, number>;
  readonly slack: ReadonlyMap<string, number>;
}

/**
 * Critical path by the forward and the backward pass. Units: any, the same. Undefined where the tasks run in a ring or name one that is not there.
 * Source: critical path method, textbook (Taylor, Introduction to Management Science).
 */
export function criticalPath(tasks: readonly PathTask[]): CriticalPath | undefined {
  const byName = new Map(tasks.map((task) => [task.name, task]));
  const waiting = new Map(tasks.map((task) => [task.name, task.after.length]));
  const followers = new Map<string, PathTask[]>(tasks.map((task) => [task.name, []]));
  for (const task of tasks) {
    for (const before of task.after) {
      if (!byName.has(before)) return undefined;
      followers.get(before)!.push(task);
    }
  }
  const order: PathTask[] = tasks.filter((task) => task.after.length === 0);
  const earlyFinish = new Map<string, number>();
  for (let at = 0; at < order.length; at++) {
    const task = order[at]!;
    earlyFinish.set(task.name, task.time + Math.max(0, ...task.after.map((before) => earlyFinish.get(before)!)));
    for (const next of followers.get(task.name)!) {
      const left = waiting.get(next.name)! - 1;
      waiting.set(next.name, left);
      if (left === 0) order.push(next);
    }
  }
  if (order.length < tasks.length) return undefined;
  const total = Math.max(0, ...earlyFinish.values());
  const lateFinish = new Map<string, number>();
  for (const task of [...order].reverse()) {
    lateFinish.set(
      task.name,
      Math.min(total, ...followers.get(task.name)!.map((next) => lateFinish.get(next.name)! - next.time)),
    );
  }
  const slack = new Map(tasks.map((task) => [task.name, lateFinish.get(task.name)! - earlyFinish.get(task.name)!]));
  return {
    total,
    critical: tasks
      .filter((task) => Math.abs(slack.get(task.name)!) < 1e-9 * Math.max(1, total))
      .map((task) => task.name),
    earlyFinish,
    slack,
  };
}
