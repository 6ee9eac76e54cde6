import { plantScale, watchPlan, type WatchStep } from "../../../src/index";
import { numberBox } from "../lines";
import { type Line, type TemplateCell } from "../sheet-template";
import { dayHeading } from "./labels";

const runoffPh = numberBox("pH of the runoff", [3, 11], "0.0");
const runoffEc = numberBox("mS/cm at 25 C of the runoff", [0.01, 20], "0.00");
const posture: TemplateCell = {
  style: "input",
  accepts: {
    words: ["0", "1", "2", "3"],
    hint: plantScale.posture.map((word, figure) => `${figure} ${word}`).join(", "),
  },
};
const hoursPerDay = 24;

/** The key of a look, by its place in the plan. */
export const watchKey = (place: number): string => `watch${place}`;

interface Course {
  /** The formula of the feed's EC, so many days after. */
  readonly feed: (days: number) => string;
  /** The formula of what was done, in a word that the log reader knows, where notes are kept on the sheet. */
  readonly done: string | undefined;
}

function look({ name, hours, lightShare, look: words }: WatchStep, place: number, { feed, done }: Course): Line {
  const days = hours / hoursPerDay;
  return {
    key: watchKey(place),
    cells: [
      { value: name, style: "label" },
      {
        formula: `IF(COUNT({day})=0,"",{day}+${hours}/${hoursPerDay})`,
        style: "result",
        numberFormat: "yyyy-mm-dd hh:mm",
      },
      { formula: feed(days), style: "result", numberFormat: "0.00" },
      runoffPh,
      runoffEc,
      posture,
      { value: `light ${Math.round(100 * lightShare)} % of the usual; ${words}`, style: "wrapped" },
      ...(done === undefined
        ? []
        : [place === 0 ? ({ formula: done, style: "result" } as const) : ({ style: "input" } as const)]),
    ],
  };
}

/**
 * Names that the log reader knows, so that the filled boxes are read back; what is planned is told from what was
 * poured.
 */
const heads = [
  "The days after",
  dayHeading,
  "Planned feed EC",
  "Runoff pH",
  "Runoff EC",
  "Posture, 0 upright to 3",
  "Light, and what to look for",
];

/** The looks after something was done to a pot: when, what to feed, boxes for what is found, and what to look for. */
export const watchLines = (feed: (days: number) => string, done?: string): readonly Line[] => [
  {
    key: "watch",
    cells: [...heads, ...(done === undefined ? [] : ["Notes"])].map((value) => ({ value, style: "heading" })),
  },
  ...watchPlan.map((step, place) => look(step, place, { feed, done })),
];
