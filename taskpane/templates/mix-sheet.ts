import { acids, baseTable } from "../../src/index";
import { caution, gap, heading, input, note, result, title } from "./lines";
import { type Line, type SheetTemplate, sheetTemplate, type TemplateCell } from "./sheet-template";

const ec = (hint: string): { readonly between: readonly [number, number]; readonly hint: string } => ({ between: [0.01, 20], hint });

const tank: readonly Line[] = [
  heading("The water, the tank and the target", "Boxes are yours", "How to read it"),
  input("water", "Water before any feed, EC (mS/cm)", { value: 0.4, accepts: ec("at 25 C; 0.01 for rain water"), numberFormat: "0.00" }),
  input("litres", "Water in the tank (L)", { value: 50, accepts: { between: [0.1, 100_000], hint: "litres to be mixed" } }),
  input("full", "Feed at full strength, EC (mS/cm)", { value: 1.8, accepts: ec("what this crop gets in quiet weeks"), numberFormat: "0.00" }),
  input("days", "Days since the flush (days)", { value: 2, accepts: { between: [0, 60], hint: "0 on the day itself; empty: no ramp, full strength" } }),
  input("typed", "Or the EC you want (mS/cm)", { accepts: ec("wins over the days; empty: not used"), numberFormat: "0.00" }),
  result("target", "EC to mix (mS/cm)", {
    formula: 'IF({typed}<>"",{typed},IF({days}<>"",RUNOFF.RECOVERYFEED({full},{water},{days}),{full}))',
    numberFormat: "0.00", how: "half of what the feed adds to the water on day 0, all of it from day 7",
  }),
];

const concentrate: readonly Line[] = [
  heading("Concentrate into fresh water"),
  input("strength", "1 mL in 1 L adds (mS/cm)", { value: 0.3, accepts: { between: [0.001, 20], hint: "measure it once: 1 L of water, 1 mL, read the rise" }, numberFormat: "0.000" }),
  result("dose", "Concentrate for the tank (mL)", { formula: "RUNOFF.STOCKDOSE({litres},{target},{water},{strength})", numberFormat: "0", how: "each concentrate by its own label; never two together" }),
  result("first", "of which first, four fifths (mL)", { formula: 'IF({dose}="","",{dose}*0.8)', numberFormat: "0", how: "stir, measure, then add up to the target" }),
];

const tooStrong: readonly Line[] = [
  heading("A tank that came out too strong"),
  input("now", "EC in the tank now (mS/cm)", { value: 2.4, accepts: ec("above the target"), numberFormat: "0.00" }),
  input("held", "In the tank now (L)", { value: 50, accepts: { between: [0.1, 100_000], hint: "litres" } }),
  result("add", "Water to add, where there is room (L)", { formula: "RUNOFF.DILUTION({held},{now},{target},{water})", numberFormat: "0.0", how: "or the line below, not both" }),
  result("swap", "Or: drain this and fill up with water (L)", { formula: "RUNOFF.SWAPOUT({held},{now},{target},{water})", numberFormat: "0.0", how: "what is drained is feed: use it, or follow local rules" }),
];

/** What labels count each element as; the first is the usual one. */
const analytes: readonly (readonly string[])[] = [["N"], ["P2O5", "P"], ["K2O", "K"], ["Ca", "CaO"], ["Mg", "MgO"], ["S", "SO3"]];
const columns = ["C", "D", "E", "F", "G", "H"];
const feeds = ["Feed 1", "Feed 2", "Feed 3", "Feed 4", "Feed 5", "Feed 6"];
const percent: TemplateCell = { style: "input", numberFormat: "0.0", accepts: { between: [0, 100], hint: "% by weight, from the label" } };
const grams: TemplateCell = { style: "input", numberFormat: "0.00", accepts: { between: [0, 100], hint: "g of it in 1 L of the finished feed" } };
const exampleGrams = [0.6, 0.4];
const examplePercents: readonly (readonly (number | undefined)[])[] = [[8, 12, 36, undefined, 3], [15, undefined, undefined, 19]];

const labels: readonly Line[] = [
  { cells: [...["What the labels give", "g per L"], ...columns.map(() => "% weight")].map((value) => ({ value, style: "heading" })) },
  {
    key: "counted",
    cells: [{ value: "Counted on the label as", style: "label" }, undefined, ...analytes.map((words): TemplateCell => ({
      value: words[0] ?? "", style: "input", accepts: { words, hint: "as the label counts it" },
    }))],
  },
  ...feeds.map((feed, i): Line => ({
    key: `feed${i}`,
    cells: [
      { value: feed, style: "input", accepts: { words: [], hint: "its name" } }, given(grams, exampleGrams[i]),
      ...columns.map((_, j) => given(percent, examplePercents[i]?.[j])),
    ],
  })),
  { cells: ["ppm of the element (mg/L)", "", "N", "P", "K", "Ca", "Mg", "S"].map((value) => ({ value, style: "heading" })) },
  ...feeds.map((_, i): Line => ({
    key: `ppm${i}`,
    cells: [{ formula: `{feed${i}:A}`, style: "label" }, undefined, ...columns.map((column): TemplateCell => ({
      formula: `RUNOFF.LABELPPM({feed${i}:B},{feed${i}:${column}},{counted:${column}})`, style: "result", numberFormat: "0",
    }))],
  })),
  {
    key: "total",
    cells: [{ value: "All feeds together (mg/L)", style: "label" }, undefined, ...columns.map((column): TemplateCell => ({
      formula: `IF(COUNT({ppm0:${column}}:{ppm5:${column}})=0,"",SUM({ppm0:${column}}:{ppm5:${column}}))`, style: "result", numberFormat: "0",
    }))],
  },
];

function given(box: TemplateCell, value: number | undefined): TemplateCell {
  return value === undefined ? box : { ...box, value };
}

const balance: readonly Line[] = [
  heading("Balance of K, Ca and Mg"),
  input("waterCa", "Ca in the water (mg/L)", { value: 40, accepts: { between: [0, 1000], hint: "from the supplier's report" } }),
  input("waterMg", "Mg in the water (mg/L)", { value: 8, accepts: { between: [0, 1000], hint: "from the supplier's report" } }),
  result("cations", "Balance", { formula: "RUNOFF.CATIONS({total:E},N({total:F})+{waterCa},N({total:G})+{waterMg},TRUE)" }),
];

const wanted = (dose: string, otherwise: string, when: "<" | ">"): string =>
  `IF(OR({alkalinity}="",{phNow}="",{phTarget}=""),"",IF({phTarget}${when}{phNow},${dose},"${otherwise}"))`;

const acidity: readonly Line[] = [
  heading("pH of the mixed feed, last of all"),
  input("alkalinity", "Alkalinity (mg/L as CaCO3)", { accepts: { between: [1, 1000], hint: "test kit or supplier; without it no dose" } }),
  input("phNow", "pH now", { accepts: { between: [3, 11], hint: "measured in the mixed tank" }, numberFormat: "0.0" }),
  input("phTarget", "pH wanted", { value: 5.8, accepts: { between: [4.5, 7.5], hint: "4.5 to 7.5" }, numberFormat: "0.0" }),
  input("acid", "Acid", { value: "phosphoric", accepts: { words: acids, hint: "as its bottle says" } }),
  input("percent", "Strength of the bottle (% by mass)", { accepts: { between: [1, 100], hint: "from the bottle; no strength, no dose" } }),
  result("acidDose", "Acid (mL; citric acid g)", { formula: wanted("RUNOFF.ACIDDOSE({litres},{alkalinity},{phNow},{phTarget},{acid},{percent},TRUE)", "no acid needed", "<") }),
  input("base", "Alkali", { value: "potassium bicarbonate", accepts: { words: Object.keys(baseTable), hint: "the pure substance" } }),
  result("baseDose", "Alkali (g)", { formula: wanted("RUNOFF.ALKALIDOSE({litres},{alkalinity},{phNow},{phTarget},{base},TRUE)", "no alkali needed", ">") }),
];

const order: readonly Line[] = [
  heading("Order of mixing, and care"),
  caution("1. Goggles and gloves. Pumps, lamps and leads off and away from the wet floor. Labels and local rules come before this sheet."),
  caution("2. Water first. One concentrate at a time, stirred in before the next: undiluted, calcium meets phosphate or sulphate and sets."),
  caution("3. Measure the EC and finish it. Then the acid or alkali: acid into water, never water into acid, and never acid and alkali together."),
  caution("4. Four fifths of the dose, stir, wait, measure the pH, then the rest in drops. Measure once more before it is poured."),
];

/** A sheet for mixing a recovery feed. */
export const mixSheet: SheetTemplate = sheetTemplate({
  name: "Mix",
  lines: [
    title("Mix a recovery feed"),
    note("Type over the boxed figures, which are examples; the shaded ones follow. Every EC in mS/cm at 25 C."),
    gap, ...tank, gap, ...concentrate, gap, ...tooStrong, gap, ...labels, gap, ...balance, gap, ...acidity, gap, ...order,
  ],
  widths: [44, 24, 12, 12, 12, 12, 12, 12],
  landscape: false,
});
