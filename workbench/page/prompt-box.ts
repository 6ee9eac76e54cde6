import type { Area } from "../host/excel/area";
import { intersection } from "../host/excel/area-maths";
import type { ValidationRecord } from "../host/excel/book-records";

/** The hint that the host shows beside a selected cell whose values are limited. */
export function promptBox(validations: readonly ValidationRecord[], cell: Area): HTMLElement | undefined {
  const { prompt } = validations.filter(({ area }) => intersection(area, cell) !== undefined).at(-1) ?? {};
  const [title, message] = [prompt?.["title"], prompt?.["message"]].map((text) => (typeof text === "string" ? text : ""));
  if (prompt?.["showPrompt"] === false || !message) return undefined;
  const box = document.createElement("div");
  box.className = "prompt";
  if (title) box.append(Object.assign(document.createElement("strong"), { textContent: title }));
  box.append(message);
  return box;
}
