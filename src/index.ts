// The whole public surface of the engine, by the question it answers.

// Saying no, and the quantities
export { Refusal, type RefusalCode, type RefusalDetails } from "./refusal";
export {
  airCelsius,
  alkalinity,
  dailyLightIntegral,
  days,
  ec25,
  ecAsRead,
  gramsPerLitre,
  hours,
  humidityPercent,
  isPlausible,
  labelPercent,
  leachingShare,
  litres,
  millivolts,
  percentPerCelsius,
  ph,
  photonFlux,
  ppm,
  ppmScale,
  quantities,
  rounded,
  sheetDate,
  solutionCelsius,
  stockStrength,
  written,
  type Alkalinity,
  type Celsius,
  type DailyLight,
  type Days,
  type Ec25,
  type EcAsRead,
  type GramsPerLitre,
  type Hours,
  type Litres,
  type Millivolts,
  type Percent,
  type Ph,
  type PhotonFlux,
  type Ppm,
  type PpmScale,
  type Quantity,
  type QuantityName,
  type Share,
  type SheetDate,
  type StockStrength,
} from "./quantities";
export { type Judgement } from "./judgement";
export { isAbove, isBelow, standing } from "./maths/compare";
export { type Dated } from "./maths/dated";
export { interpolated } from "./maths/interpolate";

// Readings: can I trust them, and on which scale are they
export { ecAt25, ecAtTemperature, referenceCelsius, standardPercentPerCelsius } from "./readings/ec-at-25";
export { celsiusFromFahrenheit, fahrenheitPerCelsius, freezingFahrenheit } from "./readings/temperature";
export { litresFrom, litresPerUnit, type VolumeUnit } from "./readings/volume";
export { alkalinityInUnit } from "./readings/alkalinity-unit";
export { type AlkalinityUnit, alkalinityUnitNamed, alkalinityUnits } from "./readings/alkalinity-units";
export { type BufferName, buffers } from "./readings/buffer-table";
export { calibrationDue } from "./readings/calibration-due";
export { ecMeter, type MeterCheck, type MeterConditions, trustedErrorPercent } from "./readings/ec-meter";
export { ecInUnit } from "./readings/ec-unit";
export { type EcUnit, ecUnitNamed, ecUnits } from "./readings/ec-units";
export { kclStandardAt } from "./readings/kcl-standard";
export { nernstSlope } from "./readings/nernst-slope";
export { bufferNamed, phBuffer } from "./readings/ph-buffer";
export { type BufferReading, probeLine, type ProbeLine } from "./readings/ph-probe";
export { ecFromPpm, ppmOfEc } from "./readings/ppm";
export { ppmRescale } from "./readings/ppm-rescale";
export { ppmScaleNamed } from "./readings/ppm-scale";
export { probeCheck, type ProbeWord } from "./readings/probe-check";

// Bands: the limits a pot is held against
export { bandFor, isOwnBand, ownBand, type Band, type BandChoice } from "./bands/band";
export { bandOn, type EarlierBand } from "./bands/earlier-band";
export { bandNamed } from "./bands/band-named";
export { bandLimit, bandLimits, type BandLimitName } from "./bands/band-limit";
export { feeders, samples, type BandLimits, type Feeder, type Sample } from "./bands/limits";
export { feederNamed, mediumNamed, sampleNamed } from "./bands/media";
export { media, mediaTable, type Medium } from "./bands/media-table";

// Diagnosis: salt, pH, both, neither
export { drift } from "./diagnosis/drift";
export { driftAlarm, type DriftAlarm } from "./diagnosis/drift-alarm";
export { driftLeft } from "./diagnosis/drift-left";
export { leachingFraction } from "./diagnosis/leaching-fraction";
export { phShift } from "./diagnosis/ph-shift";
export { ratioCeiling } from "./diagnosis/ratio-ceiling";
export { type RootZoneReading, weakestFeedEc } from "./diagnosis/root-zone-reading";
export { rowFlags, rowFlagWords, usualRatioLimit, type RowFlag } from "./diagnosis/row-flags";
export { milligramsPerGram, saltKept, saltScale, type SaltySolution } from "./diagnosis/salt-kept";
export { saltRatio } from "./diagnosis/salt-ratio";

export { type BenchReading, inTime, rankOf, whichFirst } from "./diagnosis/bench";
export { judge, type JudgeOptions } from "./diagnosis/judgement/judge";
export { type CourseStep, type PotJudgement, type PotStanding } from "./diagnosis/judgement/pot-judgement";
export { stepHeading } from "./diagnosis/judgement/step-heading";
export { type PotReading } from "./diagnosis/judgement/pot-reading";
export {
  type Act,
  actWords,
  type Cause,
  causeWords,
  type Phase,
  phases,
  urgencies,
  type Urgency,
  type VerdictWord,
  verdictWords,
  type When,
  whenWords,
} from "./diagnosis/judgement/words";

// Flush: how much, when to stop
export { containerCapacity, potVolume, washoutRate } from "./flush/container-capacity";
export { drainedMedia, type DrainedMedium, washingOf, washingTable, type Washing } from "./flush/container-table";
export { fitWashout, type WashPoint } from "./flush/fit-washout";
export { flushLeft, type FlushLeft } from "./flush/flush-left";
export { flushPlan, standardPortionShare, type FlushPlan, type FlushPortion } from "./flush/flush-plan";
export { flushStop } from "./flush/flush-stop";
export { aboveWater, flushTarget, insideShare } from "./flush/flush-target";
export { flushStanding, type FlushStanding } from "./flush/flush-standing";
export { type PourLiquid, pourLiquids } from "./flush/pour-liquid";
export { type FlushReading } from "./flush/flush-reading";
export { type FlushStop, type FlushVerdict } from "./flush/flush-verdict";
export { flushVolume, type FlushPot, type FlushVolume } from "./flush/flush-volume";
export { leachNeed } from "./flush/leach-need";
export { overFlushLimit } from "./flush/over-flush-limit";
export { washingCourse, type WashingCourse } from "./flush/washing-course";
export { washoutEc, washoutLitres } from "./flush/washout";
export { acidDose } from "./flush/carbonate/acid-dose";
export { acidTable, type AcidName } from "./flush/carbonate/acid-table";
export { acidNamed, acids, molesPerBottle, protonsGiven } from "./flush/carbonate/acids";
export { phInAir } from "./flush/carbonate/air";
export { alkaliDose } from "./flush/carbonate/alkali-dose";
export { baseNamed, baseTable, type BaseName } from "./flush/carbonate/bases";
export { carbonateConstants, type CarbonateConstants } from "./flush/carbonate/constants";
export { type Dose, type TreatedWater } from "./flush/carbonate/dose";
export { alkalinityAt, carbonateCharge, freeAcid, milliequivalents, totalCarbonate } from "./flush/carbonate/water";

// Mix: the recovery feed
export { analyteNamed, type Analyte, elementShare } from "./mix/analyte";
export { blendEc, type BlendPart } from "./mix/blend-ec";
export { blendShare } from "./mix/blend-share";
export { cations, type CationWord } from "./mix/cations";
export { dilution, type Tank } from "./mix/dilution";
export { feedGrams } from "./mix/feed-grams";
export { labelPpm } from "./mix/label-ppm";
export { type Ramp, recoveryFeed, usualRamp } from "./mix/recovery-feed";
export { stockDose } from "./mix/stock-dose";
export { swapOut } from "./mix/swap-out";

// Recovery: is it working
export { recoveryTrend, type RecoveryTrend } from "./recovery/recovery-trend";
export { uptake } from "./recovery/uptake";
export { watering } from "./recovery/watering";
export { watchPlan, type WatchStep } from "./recovery/watch-plan";

export { type SliceSpread, spread } from "./recovery/timeline/spread";
export {
  timeline, type Timeline, type TimelineEvent, type TimelineLane, type TimelineOptions, type TimelineSeries,
} from "./recovery/timeline/timeline";
export { type LaneName, type SeriesRole } from "./recovery/timeline/lanes";
export { type TimelineReading } from "./recovery/timeline/reading";
export { type LaneBand } from "./recovery/timeline/lane-bands";
export { type LaneTrend } from "./recovery/timeline/lane-trend";
export { type TimelinePoint } from "./recovery/timeline/segments";
export { type Watch } from "./recovery/timeline/watch";

// Environment: light and air
export { dailyLight, lightHours } from "./environment/daily-light";
export { dewPoint } from "./environment/dew-point";
export { driestPercent } from "./environment/relative-humidity";
export { pressureAtZero, saturationPressure, tetens } from "./environment/saturation-pressure";
export { vapourPressureDeficit } from "./environment/vapour-pressure-deficit";

// Cells: what one cell of a sheet says
export { columnLetters } from "./cells/column-letters";
export { inEngineUnit } from "./cells/engine-unit";
export { logUnitNamed, logUnits, type NamedLogUnit } from "./cells/log-unit";
export { numberCell, type NumberCell } from "./cells/number-cell";
export {
  type EcLogUnit, isReadable, type LogUnit, measureOf, type TemperatureLogUnit, type VolumeLogUnit, type WrittenUnit,
} from "./cells/units";

// Log: the sheet the grower already keeps
export { logInTime, type LogInTime, type PlacedRow } from "./log/in-time";
export {
  deeds,
  logQuantities,
  sights,
  type LogEvent,
  type LogEventKind,
  type LogQuantity,
  type LogRow,
  type PlantLook,
} from "./log/log";
export {
  type CellProblem, type ColumnAnswer, type ColumnReading, type DateOrder, type LogAnswers, type LogGrid,
  type LogQuestion, type LogQuestionKind, type LogReading, type SetAside,
} from "./log/reading";
export { plantScale } from "./log/plant-scale";
export { readLog } from "./log/read-log";
export { rowsUsed } from "./log/rows-used";
export { waitingIn } from "./log/remarks";
export { isOwnSheet, ownSheetNote } from "./log/own-sheet";
export { logSheetsIn, shareDays, type LogSheet, type NamedGrid } from "./log/log-sheets";
export { saidOfRows, type SaidOfRows } from "./log/said-of-rows";
export { loggedReading } from "./log/rows/logged-reading";
export { usedRange, type UsedRange } from "./log/rows/used-range";

// Report: from a grid to all that is shown of it
export { type BandOfPot, type PotReport, type Report, reportOf, type ReportRequest } from "./report/report";
