import { type Band, quantities, type RowFlag, rowFlagWords, usualRatioLimit, weakestFeedEc } from "../../src/index";
import { isRefused, isTaken, type PlainReading, type PlainRow } from "./plain-reading";

type Flagged = "input pH" | "input EC" | "runoff pH" | "runoff EC";

/** ROWFLAG as a formula of the sheet: the words of one row in the engine's order, joined by "; ", or "in band". */
export function plainFlags(row: PlainRow<Flagged>, band: Band): string {
  const conditions = conditionsOf(row, band);
  const words = rowFlagWords.flatMap((word) => {
    const condition = conditions[word];
    return condition === undefined ? [] : [`IF(${condition},"${joined(word)} ","")`];
  });
  const drained = (["runoff pH", "runoff EC"] as const).flatMap((quantity) => row(quantity) ?? []);
  const readings = [...(["input pH", "input EC"] as const).flatMap((quantity) => row(quantity) ?? []), ...drained];
  const all = `${words.join("&")}&IF(OR(${drained.map(isTaken).join(",")}),"in_band","")`;
  const spaced = `SUBSTITUTE(SUBSTITUTE(TRIM(SUBSTITUTE(${all}," in_band",""))," ","; "),"_"," ")`;
  return `IF(OR(${readings.map(isRefused).join(",")}),NA(),${spaced})`;
}

/** A flag as one word, so that the spaces left are those between flags. */
const joined = (word: RowFlag): string => word.replaceAll(" ", "_");

type Conditions = Partial<Record<RowFlag, string>>;

/** What has to hold for each flag, as `rowFlags` and `doubts` have it; nothing for a column that is not there. */
function conditionsOf(row: PlainRow<Flagged>, band: Band): Conditions {
  const [inPh, inEc, outPh, outEc] = [row("input pH"), row("input EC"), row("runoff pH"), row("runoff EC")];
  const feed = [0, band.feedEcHigh] as const;
  return {
    ...(doubtful(row) === "" ? {} : { "check reading": `OR(${doubtful(row)})` }),
    ...(outPh && { "runoff pH low": low(outPh, "ph", band.ph), "runoff pH high": high(outPh, "ph", band.ph) }),
    ...(outEc && { "runoff EC low": low(outEc, "ec", band.ec), "runoff EC high": high(outEc, "ec", band.ec) }),
    ...(outEc && inEc && { "salt ratio high": isRatioHigh(outEc, inEc, band) }),
    ...(inPh && { "input pH low": low(inPh, "ph", band.ph), "input pH high": high(inPh, "ph", band.ph) }),
    ...(inEc && { "input EC high": high(inEc, "ec", feed) }),
  };
}

/** A condition on a reading that was taken; a blank meets none. */
const where = (reading: PlainReading, condition: string): string => `IF(${isTaken(reading)},${condition},FALSE)`;

type Scale = "ph" | "ec";
type Limits = readonly [low: number, high: number];

const believed = ({ value }: PlainReading, scale: Scale): string => {
  const [lowest, highest] = quantities[scale].plausible;
  return `${value}>=${lowest},${value}<=${highest}`;
};
const halfStep = (scale: Scale | "saltRatio"): number => quantities[scale].resolution / 2;

const low = (reading: PlainReading, scale: Scale, [limit]: Limits): string =>
  where(reading, `AND(${believed(reading, scale)},${limit}-${reading.value}>${halfStep(scale)})`);
const high = (reading: PlainReading, scale: Scale, [, limit]: Limits): string =>
  where(reading, `AND(${believed(reading, scale)},${reading.value}-${limit}>${halfStep(scale)})`);

/** Judged against feed only, and where the runoff itself is above its band. */
function isRatioHigh(outEc: PlainReading, inEc: PlainReading, { ec }: Band): string {
  const feed = `${inEc.value}>=${weakestFeedEc},${believed(inEc, "ec")}`;
  const ratio = `AND(${feed},${outEc.value}/${inEc.value}-${usualRatioLimit}>${halfStep("saltRatio")})`;
  return `IF(${high(outEc, "ec", ec)},${where(inEc, ratio)},FALSE)`;
}

/** Readings that are hard to believe, one condition each. */
function doubtful(row: PlainRow<Flagged>): string {
  const [inEc, outEc] = [row("input EC"), row("runoff EC")];
  const not = (reading: PlainReading | undefined, scale: Scale): string[] =>
    reading === undefined ? [] : [where(reading, `NOT(AND(${believed(reading, scale)}))`)];
  const [step, strongest] = [quantities.ec.resolution, quantities.ec.plausible[1]];
  return [
    ...not(row("input pH"), "ph"),
    ...(inEc === undefined ? [] : [where(inEc, `OR(${inEc.value}<${step},${inEc.value}>${strongest})`)]),
    ...not(row("runoff pH"), "ph"),
    ...not(outEc, "ec"),
    ...(inEc === undefined || outEc === undefined ? [] : [isRatioOdd(outEc, inEc)]),
  ].join(",");
}

function isRatioOdd(outEc: PlainReading, inEc: PlainReading): string {
  const [least, most] = quantities.saltRatio.plausible;
  const ratio = `${outEc.value}/${inEc.value}`;
  return where(outEc, where(inEc, `IF(${inEc.value}<${weakestFeedEc},FALSE,OR(${ratio}<${least},${ratio}>${most}))`));
}
