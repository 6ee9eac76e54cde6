import { plain, quoted } from "./text";
import { findUnit, type WrittenUnit } from "./units";
import { missingWords } from "./missing-words";

export type NamedQuantity = "EC" | "pH" | "humidity" | "temperature";

/** A quantity typed in front of its figure, after `plain`. */
const quantityBefore = /^(ph|ec|ce|rh|rlf|temp|t)\s?[:=]?\s?(?=[\d.,~])/;
const quantityBehind = /^(ph|ec|ce|rh|rlf)$/;
const quantityNames: Readonly<Record<string, NamedQuantity>> = {
  ph: "pH", ec: "EC", ce: "EC", rh: "humidity", rlf: "humidity", temp: "temperature", t: "temperature",
};
/** Whether it rises or falls, drawn beside the figure: nothing that changes it. */
const arrows =
  /^(?:[\u2190-\u2193\u2196-\u2199\u25b2\u25bc]|-?->|<-)\s*|\s*(?:[\u2190-\u2193\u2196-\u2199\u25b2\u25bc]|-?->|<-)$/g;

/** A number as typed, perhaps with its own unit and a doubt; a reason why there is none; or nothing measured. */
export type NumberCell =
  | {
    readonly value: number;
    readonly unit?: WrittenUnit;
    readonly scale?: number;
    readonly doubt?: string;
    /** The quantity typed in front of the figure or behind it: "pH 5.9". */
    readonly names?: NamedQuantity;
  }
  | { readonly reason: string }
  | undefined;

/** Before a number that was judged by eye. */
export const roughly = /^(?:~|≈|±|ca\.?|c\.|circa|about|approx\.?|around|roughly|etwa)\s*/;
/** Short enough to be finite, with all the decimals that a sum of binary figures is written with. */
const plainNumber = /^-?\d{1,15}(?:\.\d{1,30})?$/;
const numberText = /^([+-]?(?:\d+(?:[ ']\d{3})+|\d+)?(?:[.,]\d+)*(?:e[+-]?\d+)?)(.*)$/;

/**
 * Reads one cell that should hold a number: "1,8", "1.8 mS", "~6.2".
 *
 * A bound (">5") and a range ("5.8-6.0") are no readings. A comma before exactly three digits divides thousands where
 * the unit runs in hundreds (`thousands`), and is a decimal comma elsewhere.
 */
export function numberCell(cell: unknown, thousands: boolean): NumberCell {
  if (typeof cell === "number") return Number.isFinite(cell) ? { value: cell } : undefined;
  if (cell === null || cell === undefined) return undefined;
  if (typeof cell !== "string") return { reason: `${quoted(cell)} is not a number` };
  if (plainNumber.test(cell)) return { value: Number(cell) };
  const text = plain(cell).replace(/(?<=\d)\u00b7(?=\d)/g, ".").replace(/^'/, "").replace(arrows, "");
  if (text === "" || missingWords.has(text)) return undefined;
  if (text.startsWith("#")) return { reason: `${quoted(cell)} is an error of the sheet` };
  if (/^[<>≤≥]/.test(text)) return { reason: `${quoted(cell)} is a limit, not a reading` };
  const before = quantityBefore.exec(text);
  const named = before === null ? text : text.slice(before[0].length);
  const bare = named.replace(roughly, "");
  const [, figure = "", rest = ""] = numberText.exec(bare) ?? [];
  const value = figureValue(figure, thousands);
  if (value === undefined || figure === "") return { reason: `${quoted(cell)} is not a number` };
  if (/\d/.test(rest.replace(/cm-1|m-1|m2/g, "")) && !/ppm|tds/.test(rest))
    return { reason: `${quoted(cell)} holds more than one number` };
  const behind = quantityBehind.exec(rest.trim());
  const names = quantityNames[before?.[1] ?? behind?.[1] ?? ""];
  const read = withRest(cell, value, behind === null ? rest.trim() : "", bare !== named);
  return names === undefined ? read : { ...read, names };
}

type Read = Extract<NumberCell, { readonly value: number }>;

function withRest(cell: string, value: number, rest: string, rough: boolean): Read {
  const found = rest === "" ? undefined : findUnit(rest);
  const words = found?.rest.replace(/§|[()[\],.:;\s]/g, "") ?? "";
  const doubt = rough || words !== "" ? { doubt: `${quoted(cell)} is read as ${value}` } : {};
  const unit = found?.unit === undefined ? {} : { unit: found.unit };
  const scale = found?.scale === undefined ? {} : { scale: found.scale };
  return { value, ...unit, ...scale, ...doubt };
}

/** "1.234,5", "1,234.5", "1 234", "1,8": the last mark is the decimal one unless it repeats or divides thousands. */
function figureValue(figure: string, thousands: boolean): number | undefined {
  const joined = figure.replace(/[ '](?=\d{3})/g, "");
  const marks = joined.match(/[.,]/g) ?? [];
  const last = marks.at(-1);
  if (last === undefined) return finite(joined);
  const others = marks.slice(0, -1);
  const repeats = others.includes(last);
  if (repeats && !/^[+-]?\d{1,3}(?:[.,]\d{3})+$/.test(joined)) return undefined;
  const divides =
    repeats || (last === "," && others.length === 0 && thousands && /^[+-]?[1-9]\d{0,2},\d{3}$/.test(joined));
  if (divides) return finite(joined.replace(/[.,]/g, ""));
  if (others.length > 0 && !/^[+-]?\d{1,3}(?:[.,]\d{3})+[.,]\d+$/.test(joined)) return undefined;
  const at = joined.lastIndexOf(last);
  return finite(`${joined.slice(0, at).replace(/[.,]/g, "")}.${joined.slice(at + 1)}`);
}

function finite(text: string): number | undefined {
  const value = Number(text === "" || text === "." ? Number.NaN : text);
  return Number.isFinite(value) ? value : undefined;
}
