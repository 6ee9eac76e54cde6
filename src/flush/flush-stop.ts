import { type Band } from "../bands/band";
import { isBelow, standing } from "../maths/compare";
import { type Ec25, type Litres, type Ph, quantities } from "../quantities";
import { Refusal } from "../refusal";
import {
  believableEc,
  believablePh,
  ecSetAside,
  type FlushReading,
  litresPoured,
  untilLastFilled,
} from "./flush-reading";
import { type FlushVerdict } from "./flush-verdict";
import { overFlushLimit } from "./over-flush-limit";
import { doubtfulPortions } from "./portions";
import { whileSalty } from "./while-salty";
import { inLitres, inMillisiemens, inPh } from "./words";

/**
 * The stop check of a flush: pour on, pause, or stop, from the readings taken while washing.
 *
 * Errs to less water: the water limit ends a flush whatever the runoff reads; no believable last reading, no advice to
 * pour. Soil is taken slower: a pause after each portion, and a smaller limit.
 *
 * Formula:  in this order: last reading not believable; litres that are no portions; water limit reached; EC below the
 *           band; EC in band (pH in: stop, pH out: pause, for water does not cure pH); EC above it: by its course
 *           (`whileSalty`)
 * Valid:    readings in order, one row each; rows below the last filled one are left out
 * Source:   common practice; [kerr-1983] for the flattening
 *
 * @param containerLitres the pot's volume; without it no water limit can be held
 * @throws {Refusal} `impossible` when the pot has no volume
 * @example flushStop([{ ph: 6, ec: 3.1, litres: undefined }], bandFor("coir")).answer // "stop: in band"
 */
export function flushStop(readings: readonly FlushReading[], band: Band, containerLitres?: Litres): FlushVerdict {
  const filled = untilLastFilled(readings);
  const water = waterSoFar(filled, band, containerLitres);
  const last = filled.at(-1);
  const ph = believablePh(last?.ph);
  const ec = believableEc(last?.ec);
  if (ph instanceof Refusal || ec instanceof Refusal)
    return cannotSay([ec, ph], water, filled.length < readings.length);
  const doubt = doubtfulPortions(filled, containerLitres);
  if (doubt !== undefined) return { answer: "cannot say", reasons: [doubt, "pour no more until the litres are right"] };
  const verdict = water.reached ? enoughWater(ec, band) : byBand(filled, { ph, ec }, { band, containerLitres });
  const [first, ...others] = verdict.reasons;
  return { answer: verdict.answer, reasons: [first, ...others, ...ecSetAside(filled), water.said] };
}

interface Water {
  readonly reached: boolean;
  readonly said: string;
}

function waterSoFar(readings: readonly FlushReading[], { medium }: Band, containerLitres: Litres | undefined): Water {
  const poured = litresPoured(readings);
  if (containerLitres === undefined)
    return { reached: false, said: "no container volume given: the water limit is not checked" };
  const limit = overFlushLimit(containerLitres, medium);
  const whose = medium === undefined ? "medium unknown, so the gentlest limit" : `limit for ${medium}`;
  const said = `${inLitres(poured)} poured; ${whose} ${inLitres(limit)} in a pot of ${inLitres(containerLitres)}`;
  return { reached: poured > 0 && !isBelow(poured, limit, quantities.litres.resolution), said };
}

function cannotSay(readings: readonly (number | Refusal)[], water: Water, unfilled: boolean): FlushVerdict {
  const faults = readings.filter((reading) => reading instanceof Refusal).map(({ message }) => message);
  const stale = unfilled ? ["judged at the last row that holds anything"] : [];
  const limit = water.reached
    ? "the water limit is reached: pour no more"
    : "pour no more until the last row can be read";
  return {
    answer: "cannot say",
    reasons: [faults[0] ?? "the last row cannot be read", ...faults.slice(1), limit, ...stale, water.said],
  };
}

const whereEc = { low: "below", inside: "within", high: "above" } as const;
const ecLimits = ({ ec: [low, high] }: Band): string => `${low.toFixed(2)} to ${inMillisiemens(high)}`;

function enoughWater(ec: Ec25, band: Band): FlushVerdict {
  return {
    answer: "stop: enough water",
    reasons: [
      "the water limit is reached: more only keeps the roots wet",
      `runoff EC ${inMillisiemens(ec)} is ${whereEc[standing(ec, band.ec, quantities.ec.resolution)]} ${ecLimits(band)}`,
      "let it drain, feed gently, and measure the next runoff",
    ],
  };
}

interface Last {
  readonly ph: Ph;
  readonly ec: Ec25;
}

function byBand(
  filled: readonly FlushReading[],
  last: Last,
  pot: { band: Band; containerLitres: Litres | undefined },
): FlushVerdict {
  const { band } = pot;
  switch (standing(last.ec, band.ec, quantities.ec.resolution)) {
    case "low":
      return {
        answer: "stop: enough water",
        reasons: [
          `runoff EC ${inMillisiemens(last.ec)} is below the band's ${inMillisiemens(band.ec[0])}: washed past the band`,
          "feed gently next, so that the roots are not left in plain water",
        ],
      };
    case "inside":
      return inBandByEc(last, band);
    case "high":
      return whileSalty(filled, pot);
  }
}

function inBandByEc({ ph, ec }: Last, band: Band): FlushVerdict {
  const ecInside = `runoff EC ${inMillisiemens(ec)} is within ${ecLimits(band)}`;
  const limits = `${inPh(band.ph[0])} to ${inPh(band.ph[1])}`;
  const side = standing(ph, band.ph, quantities.ph.resolution);
  if (side === "inside") {
    return { answer: "stop: in band", reasons: [ecInside, `runoff pH ${inPh(ph)} is within ${limits}`] };
  }
  const middle = (band.ph[0] + band.ph[1]) / 2;
  return {
    answer: "pause and measure again",
    reasons: [
      `${ecInside}, but runoff pH ${inPh(ph)} is ${side === "low" ? "below" : "above"} ${limits}`,
      `water does not cure pH: let it drain, feed at pH ${inPh(middle)}, then measure the next runoff`,
    ],
  };
}
