import { buffers, trustedErrorPercent } from "../../../src/index";
import { numberBox } from "../lines";
import { type Line, type TemplateCell } from "../sheet-template";
import { meterLabels as labels, mostRecords } from "./labels";

/** How far a pen without mV may stand from its buffer: pH, common practice. */
const penWithin = 0.1;

export const recordKey = (number: number): string => `record${number}`;

/** A column of the record from the first line to the last. */
export const down = (column: string): string => `{${recordKey(1)}:${column}}:{${recordKey(mostRecords)}:${column}}`;

/** What stands in a column of the last line in which `where` shows something; nothing while no line does. */
export const latest = (column: string, where = column): string => {
  const shown = `(${down(where)}<>"")`;
  const place = `SUMPRODUCT(MAX(${shown}*(ROW(${down(where)})-ROW({${recordKey(1)}:${where}})+1)))`;
  return `IF(SUMPRODUCT(--${shown})=0,"",INDEX(${down(column)},${place}))`;
};

const date: TemplateCell = {
  style: "input",
  numberFormat: "yyyy-mm-dd",
  accepts: { date: true, hint: "the day of this calibration" },
};
const buffer: TemplateCell = {
  style: "input",
  numberFormat: "0.00",
  accepts: { words: Object.keys(buffers), hint: "pH on the bottle" },
};
const shown: TemplateCell = {
  style: "input",
  accepts: {
    between: [-500, 500],
    hint: "mV in this buffer before it is set, a true 0 as 0.1; or the pH, if the pen shows no mV",
  },
};
const celsius = numberBox("C of what the probe stands in", [0, 50], "0");
const standard = numberBox("mS/cm at 25 C on the standard's label, as 1.413", [0.08, 20], "0.000");
const ec = numberBox("mS/cm that the meter shows, before it is set", [0.01, 30], "0.00");

/** The columns of the record with their headings, from B on. */
const headings = [
  "Date", "Buffer 1", "mV (pH)", "Buffer 2", "mV (pH)", "C", "slope, %", "offset, mV", "pH pen",
  "Standard EC", "EC shown", "C", "off by, %", "EC meter", "Next due",
];

function record(number: number): Line {
  const key = recordKey(number);
  const at = (column: string): string => `{${key}:${column}}`;
  const whole = (first: string, last: string, count: number, formula: string): string =>
    `IF(COUNTA(${at(first)}:${at(last)})<${count},"",${formula})`;
  const probe = (part: string): string => `RUNOFF.PHPROBE(${["C", "D", "E", "F", "G"].map(at).join(",")},"${part}")`;
  const inMillivolts = (part: string): string => whole("C", "G", 5, `IF({shows}="pH","",${probe(part)})`);
  const off = (bottle: string, reads: string): string => `ABS(${at(reads)}-RUNOFF.PHBUFFER(${at(bottle)},${at("G")}))`;
  const byPh = `IF(ROUND(MAX(${off("C", "D")},${off("E", "F")}),2)>${penWithin},"calibrate and repeat","good")`;
  const result = (formula: string, format?: string): TemplateCell =>
    ({ formula, style: "result", ...(format === undefined ? {} : { numberFormat: format }) });
  return {
    key,
    cells: [
      { value: labels.record(number), style: "label" },
      date,
      buffer,
      shown,
      buffer,
      shown,
      celsius,
      result(inMillivolts("slope"), "0.0"),
      result(inMillivolts("offset"), "0"),
      result(whole("C", "G", 5, `IF({shows}="pH",${byPh},${probe("check")})`)),
      standard,
      ec,
      celsius,
      result(whole("K", "M", 3, `RUNOFF.ECMETER(${at("L")},${at("K")},${at("M")},{corrects}<>"no")`), "+0.0;-0.0;0.0"),
      result(
        `IF(COUNT(${at("N")})=0,"",IF(ABS(ROUND(${at("N")},1))>${trustedErrorPercent},"clean and repeat","good"))`,
      ),
      result(`IF(COUNT(${at("B")},{every})<2,"",${at("B")}+{every})`, "yyyy-mm-dd"),
    ],
  };
}

/** One line a calibration: what was shown, before anything was set, and what follows from it. */
export const recordLines: readonly Line[] = [
  { key: "record", cells: ["Record", ...headings].map((value) => ({ value, style: "heading" })) },
  ...Array.from({ length: mostRecords }, (_, i) => record(i + 1)),
];
