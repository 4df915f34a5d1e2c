// A torque is to come from a table that has no row for the thread, or the fastener has no size to look up.

import type { Tie } from "../../model/model.ts";
import { check } from "../check.ts";

export default check({
  code: "fastener/torque-not-in-table",
  title: "The torque table has no such thread",
  severity: "warning",
  why: "The line says that there is a torque, and the manual can print none: the reader tightens by feel where somebody meant a figure.",
  source: "common practice",
  fails: `
    torque-table dry "Dry" { size M6 9 N·m }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M8x20  torque standard dry  joins lid to foot }
    #                                                               ^^^^^^^^^^^^^^^^^^^ Lid screws: the table Dry has no torque for M8
    }
  `,
  mended: `
    torque-table dry "Dry" { size M6 9 N·m  size M8 22 N·m }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M8x20  torque standard dry  joins lid to foot }
    }
  `,
  model(model, say) {
    for (const tie of model.ties)
      for (const torque of tie.torques) {
        const table =
          torque.is === "standard" && torque.table !== undefined
            ? model.library.torqueTables.get(torque.table)
            : undefined;
        // A standing table is a wish for what it holds; only a fastener that names it must find its row.
        if (!table || torque.value || torque.at.start === tie.at.start) continue;
        say({
          at: torque.at,
          because: [
            {
              says: `${table.name || torque.table} has ${table.rows.length === 1 ? "1 row" : `${table.rows.length} rows`}`,
              at: table.at,
            },
          ],
          says: tie.size
            ? `${tie.name}: the table ${table.name || torque.table} has no torque for ${threadOf(tie)}`
            : `${tie.name} ${tie.count > 1 ? "have" : "has"} no size to look up in the table ${table.name || torque.table}`,
        });
      }
  },
});

/** The thread as a table names it. */
const threadOf = ({ size }: Tie): string => size!.designation;
