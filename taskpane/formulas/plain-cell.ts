import {
  ecUnits, type EcUnit, fahrenheitPerCelsius, freezingFahrenheit, litresPerUnit, type LogUnit,
  type UsedRange, usedRange, type VolumeUnit,
} from "../../src/index";
import { type LogCell } from "./log-cell";

/** One cell of the log as a formula of the sheet reads it. */
export interface PlainCell {
  readonly reference: string;
  /** The text that brings its figure into the engine's unit. */
  readonly value: string;
  readonly used: UsedRange;
  /** Whether a 0 there is a reading, as of a volume; of all else it means "not measured". */
  readonly zeroIsRead: boolean;
}

export const plainCell = ({ reference, unit }: LogCell): PlainCell => ({
  reference, value: converted(reference, unit), used: usedRange(unit), zeroIsRead: unit in litresPerUnit,
});

/** A figure in mS/cm, pH, L, C or %, written in brackets where it is more than the cell itself. */
function converted(reference: string, unit: LogUnit): string {
  if (unit === "F") return `((${reference}-${freezingFahrenheit})/${fahrenheitPerCelsius})`;
  if (unit === "share") return `(${reference}*100)`;
  if (unit in ecUnits) return divided(reference, ecUnits[unit as EcUnit]);
  if (unit in litresPerUnit) return multiplied(reference, litresPerUnit[unit as VolumeUnit]);
  return unit.startsWith("ppm ") ? divided(reference, Number(unit.slice("ppm ".length))) : reference;
}

const divided = (reference: string, by: number): string => (by === 1 ? reference : `(${reference}/${by})`);
const multiplied = (reference: string, by: number): string => (by === 1 ? reference : `(${reference}*${by})`);

/** A condition: the figure is none that the log reader would use. */
export const outside = ({ value, used: { low, withLow, high } }: PlainCell): string =>
  `OR(${value}${withLow ? "<" : "<="}${low},${value}>${high})`;

/** The formula once this cell is read: blank where nothing was measured (or words stand), an error where refused. */
export function whenRead(cell: PlainCell, then: string): string {
  const { reference, zeroIsRead } = cell;
  const checked = `IF(${outside(cell)},NA(),${then})`;
  const measured = zeroIsRead ? checked : `IF(${reference}=0,"",${checked})`;
  return `IF(ISNUMBER(${reference}),${measured},IF(ISERROR(${reference}),NA(),""))`;
}
