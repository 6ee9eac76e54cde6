import { acids, alkalinityUnits } from "../../src/index";
import { input } from "./lines";
import { type Line, type TemplateCell } from "./sheet-template";

/** What the acid is for: `{key}` of the litres and of the pH wanted, and the column of the wide cell beside. */
export interface AcidFor {
  readonly litres: string;
  readonly target: string;
  readonly reasonAt: number;
  /** Lines that the dose's words take in that column, cautions and all. */
  readonly reasonLines: number;
}

/**
 * Acid for water before anything else is in it, dosed by that water's own alkalinity and its own pH. (By the pH of a
 * mixed tank beside the supplier's alkalinity the dose came out twice too large.)
 */
export const acidLines = (aim: AcidFor): readonly Line[] => [
  input("alkalinity", "Alkalinity of this water", {
    accepts: { between: [0, 1000], hint: "test kit or supplier's report; without it no dose" },
  }),
  input("alkUnit", "Its unit, as the report prints it", {
    value: "mg/L CaCO3",
    accepts: { words: Object.keys(alkalinityUnits), hint: "as printed" },
  }),
  input("acidPh", "pH of this water now", {
    accepts: { between: [3, 11], hint: "of the water alone, before any feed or acid" },
    numberFormat: "0.0",
  }),
  input("acid", "Acid", { value: "phosphoric", accepts: { words: acids, hint: "as its bottle says" } }),
  input("percent", "Strength of the bottle (% by mass)", {
    accepts: { between: [1, 100], hint: "from the bottle; no strength, no dose" },
  }),
  {
    key: "acidDose",
    cells: atColumn(
      aim.reasonAt,
      [
        { value: "Acid (mL; citric acid g)", style: "label" },
        { formula: dose(aim), style: "result", numberFormat: "0.0" },
      ],
      { formula: `IF(ISNUMBER({acidDose}),INDEX(${call(aim, ",TRUE")},1,2),"${care}")`, style: "wrapped", lines: aim.reasonLines },
    ),
  },
];

const care =
  "Acid into water, never water into acid; goggles and gloves; four fifths first, stir, wait, measure, then the rest in drops.";

const call = ({ litres, target }: AcidFor, explain = ""): string =>
  `RUNOFF.ACIDDOSE(${litres},RUNOFF.ALKUNIT({alkalinity},{alkUnit},"mg/L CaCO3"),{acidPh},${target},{acid},{percent}${explain})`;

/** Nothing while a figure is missing; where the water is acid enough already, that is said. */
function dose(aim: AcidFor): string {
  return `IF(COUNT({alkalinity},{acidPh},${aim.target},${aim.litres},{percent})<5,"",IF(${aim.target}<{acidPh},${call(aim)},"no acid needed"))`;
}

/** Cells from A on, and one more in a column further right. */
export function atColumn(column: number, cells: readonly TemplateCell[], cell: TemplateCell): Line["cells"] {
  return [...cells, ...Array.from({ length: column - cells.length }, () => undefined), cell];
}
