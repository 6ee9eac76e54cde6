import { type LogQuantity, type LogReading, type PlantLook, plantScale } from "../../src/index";
import { type NewColumn } from "./new-column";

/** The columns of how the plant looks, each by what the log reader takes it for. */
const looks: readonly { readonly quantity: LogQuantity; readonly look: keyof PlantLook; readonly header: string }[] = [
  { quantity: "new growth", look: "newGrowth", header: "New growth (0 to 3)" },
  { quantity: "posture", look: "posture", header: "Posture (0 to 3)" },
  { quantity: "spread of symptoms", look: "spread", header: "Spread of symptoms (0 to 3)" },
  { quantity: "roots", look: "roots", header: "Roots (0 to 3)" },
];

/** What may be chosen: the figure, its word beside it. */
export const plantChoices = (look: keyof PlantLook): string[] =>
  plantScale[look].map((word, figure) => `${figure} ${word}`);

/** The plant columns that this log does not have yet, empty and with a pick list. */
export const plantColumns = ({ columns }: Pick<LogReading, "columns">): NewColumn[] =>
  looks
    .filter(({ quantity }) => !columns.some((column) => column.read && column.quantity === quantity))
    .map(({ look, header }) => ({
      header,
      numberFormat: "General",
      formula: () => "",
      accepts: { words: plantChoices(look), hint: `${plantChoices(look).join(", ")}; empty: not looked at` },
    }));
