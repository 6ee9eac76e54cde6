import { aboveWater, drainedMedia, feeders, insideShare } from "../../../src/index";
import { ecBox, heading, input, result } from "../lines";
import { type SheetPot } from "../sheet-pot";
import { type Line, type TemplateCell } from "../sheet-template";
import { flushLabels as labels } from "./labels";

/** The limits as the worksheet functions take them: by medium and feeder, or the grower's own four. */
export const bandOf = ({ limits }: SheetPot): string =>
  limits === undefined ? '{medium}&", "&{feeder}' : "{limits:B}:{limits:E}";

/** The pot: filled in from its log but for the two figures that only the grower knows. */
export const potLines = (pot: SheetPot): readonly Line[] => [
  heading("The pot", "Boxes are yours", "", "", "", "", "How to read it"),
  input("container", labels.container, {
    value: pot.containerLitres,
    accepts: { between: [0.1, 1000], hint: "the pot itself, not the water it holds" },
  }),
  input("water", labels.water, {
    value: pot.waterEc,
    ...ecBox("measured before the first portion; 0 for pure water", [0, 20]),
  }),
  input("pot", labels.pot, { value: pot.name, accepts: { words: [], hint: "its name in the log" } }),
  input("medium", labels.medium, {
    value: pot.medium,
    accepts: { words: drainedMedia, hint: "what the roots stand in" },
  }),
  input("feeder", labels.feeder, {
    value: pot.feeder ?? "medium",
    accepts: { words: feeders, hint: "how much this crop takes" },
  }),
  input("ecNow", labels.ecNow, { value: pot.runoffEc, ...ecBox("at 25 C, of a pot already wet through") }),
  input("phNow", labels.phNow, {
    value: pot.runoffPh,
    accepts: { between: [3, 11], hint: "measured on the same sample" },
    numberFormat: "0.0",
  }),
  input("full", labels.full, { value: pot.feedEc, ...ecBox("for the days after") }),
  input("day", labels.day, {
    value: pot.day,
    accepts: { date: true, hint: "when the first portion goes in" },
    numberFormat: "yyyy-mm-dd hh:mm",
  }),
  input("typed", labels.typed, { value: pot.targetEc, ...ecBox("empty: a tenth inside the limit") }),
  input("phTyped", labels.phTyped, {
    value: pot.pourPh,
    accepts: { between: [4, 8], hint: "empty: the middle of what the medium wants" },
    numberFormat: "0.0",
  }),
  limitsLine(pot),
  result("target", labels.target, {
    formula: target,
    numberFormat: "0.00",
    how: "a tenth inside the upper limit, and never nearer than 0.3 to what you pour",
  }),
  result("pourPh", "pH to pour at", {
    formula: `IF(COUNT({phTyped})=1,{phTyped},IF(COUNT({limits:E})=0,"",RUNOFF.BANDLIMIT(${bandOf(pot)},"ph aim")))`,
    numberFormat: "0.0",
    how: "by medium, or the middle of your own limits",
  }),
];

const target = `IF(COUNT({typed})=1,{typed},IF(COUNT({limits:E},{water})<2,"",MAX(${insideShare}*{limits:E},{water}+${aboveWater})))`;

function limitsLine({ limits }: SheetPot): Line {
  const names = ["ph low", "ph high", "ec low", "ec high"] as const;
  const formats = ["0.0", "0.0", "0.00", "0.00"];
  const cells = names.map((name, i): TemplateCell =>
    limits === undefined
      ? {
          formula: `IF({medium}="","",RUNOFF.BANDLIMIT({medium}&", "&{feeder},"${name}"))`,
          style: "result",
          numberFormat: formats[i] ?? "General",
        }
      : {
          value: limits[i] ?? "",
          style: "input",
          numberFormat: formats[i] ?? "General",
          accepts: { between: [0, 20], hint: "your own limit" },
        },
  );
  return {
    key: "limits",
    cells: [
      { value: labels.limits, style: "label" },
      ...cells,
      undefined,
      { value: limits === undefined ? "of the runoff, by medium and feeder" : "your own", style: "note" },
    ],
  };
}
