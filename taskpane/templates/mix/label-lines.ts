import { input, numberBox, result } from "../lines";
import { type Line, type TemplateCell } from "../sheet-template";

/** What labels count each element as; the first is the usual one. */
const analytes: readonly (readonly string[])[] = [
  ["N"],
  ["P2O5", "P"],
  ["K2O", "K"],
  ["Ca", "CaO"],
  ["Mg", "MgO"],
  ["S", "SO3"],
];
const columns = ["C", "D", "E", "F", "G", "H"];
const feeds = ["Feed 1", "Feed 2", "Feed 3", "Feed 4", "Feed 5", "Feed 6"];
const percent = numberBox("% by weight, from the label", [0, 100], "0.0");
const grams = numberBox("g of it in 1 L of the finished feed", [0, 100], "0.00");

/** What the labels give in ppm of each element, and the balance of K, Ca and Mg with the water's own. */
export const labelLines: readonly Line[] = [
  {
    cells: [...["What the labels give", "g per L"], ...columns.map(() => "% weight"), ""].map((value) => ({
      value,
      style: "heading",
    })),
  },
  {
    key: "counted",
    cells: [
      { value: "Counted on the label as", style: "label" },
      undefined,
      ...analytes.map((words): TemplateCell => ({
        value: words[0] ?? "",
        style: "input",
        accepts: { words, hint: "as the label counts it" },
      })),
    ],
  },
  ...feeds.map((feed, i): Line => ({
    key: `feed${i}`,
    cells: [
      { value: feed, style: "input", accepts: { words: [], hint: "its name" } },
      grams,
      ...columns.map(() => percent),
    ],
  })),
  {
    cells: ["ppm of the element (mg/L)", "", "N", "P", "K", "Ca", "Mg", "S", ""].map((value) => ({
      value,
      style: "heading",
    })),
  },
  ...feeds.map((_, i): Line => ({
    key: `ppm${i}`,
    cells: [
      { formula: `{feed${i}:A}`, style: "label" },
      undefined,
      ...columns.map((column): TemplateCell => ({
        formula: `RUNOFF.LABELPPM({feed${i}:B},{feed${i}:${column}},{counted:${column}})`,
        style: "result",
        numberFormat: "0",
      })),
    ],
  })),
  {
    key: "total",
    cells: [
      { value: "All feeds together (mg/L)", style: "label" },
      undefined,
      ...columns.map((column): TemplateCell => ({
        formula: `IF(COUNT({ppm0:${column}}:{ppm5:${column}})=0,"",SUM({ppm0:${column}}:{ppm5:${column}}))`,
        style: "result",
        numberFormat: "0",
      })),
    ],
  },
  result("cations", "Balance of K, Ca and Mg", {
    formula:
      'IF(COUNT({total:E}:{total:G})=0,"",RUNOFF.CATIONS({total:E},N({total:F})+N({waterCa}),N({total:G})+N({waterMg})))',
    how: "with what the water brings of Ca and Mg",
  }),
];

/** The water's own calcium and magnesium, as its card gives them. */
export const waterMinerals: readonly Line[] = [
  input("waterCa", "Ca in the water (mg/L)", { accepts: { between: [0, 1000], hint: "from the supplier's report" } }),
  input("waterMg", "Mg in the water (mg/L)", { accepts: { between: [0, 1000], hint: "from the supplier's report" } }),
];

