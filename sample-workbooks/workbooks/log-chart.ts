import { type ChartLine, type LineChart } from "../xlsx/spec";
import { absoluteCells } from "./log-questions";

/** Feed and runoff of the whole log in one chart, by date. `last` is the log's last row, counted from 1. */
export function logChart(what: "EC" | "pH", last: number, at: string): LineChart {
  const line = (header: "Feed EC" | "Runoff EC" | "Feed pH" | "Runoff pH", look: ChartLine["look"]): ChartLine => ({
    name: absoluteCells(header, { first: 1, last: 1 }),
    cells: absoluteCells(header, { first: 2, last }),
    look,
  });
  return {
    at,
    title: `${what} of feed and runoff`,
    alternative: `Line chart of feed ${what} (dashed) and runoff ${what} (solid) over the days of the log`,
    across: { cells: absoluteCells("Date", { first: 2, last }), title: "Date", format: "d mmm", dates: true },
    unit: what === "EC" ? "mS/cm at 25 C" : "pH",
    ...(what === "pH" ? { between: [4, 8] } : {}),
    lines: [line(`Runoff ${what}`, "read"), line(`Feed ${what}`, "given")],
  };
}
