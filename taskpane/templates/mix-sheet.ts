import { ownSheetNote } from "../../src/index";
import { acidLines, atColumn } from "./acid-lines";
import { caution, ecBox, gap, heading, input, note, result, title } from "./lines";
import { labelLines, waterMinerals } from "./mix/label-lines";
import { mixLabels as labels } from "./mix/labels";
import { type SheetPot } from "./sheet-pot";
import { type Line, sheetTemplate, type SheetTemplate } from "./sheet-template";

/** The wide column at the right, counted from 0. */
const reasonAt = 8;

const head: readonly Line[] = [
  {
    key: "head",
    cells: [
      { value: labels.target, style: "largeLabel" },
      { formula: "{target}", style: "large", numberFormat: "0.00" },
      { value: "at pH", style: "largeLabel" },
      undefined,
      { formula: 'IF(COUNT({phTarget})=0,"",{phTarget})', style: "largeText" },
    ],
  },
];

const water = (pot: SheetPot): readonly Line[] => [
  heading("1. The water", "Boxes are yours", "How to read it"),
  caution("Pumps, lamps and leads off and away from the wet floor. Labels and local rules come before this sheet."),
  input("water", labels.water, { value: pot.waterEc, ...ecBox("at 25 C; 0 for pure water", [0, 20]) }),
  input("litres", labels.litres, { accepts: { between: [0.1, 100_000], hint: "litres to be mixed" } }),
  ...waterMinerals,
];

const acid = (pot: SheetPot): readonly Line[] => [
  heading("2. Acid into the raw water, before the feed"),
  caution("Goggles and gloves. Acid into water, never water into acid, and never acid and alkali together."),
  input("phTarget", labels.phTarget, {
    value: pot.pourPh,
    accepts: { between: [4.5, 7.5], hint: "of the finished feed; many feeds lower it a little more" },
    numberFormat: "0.0",
  }),
  ...acidLines({ litres: "{litres}", target: "{phTarget}", reasonAt, reasonLines: 17 }),
];

const feed = (pot: SheetPot): readonly Line[] => [
  heading("3. Feed up to the EC"),
  caution(
    "One concentrate at a time, stirred in before the next: undiluted, calcium meets phosphate or sulphate and sets.",
  ),
  input("full", labels.full, { value: pot.feedEc, ...ecBox("what this crop gets in quiet weeks") }),
  input("days", labels.days, {
    value: pot.daysSinceFlush,
    accepts: { between: [0, 60], hint: "0 on the day itself; empty: no ramp, full strength" },
  }),
  input("typed", labels.typed, { value: pot.targetEc, ...ecBox("wins over the days; empty: not used") }),
  result("target", "The EC, by what stands above", {
    formula:
      'IF(COUNT({typed})=1,{typed},IF(COUNT({full})=0,"",IF(COUNT({days})=0,{full},IF(COUNT({water})=0,"",RUNOFF.RECOVERYFEED({full},{water},{days})))))',
    numberFormat: "0.00",
    how: "half of what the feed adds to the water on day 0, all of it from day 7",
  }),
  input("strength", labels.strength, {
    accepts: { between: [0.001, 20], hint: "measure it once: 1 L of water, 1 mL, read the rise" },
    numberFormat: "0.000",
  }),
  result("dose", labels.dose, {
    formula:
      'IF(COUNT({litres},{target},{water},{strength})<4,"",RUNOFF.STOCKDOSE({litres},{target},{water},{strength}))',
    numberFormat: "0",
    how: "each concentrate by its own label; never two together",
  }),
  result("first", labels.first, {
    formula: 'IF(COUNT({dose})=0,"",{dose}*0.8)',
    numberFormat: "0",
    how: "stir, measure, then add up to the EC",
  }),
];

const wrongBy = 'ABS({mixedEc}-{target})>0.1';
const unread = "COUNT({mixedEc},{target},{water},{litres})<4";

const check: readonly Line[] = [
  heading("4. Check, before it is poured"),
  caution(
    "Never correct the pH of the mixed tank by the raw water's alkalinity: that gives twice the acid. Acid in drops, stir, measure.",
  ),
  input("mixedEc", labels.mixedEc, ecBox("read in the stirred tank")),
  input("mixedPh", labels.mixedPh, {
    accepts: { between: [3, 11], hint: "read in the stirred tank" },
    numberFormat: "0.0",
  }),
  {
    key: "check",
    cells: atColumn(
      reasonAt,
      [
        { value: labels.check, style: "label" },
        {
          formula: `IF(COUNT({mixedEc},{target})<2,"",IF(${wrongBy},IF({mixedEc}>{target},"too strong","too weak"),IF(COUNT({mixedPh},{phTarget})<2,"the EC is",IF(ABS({mixedPh}-{phTarget})>0.3,"the EC is, the pH is not","as meant"))))`,
          style: "result",
        },
      ],
      { value: "within 0.1 mS/cm and 0.3 pH", style: "wrapped" },
    ),
  },
  result("add", labels.add, {
    formula: `IF(${unread},"",IF({mixedEc}>{target}+0.1,RUNOFF.DILUTION({litres},{mixedEc},{target},{water}),""))`,
    numberFormat: "0.0",
    how: "or the line below, not both",
  }),
  result("swap", labels.swap, {
    formula: `IF(${unread},"",IF({mixedEc}>{target}+0.1,RUNOFF.SWAPOUT({litres},{mixedEc},{target},{water}),""))`,
    numberFormat: "0.0",
    how: "what is drained is feed: use it, or follow local rules",
  }),
];

/** A sheet for mixing a feed for one pot or tank, in the order of doing. */
export function mixSheet(pot: SheetPot = {}): SheetTemplate {
  return sheetTemplate({
    name: "Mix",
    lines: [
      title(pot.name === undefined ? labels.title : `${labels.title}: ${pot.name}`),
      note(`${ownSheetNote} From the top down, in this order. Every EC in mS/cm at 25 C.`),
      ...head, gap, ...water(pot), gap, ...acid(pot), gap, ...feed(pot), gap, ...check, gap, ...labelLines,
    ],
    widths: [38, 18, 11, 11, 11, 11, 11, 11, 60],
    leastHeight: 26,
    landscape: false,
  });
}
