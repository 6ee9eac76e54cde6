import { numberBox } from "../lines";
import { type Line } from "../sheet-template";
import { planStart, portionKey } from "./keys";
import { flushLabels as labels, mostPortions } from "./labels";
import { isMissing, stopCheck } from "./top";

const time = numberBox("time of day, as 14:30", [0, 0.999_99], "hh:mm");
const litres = numberBox("litres of this portion, not the running total", [0, 1000], "0.0");
const runoffPh = numberBox("pH of the last of the drain", [3, 11], "0.0");
const runoffEc = numberBox("mS/cm at 25 C, of the last of the drain", [0.01, 20], "0.00");

/** The plan's own table lies right of what is printed; its lines are repeated in words beside the portions. */
const planCells: Line["cells"] = [
  undefined,
  undefined,
  undefined,
  { numberFormat: "0" },
  { numberFormat: "0.0" },
  { numberFormat: "0.0" },
  { numberFormat: "0.00" },
];

const unlessEmpty = (cell: string): string => `IF(COUNT({${cell}})=0,"",{${cell}})`;

const before: Line = {
  key: planStart,
  cells: [
    { value: labels.before, style: "label" },
    time,
    undefined,
    { formula: unlessEmpty("phNow"), style: "result", numberFormat: "0.0" },
    { formula: unlessEmpty("ecNow"), style: "result", numberFormat: "0.00" },
    undefined,
    { value: "the pot wet through, its last drain read", style: "wrapped" },
    undefined,
    undefined,
    { formula: `IF(${isMissing},"",RUNOFF.FLUSHPLAN({container},{ecNow},{target},{water},{medium}))`, style: "label" },
    { style: "label" },
    { style: "label" },
    { style: "label" },
  ],
};

function portion(number: number, band: string): Line {
  const key = portionKey(number);
  return {
    key,
    cells: [
      { value: labels.portion(number), style: "label" },
      time,
      litres,
      runoffPh,
      runoffEc,
      { formula: `IF(AND({${key}:D}="",{${key}:E}=""),"",${stopCheck(band, key)})`, style: "result" },
      {
        formula: `IF(N({${key}:K})=0,{${key}:J}&"","plan: "&FIXED({${key}:L},1,TRUE)&" L so far, EC "&FIXED({${key}:M},2,TRUE)&" expected")`,
        style: "wrapped",
      },
      undefined,
      undefined,
      ...planCells.slice(3),
    ],
  };
}

/** Readings portion by portion, each with the stop check after it and the plan beside it. */
export const portionLines = (band: string): readonly Line[] => [
  {
    key: "portions",
    cells: [
      "Portion by portion",
      "Time",
      "Litres",
      "Runoff pH",
      "Runoff EC",
      "Stop check after it",
      "The plan, beside it",
    ].map((value) => ({ value, style: "heading" })),
  },
  before,
  ...Array.from({ length: mostPortions }, (_, i) => portion(i + 1, band)),
];
