import { feeders, media } from "../../src/index";
import { caution, gap, heading, input, note, result, title } from "./lines";
import { type Line, sheetTemplate, type SheetTemplate, type TemplateCell } from "./sheet-template";

/** The plan's table has at most this many rows: its header, a dozen portions of a quarter of what the pot holds, a closing line. */
const planRows = 16;

/** The reading before the flush and fourteen portions: more than three container capacities in quarters. */
const readings = Array.from({ length: 15 }, (_, i) => `reading${i}`);
const [first, last] = ["reading0", "reading14"];

const ec = (hint: string): { readonly between: readonly [number, number]; readonly hint: string } => ({ between: [0.01, 20], hint });

const pot: readonly Line[] = [
  heading("The pot and its water", "Boxes are yours", "How to read it"),
  input("day", "Day and time of the flush", { value: 46_082.375, accepts: { date: true, hint: "date and time the first portion goes in" }, numberFormat: "yyyy-mm-dd hh:mm" }),
  input("container", "Container (L)", { value: 10, accepts: { between: [0.1, 1000], hint: "the pot itself, not the water it holds" } }),
  input("medium", "Medium", { value: "coir", accepts: { words: media, hint: "what the roots stand in" } }),
  input("feeder", "Feeder", { value: "medium", accepts: { words: feeders, hint: "how much this crop takes" } }),
  input("ecNow", "Runoff EC before (mS/cm)", { value: 5.6, accepts: ec("at 25 C, of a pot already wet through"), numberFormat: "0.00" }),
  input("phNow", "Runoff pH before", { value: 5.7, accepts: { between: [3, 11], hint: "measured on the same sample" }, numberFormat: "0.0" }),
  input("water", "EC of the water poured (mS/cm)", { value: 0.4, accepts: ec("0.01 for rain water"), numberFormat: "0.00" }),
  input("typed", "Runoff EC wanted (mS/cm)", { accepts: ec("empty: the upper limit of the medium"), numberFormat: "0.00" }),
  input("full", "Feed at full strength, EC (mS/cm)", { value: 1.8, accepts: ec("for the days after"), numberFormat: "0.00" }),
  result("band", "Limits in force", { formula: '{medium}&", "&{feeder}', how: "of the runoff, by medium and feeder" }),
  result("target", "EC to reach (mS/cm)", { formula: 'IF({typed}<>"",{typed},RUNOFF.BANDLIMIT({band},"ec high"))', numberFormat: "0.00", how: "the flush is over once EC and pH are inside the limits" }),
];

const standing: readonly Line[] = [
  heading("Where the flush stands now"),
  result("verdict", "Stop check", { formula: `RUNOFF.FLUSHSTOP({${first}:D}:{${last}:D},{${first}:E}:{${last}:E},{band},{${first}:C}:{${last}:C},{container},TRUE)` }),
  result("left", "Litres still needed (L)", { formula: `RUNOFF.FLUSHLEFT({${first}:C}:{${last}:C},{${first}:E}:{${last}:E},{target},{water},TRUE)`, numberFormat: "0.0" }),
];

const planned: Line = { cells: [{}, { numberFormat: "0.0" }, { numberFormat: "0.0" }, { numberFormat: "0.00" }] };

const plan: readonly Line[] = [
  heading("The plan, to be overruled by the readings"),
  { key: "plan", cells: [{ formula: "RUNOFF.FLUSHPLAN({container},{ecNow},{target},{water},{medium})", style: "label" }, { style: "label" }, { style: "label" }, { style: "label" }] },
  ...Array.from({ length: planRows - 2 }, () => planned),
  { ...planned, key: "end" },
];

const time: TemplateCell = { style: "input", numberFormat: "hh:mm", accepts: { between: [0, 0.999_99], hint: "time of day, as 14:30" } };
const litres: TemplateCell = { style: "input", numberFormat: "0.0", accepts: { between: [0, 1000], hint: "litres of this portion, not the running total" } };
const runoffPh: TemplateCell = { style: "input", numberFormat: "0.0", accepts: { between: [3, 11], hint: "pH of the last of the drain" } };
const runoffEc: TemplateCell = { style: "input", numberFormat: "0.00", accepts: { between: [0.01, 20], hint: "mS/cm at 25 C, of the last of the drain" } };

const portions: readonly Line[] = [
  { key: "portions", cells: ["Portion by portion", "Time", "Litres", "Runoff pH", "Runoff EC (mS/cm)", "Litres so far", "Stop check after it"].map((value) => ({ value, style: "heading" })) },
  { key: first, cells: [{ value: "before the flush", style: "label" }, time, undefined, { formula: "{phNow}", style: "result", numberFormat: "0.0" }, { formula: "{ecNow}", style: "result", numberFormat: "0.00" }] },
  ...readings.slice(1).map((key, i): Line => ({
    key,
    cells: [
      { value: `portion ${i + 1}`, style: "label" }, time, litres, runoffPh, runoffEc,
      { formula: `IF({${key}:C}="","",SUM({${first}:C}:{${key}:C}))`, style: "result", numberFormat: "0.0" },
      { formula: `IF(AND({${key}:D}="",{${key}:E}=""),"",RUNOFF.FLUSHSTOP({${first}:D}:{${key}:D},{${first}:E}:{${key}:E},{band},{${first}:C}:{${key}:C},{container}))`, style: "result" },
    ],
  })),
];

/** The watch of the first two days, then the end of the ramp. */
const due: Readonly<Record<number, string>> = {
  1: "runoff pH and EC, 24 h after; no feed stronger than the line says",
  2: "runoff pH and EC, 48 h after: back inside the limits, or flush again",
  7: "full feed only if two readings in a row were in band",
};

const after: readonly Line[] = [
  { cells: ["The days after", "Date", "Feed EC (mS/cm)", "Due"].map((value) => ({ value, style: "heading" })) },
  ...Array.from({ length: 8 }, (_, day): Line => ({
    cells: [
      { value: day, style: "label", numberFormat: '"day "0' },
      { formula: `IF({day}="","",INT({day})+${day})`, style: "result", numberFormat: "yyyy-mm-dd" },
      { formula: `RUNOFF.RECOVERYFEED({full},{water},${day})`, style: "result", numberFormat: "0.00" },
      ...(due[day] === undefined ? [] : [{ value: due[day], style: "note" as const }]),
    ],
  })),
];

const care: readonly Line[] = [
  caution("Pour a portion, let it drain, measure the last of the drain, write it down, read the stop check. Never let the pot drink its drain again."),
  caution("Drain water is salty: keep it off floors with pumps, lamps and leads, and pour it where your local rules allow."),
];

/** A sheet for a flush: plan, portions with the stop check beside them, and the days after. */
export const flushSheet: SheetTemplate = sheetTemplate({
  name: "Flush",
  lines: [
    title("Flush a pot, portion by portion"),
    note("Type over the boxed figures, which are examples; the shaded ones follow. Every EC in mS/cm at 25 C."),
    gap, ...pot, gap, ...standing, gap, ...portions, gap, ...plan, gap, ...after, gap, ...care,
  ],
  widths: [36, 20, 17, 18, 22, 15, 30],
  landscape: false,
  chart: { title: "Runoff EC, reading by reading (mS/cm)", cells: "{portions:E}:{reading14:E}", over: "{plan:E}:{end:G}" },
});
