import { cpus, loadavg } from "node:os";
import { type BenchResult } from "./measure";

/** A bench by its name, with what it measured. */
export interface Measured extends BenchResult {
  readonly name: string;
}

export const figureOf = ({ figure, unit }: BenchResult): string => (Number.isNaN(figure) ? "-" : `${Number(figure.toPrecision(3))} ${unit}`);

export const verdictOf = ({ figure, aim }: BenchResult): string => (Number.isNaN(figure) ? "not measured" : figure <= aim ? "reached" : "MISSED");

/** docs/performance.md: what was measured, on what kind of machine. */
export function performancePage(measured: readonly Measured[]): string {
  const [processor] = cpus();
  const machine = `${cpus().length} x ${processor?.model.trim() ?? "unknown processor"}, ${process.platform} ${process.arch}, Node ${process.versions.node}`;
  const rows = measured.map((each) => `| ${[each.name, figureOf(each), `${each.aim}, ${verdictOf(each)}`, each.detail].join(" | ")} |`);
  return [
    "# Performance",
    "",
    "How long the pane and the functions take, and how large they are, so that a change that slows them is seen.",
    "",
    "Back to the [README](../README.md).",
    "",
    "Written by `npm run bench -- --write`. Figures are ratios within one run wherever they can be; a time in ms is this machine's, and",
    "no test depends on it. \"reached\" means at most the aim.",
    "",
    `Machine: ${machine}; load at the end ${(loadavg()[0] ?? 0).toFixed(1)}: above ${cpus().length}, other work ran beside it and times are long.`,
    "",
    "For a column over a log that is finished or grows by hand, enter one spill: it costs the host one call, however many rows.",
    "In a Table, which takes no spill, use single cells, and plain formulas where a column of some ten thousand rows has to answer at once.",
    "",
    "| what | figure | aim | detail |",
    "|---|--:|---|---|",
    ...rows,
    "",
  ].join("\n");
}
