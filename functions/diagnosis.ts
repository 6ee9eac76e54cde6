import { ec25, saltRatio } from "../src/index";
import { eachCell } from "./answers";
import { reading } from "./cells";

/**
 * Salt ratio: runoff EC over input EC. 1 means what goes in comes out; read a high ratio beside the leaching fraction.
 * @customfunction SALTRATIO
 * @helpurl https://localhost:3000/docs/functions.html#saltratio
 * @param runoff_ec mS/cm at 25 C of what drained, cell or range
 * @param input_ec mS/cm at 25 C of what was poured in, cell or range
 * @returns no unit
 */
export function saltratio(runoff_ec: any[][], input_ec: any[][]): any[][] {
  return eachCell(saltRatio, reading(runoff_ec, ec25, "runoff EC"), reading(input_ec, ec25, "input EC"));
}
