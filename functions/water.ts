import { ec25, type Ec25 } from "../src/index";
import { amount, type Argument, type Cells } from "./cells";

/**
 * The EC of water that is poured or mixed with: 0 is pure water, and so is a blank cell that a desktop host hands over
 * as 0.
 */
export const waterEc = (cells: Cells | null | undefined, called = "water EC"): Argument<Ec25> =>
  amount(cells, ec25, called);
