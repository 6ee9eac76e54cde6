import { ecAsRead, ecAt25, percentPerCelsius, solutionCelsius, standardPercentPerCelsius } from "../src/index";
import { eachCell } from "./answers";
import { reading } from "./cells";

/**
 * EC at 25 C from a reading of a meter that does not compensate for temperature. Blank in, blank out.
 * @customfunction ECAT25
 * @helpurl https://localhost:3000/docs/functions.html#ecat25
 * @param ec mS/cm as read, cell or range
 * @param temp_c C of the solution when it was read, cell or range
 * @param [percent_per_c] % per C, 1.91 if left out
 * @returns mS/cm at 25 C
 */
export function ecat25(ec: any[][], temp_c: any[][], percent_per_c?: any[][]): any[][] {
  return eachCell(
    ecAt25,
    reading(ec, ecAsRead, "EC as read"),
    reading(temp_c, solutionCelsius, "solution temperature"),
    reading(percent_per_c, percentPerCelsius, "temperature coefficient", standardPercentPerCelsius),
  );
}
