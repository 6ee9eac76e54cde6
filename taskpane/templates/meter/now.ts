import { gap, heading, input, result } from "../lines";
import { type Line, type TemplateCell } from "../sheet-template";
import { meterLabels as labels } from "./labels";
import { down, latest } from "./record";

/** The column in which the order of work begins, counted from 0. */
const stepsAt = 8;

/** In the order of doing; common practice at the bench. */
const steps = [
  "1. A little fresh buffer and standard in clean cups, all as warm as the room. Never pour back.",
  "2. Rinse the probe in pure water and shake it off. Dab the glass, never rub it.",
  "3. Buffer 7 first, then 4 (10 for alkaline water). Wait until the figure stands, and write it down.",
  "4. Only now set the pen to the buffer. Rinse before the next one.",
  "5. EC: rinse the cell with standard, then read in fresh standard. Tap the bubbles off.",
  "6. Not good? Clean, rinse, and read all again on a new line. Rejected twice: a new probe.",
  "7. Store the pH probe wet, in storage solution (3 mol/L KCl), never in pure water or dry.",
  "8. Rinse the EC cell in pure water and let it dry.",
  "9. Read input and runoff again, and write the calibration into the log's notes.",
] as const;

const large = (formula: string): TemplateCell => ({ formula, style: "largeText" });
const small = (formula: string, numberFormat: string): TemplateCell => ({ formula, style: "result", numberFormat });

/** What the last line alone allows to be noted. */
const noted = (): string => {
  const [pen, meter] = [latest("J", "B"), latest("O", "B")].map((word) => `(${word}="good")`);
  return `IF(${pen}*${meter},"calibrated both pens",IF(${pen}*1,"calibrated pH pen",IF(${meter}*1,"calibrated EC meter","")))`;
};

const dueIn = `IF(OR(COUNT(${down("B")})=0,COUNT({every})=0),"",RUNOFF.CALDUE(MAX(${down("B")}),{every},{today}))`;

const standing: readonly Line[] = [
  {
    key: "probe",
    cells: [
      { value: labels.probe, style: "largeLabel" },
      large(latest("J")),
      undefined,
      undefined,
      small(latest("H"), '0.0" %"'),
      small(latest("I"), '0" mV"'),
    ],
  },
  {
    key: "meter",
    cells: [
      { value: labels.meter, style: "largeLabel" },
      large(latest("O")),
      undefined,
      undefined,
      small(latest("N"), '+0.0" %";-0.0" %";0.0" %"'),
    ],
  },
  {
    key: "next",
    cells: [
      { value: labels.next, style: "largeLabel" },
      { ...large(`IF(COUNT(${down("P")})=0,"",MAX(${down("P")}))`), numberFormat: "yyyy-mm-dd" },
      undefined,
      undefined,
      small(dueIn, "0;0"),
      { formula: 'IF({next:E}="","",IF({next:E}<0,"days overdue","days left"))', style: "label" },
    ],
  },
  { key: "note", cells: [{ value: labels.note, style: "label" }, large(noted())] },
];

const boxes: readonly Line[] = [
  input("every", labels.every, { value: 14, accepts: { between: [1, 366], hint: "7 to 30; sooner when hard used" } }),
  input("shows", labels.shows, {
    value: "mV",
    accepts: { words: ["mV", "pH"], hint: "mV where it can: slope and offset follow" },
  }),
  input("corrects", labels.corrects, {
    value: "yes",
    accepts: { words: ["yes", "no"], hint: "most do (ATC on the label)" },
  }),
  result("today", labels.today, { formula: "TODAY()", numberFormat: "yyyy-mm-dd" }),
];

/** A line with the next step of the work at its right. */
const beside = (line: Line, step: string | undefined): Line =>
  step === undefined
    ? line
    : {
        ...line,
        cells: [...Array.from({ length: stepsAt }, (_, i) => line.cells[i]), { value: step, style: "label" }],
      };

/** What the last calibration says and when the next is due; the order of work beside it. */
export const nowLines: readonly Line[] = [
  heading("Now", ...Array.from({ length: stepsAt - 1 }, () => ""), "At the bench, in this order"),
  ...[...standing, gap, ...boxes].map((line, i) => beside(line, steps[i])),
];
