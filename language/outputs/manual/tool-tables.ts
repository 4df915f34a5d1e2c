// The tools of a procedure as tables: plain data.

export interface ToolRow {
  readonly name: string;
  readonly note: string;
  readonly for: readonly string[];
}
export interface WrenchRow {
  readonly name: string;
  readonly range: string;
  readonly accuracy: string;
  readonly calibration: string;
  readonly for: readonly string[];
}
export interface LiftRow {
  readonly load: string;
  readonly mass: string;
  readonly gear: string;
  readonly capacity: string;
  readonly people: string;
  readonly line: string;
}

export interface ToolTables {
  readonly spanners: readonly ToolRow[];
  readonly wrenches: readonly WrenchRow[];
  /** Torques that no wrench of the list covers. */
  readonly uncovered: readonly { readonly torque: string; readonly for: string }[];
  readonly lifts: readonly LiftRow[];
  readonly others: readonly ToolRow[];
  readonly wear: readonly string[];
}
