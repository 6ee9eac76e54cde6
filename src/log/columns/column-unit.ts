import { quantities } from "../../quantities";
import { type Measure } from "./measures";
import { type LogAnswers, type LogQuestionKind } from "../reading";
import { type ColumnSample } from "./sample";
import { type EcLogUnit, type LogUnit, measureOf, type WrittenUnit } from "../../cells/units";

/** The unit of a column and what it rests on; or the question whose answer is missing. */
export type ColumnUnit =
  | { readonly unit: LogUnit; readonly why: string }
  | { readonly unit: undefined; readonly why: string; readonly asks: LogQuestionKind };

/** Feed and runoff run to about 20 mS/cm; the same waters are 100 and more in uS/cm or ppm. */
const highestMillisiemens = quantities.ec.plausible[1];
const lowestHundreds = 100;
/**
 * A feed or a usual runoff ends below this in mS/cm; a meter that shows CF, ten times mS/cm, begins there. Common
 * practice.
 */
const lowestTenths = 10;
/** No solution is kept above 40 C, none below 50 F; between lies no decision. */
const highestCelsius = quantities.solutionCelsius.plausible[1];
const lowestFahrenheit = 50;

export interface Written {
  readonly unit: WrittenUnit | undefined;
  readonly scale: number | undefined;
  /** The header says TDS and no conductivity unit. */
  readonly dissolvedSolids: boolean;
}

/**
 * Decides a column's unit from header, number format, cells and magnitude, in this order; asks where they leave it
 * open.
 */
export function columnUnit(measure: Measure, written: Written, sample: ColumnSample, answers: LogAnswers): ColumnUnit {
  if (measure === "pH") return { unit: "", why: "" };
  if (measure === "humidity") return humidityUnit(sample);
  const own = (unit: WrittenUnit | undefined): WrittenUnit | undefined =>
    unit !== undefined && measureOf(unit) === measure ? unit : undefined;
  const unit = own(written.unit) ?? own(sample.unit);
  const from = own(written.unit) === undefined ? `its cells say ${String(unit)}` : "";
  if (measure === "EC") return ecUnit({ ...written, unit }, from, sample.median, answers);
  if (measure === "temperature") return temperatureUnit(unit, from, sample.median, answers);
  if (unit === "L" || unit === "mL" || unit === "gal" || unit === "qt" || unit === "fl oz") return { unit, why: from };
  if (answers.volumeUnit !== undefined) return { unit: answers.volumeUnit, why: "as answered" };
  return { unit: undefined, why: "the volume's unit is not said", asks: "volume unit" };
}

function ecUnit(written: Written, from: string, median: number | undefined, answers: LogAnswers): ColumnUnit {
  if (written.unit === "ppm" || (written.dissolvedSolids && written.unit === undefined))
    return ppmUnit(written.scale, median, answers);
  const unit = written.unit as EcLogUnit | undefined;
  if (unit !== undefined && fits(unit, median)) return { unit, why: from };
  if (answers.ecUnit !== undefined) return { unit: answers.ecUnit, why: "as answered" };
  const asks = (why: string): ColumnUnit => ({ unit: undefined, why, asks: "EC unit" });
  if (unit !== undefined) return asks(`says ${unit}, and its ${near(median)} cannot be that`);
  if (median === undefined || median < lowestTenths) return { unit: "mS/cm", why: takenFor("mS/cm", median) };
  if (median <= highestMillisiemens) return asks(`${near(median)} are brine in mS/cm, or tenths (CF)`);
  return asks(`${near(median)} could be uS/cm or ppm`);
}

/** Whether the middle of the figures could be that unit at all. NaN and no figures: nothing speaks against it. */
function fits(unit: EcLogUnit, median: number | undefined): boolean {
  if (median === undefined) return true;
  if (unit === "uS/cm") return median >= lowestHundreds;
  return unit === "mS/cm" || unit === "dS/m" ? median <= highestMillisiemens : true;
}

function ppmUnit(scale: number | undefined, median: number | undefined, answers: LogAnswers): ColumnUnit {
  const known = scale ?? answers.ppmScale;
  if (median !== undefined && !(median >= highestMillisiemens)) {
    if (answers.ecUnit !== undefined) return { unit: answers.ecUnit, why: "as answered" };
    return { unit: undefined, why: `says ppm, and ${near(median)} cannot be that`, asks: "EC unit" };
  }
  if (known !== undefined) return { unit: `ppm ${known}`, why: scale === undefined ? "as answered" : "" };
  return { unit: undefined, why: "ppm means nothing without its scale", asks: "ppm scale" };
}

function temperatureUnit(
  unit: WrittenUnit | undefined,
  from: string,
  median: number | undefined,
  answers: LogAnswers,
): ColumnUnit {
  const likely = median === undefined || median <= highestCelsius ? "C" : median >= lowestFahrenheit ? "F" : undefined;
  if ((unit === "C" || unit === "F") && (median === undefined || likely === undefined || likely === unit))
    return { unit, why: from };
  if (answers.temperatureUnit !== undefined) return { unit: answers.temperatureUnit, why: "as answered" };
  if (unit === undefined && likely !== undefined)
    return { unit: likely, why: takenFor(likely, median) };
  return { unit: undefined, why: `${near(median)} could be C or F`, asks: "temperature unit" };
}

/** Humidity runs in tens of percent: figures up to 1 are shares of 1. */
const humidityUnit = ({ median, figures, unit: shown }: ColumnSample): ColumnUnit =>
  shown !== "%" && median !== undefined && figures.every(({ value, unit }) => value <= 1 && unit === undefined)
    ? { unit: "share", why: `${near(median)} are shares of 1` } : { unit: "%", why: "" };

const takenFor = (unit: LogUnit, median: number | undefined): string =>
  median === undefined ? `taken for ${unit} until figures stand in it` : `${near(median)} are ${unit}`;

const near = (median: number | undefined): string => `figures near ${Number(Number(median).toPrecision(2))}`;
