import { addressOf, cellsOf } from "../host/excel/area";
import type { ChartRecord } from "../host/excel/book-records";

/** What stands where the host would draw a chart: its title, and of what it is. */
export function chartBox({ type, title, source, sheetId }: ChartRecord, sheetName: string | undefined): HTMLElement {
  const kind = type.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();
  const cells = source.sheetId === sheetId || sheetName === undefined ? cellsOf(source) : addressOf(source, sheetName);
  const heading = document.createElement("strong");
  heading.textContent = title === "" ? "Chart" : title;
  const text = document.createElement("span");
  text.textContent = `Excel draws ${/^[aeio]/.test(kind) ? "an" : "a"} ${kind} chart of ${cells} here`;
  const box = document.createElement("div");
  box.className = "chart";
  box.append(heading, text);
  return box;
}
