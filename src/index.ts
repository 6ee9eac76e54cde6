// The whole public surface of the engine, by the question it answers.

// Saying no, and the quantities
export { Refusal, type RefusalCode, type RefusalDetails } from "./refusal";
export {
  airCelsius, alkalinity, ec25, ecAsRead, humidityPercent, isPlausible, leachingShare, litres, percentPerCelsius, ph, ppm,
  ppmScale, quantities, solutionCelsius,
  type Alkalinity, type Celsius, type Ec25, type EcAsRead, type Litres, type Percent, type Ph, type Ppm, type PpmScale,
  type Quantity, type QuantityName, type Share,
} from "./quantities";
export { type Judgement } from "./judgement";
export { isAbove, isBelow, standing } from "./maths/compare";

// Readings: can I trust them, and on which scale are they
export { ecAt25, ecAtTemperature, standardPercentPerCelsius } from "./readings/ec-at-25";
export { celsiusFromFahrenheit } from "./readings/temperature";
export { litresFrom, litresPerUnit, type VolumeUnit } from "./readings/volume";
export { ecInUnit } from "./readings/ec-unit";
export { type EcUnit, ecUnitNamed, ecUnits } from "./readings/ec-units";
export { ecFromPpm, ppmOfEc } from "./readings/ppm";
export { ppmRescale } from "./readings/ppm-rescale";
export { ppmScaleNamed } from "./readings/ppm-scale";

// Bands: the limits a pot is held against
export { bandFor, bandNamed, ownBand, type Band } from "./bands/band";
export { bandLimit, bandLimits, type BandLimitName } from "./bands/band-limit";
export { ecBands, phBands, type BandLimits } from "./bands/band-table";
export { feederNamed, feeders, media, mediumNamed, type Feeder, type Medium } from "./bands/media";

// Diagnosis: salt, pH, both, neither
export { leachingFraction } from "./diagnosis/leaching-fraction";
export { phShift } from "./diagnosis/ph-shift";
export { ratioCeiling } from "./diagnosis/ratio-ceiling";
export { rowFlags, rowFlagWords, usualRatioLimit, type RootZoneReading, type RowFlag } from "./diagnosis/row-flags";
export { saltRatio } from "./diagnosis/salt-ratio";
export { verdict, type Verdict, type VerdictOptions } from "./diagnosis/verdict";
export { type VerdictAnswer } from "./diagnosis/verdict-table";

// Flush: how much, when to stop
export { flushStop } from "./flush/flush-stop";
export { type FlushReading } from "./flush/flush-reading";
export { type FlushStop, type FlushVerdict } from "./flush/flush-verdict";
export { overFlushLimit } from "./flush/over-flush-limit";

// Mix: the recovery feed
export { dilution, type Tank } from "./mix/dilution";

// Recovery: is it working

export { thin } from "./recovery/timeline/thin";
export {
  timeline, type Timeline, type TimelineEvent, type TimelineLane, type TimelineOptions, type TimelineReading, type TimelineSeries,
} from "./recovery/timeline/timeline";
export { type LaneName, type SeriesRole } from "./recovery/timeline/lanes";
export { type LaneTrend } from "./recovery/timeline/lane-trend";
export { type TimelinePoint } from "./recovery/timeline/segments";
export { type Watch } from "./recovery/timeline/watch";

// Environment: light and air

// Log: the sheet the grower already keeps
export { type LogEvent, type LogEventKind, type LogQuantity, type LogRow } from "./log/log";
export {
  type CellProblem, type ColumnAnswer, type ColumnReading, type DateOrder, type EcLogUnit, type LogAnswers, type LogGrid,
  type LogQuestion, type LogQuestionKind, type LogReading, type LogUnit, type SetAside, type TemperatureLogUnit,
  type VolumeLogUnit,
} from "./log/reading";
export { readLog } from "./log/read-log";
