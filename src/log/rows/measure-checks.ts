import { quantities } from "../../quantities";
import { type Measure } from "../columns/measures";
import { type LogUnit } from "../../cells/units";

/** What is said about a cell; with a value, the value is used all the same. */
export interface Said {
  readonly value?: number;
  readonly reason: string;
}

export interface Checked {
  readonly measure: Measure;
  readonly unit: LogUnit;
  /** The middle of the column's figures, in the engine's unit. */
  readonly median: number | undefined;
}

/** A pH this low is a probe out of the water or an empty cell, not a solution. Common practice. */
export const ghostPh = 1;
/** A single EC this many times its column's middle has more likely lost its decimal point than found so much salt. */
const outlierTimes = 8;
/** Solution and air in a grow room; a figure like a pH far below the column's middle is one. */
const warmRoomCelsius = 15;

const notMeasured: Said = { reason: "0 is read as not measured" };

/** Whether a figure can be what its column says; what it looks like instead, when it cannot. */
export function checkMeasure(value: number, raw: number, column: Checked): number | Said {
  if (column.measure === "volume") return volume(value, raw);
  if (raw === 0) return notMeasured;
  if (column.measure === "EC") return ec(value, raw, column);
  if (column.measure === "pH") return acidity(value);
  if (column.measure === "humidity") return humidity(value);
  return temperature(value, raw, column);
}

function ec(value: number, raw: number, { unit, median }: Checked): number | Said {
  const [low, high] = quantities.ec.plausible;
  if (!(value >= 0)) return { reason: `EC ${raw} cannot be: it is below 0` };
  if (value < low) return tooLow(raw, unit);
  const times = median === undefined ? 1 : value / median;
  if (value > high) {
    const looks = value / 1000 >= low ? "it looks like uS/cm or ppm" : "a decimal point may be missing";
    if (value > quantities.ec.physical[1] || times > outlierTimes)
      return { reason: `${raw} in a column of ${unit}: ${looks}; it is not converted` };
    return { value, reason: `EC ${raw} ${unit} is hard to believe: measure again` };
  }
  if (times > outlierTimes && value > 2)
    return {
      value,
      reason: `${raw} is ${Math.round(times)} times the column's usual reading: is a decimal point missing?`,
    };
  return value;
}

function tooLow(raw: number, unit: LogUnit): Said {
  const [low, high] = quantities.ec.plausible;
  if (unit !== "mS/cm" && raw >= low && raw <= high)
    return { reason: `${raw} in a column of ${unit}: it looks like mS/cm; it is not converted` };
  return { reason: `EC ${raw} ${unit} is what a probe shows out of the water, or plain water: not used` };
}

function acidity(value: number): number | Said {
  const [low, high] = quantities.ph.plausible;
  if (value >= low && value <= high) return value;
  if (value >= 0 && value <= ghostPh)
    return { reason: `pH ${value} is what a probe shows before it is in the water: not used` };
  if (value >= 0 && value <= quantities.ph.physical[1])
    return { value, reason: `pH ${value} is hard to believe: measure again` };
  const looksWarm =
    value >= quantities.solutionCelsius.plausible[0] && value <= quantities.solutionCelsius.plausible[1];
  const looks = looksWarm
    ? "it looks like a temperature"
    : value >= low * 10 && value <= high * 10
      ? "a decimal point may be missing, or it is the probe's mV"
      : "it looks like the probe's mV";
  return { reason: `pH ${value} cannot be: ${looks}` };
}

function temperature(value: number, raw: number, { unit, median }: Checked): number | Said {
  const [low, high] = quantities.airCelsius.plausible;
  const [acid, alkaline] = quantities.ph.plausible;
  const asCelsius = (raw - 32) / 1.8;
  const usual = median !== undefined && unit === "C" && median >= warmRoomCelsius;
  if (usual && raw >= acid && raw <= alkaline)
    return { reason: `${raw} C beside a usual ${median} C looks like a pH in the wrong column` };
  if (value >= low && value <= high) return value;
  if (unit === "C" && asCelsius >= low && asCelsius <= high)
    return { reason: `${raw} in a column of C looks like F; it is not converted` };
  if (unit === "F" && raw >= low && raw <= high)
    return { reason: `${raw} in a column of F looks like C; it is not converted` };
  return { reason: `${raw} ${unit} is hard to believe for a grow room: not used` };
}

function humidity(value: number): number | Said {
  const [low, high] = quantities.humidityPercent.plausible;
  if (value >= low && value <= high) return value;
  if (value > 0 && value < low) return { value, reason: `humidity ${value} % is hard to believe: measure again` };
  return { reason: `humidity ${value} % cannot be: it must be 0 to 100` };
}

function volume(value: number, raw: number): number | Said {
  const { physical, plausible } = quantities.litres;
  if (!(value >= 0 && value <= physical[1])) return { reason: `a volume of ${raw} cannot be` };
  if (value > plausible[1]) return { value, reason: `${raw} is hard to believe for a pot: is it another unit?` };
  return value;
}
