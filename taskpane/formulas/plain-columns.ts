import { driestPercent, milligramsPerGram, pressureAtZero, quantities, saltScale, tetens } from "../../src/index";
import { isRefused, isTaken, type PlainReading, whenAllRead, whenPossible } from "./plain-reading";

// Each column as a formula of the sheet, from the readings in the order in which its function takes them.

export const plainEc = (reading: PlainReading): string => whenAllRead([reading], reading.value);

export function plainRatio(runoff: PlainReading, input: PlainReading): string {
  const ratio = `${runoff.value}/${input.value}`;
  const [, highest] = quantities.saltRatio.physical;
  return whenAllRead([runoff, input], whenPossible([runoff, input], `IF(${ratio}>${highest},NA(),${ratio})`));
}

export const plainShift = (runoff: PlainReading, input: PlainReading): string =>
  whenAllRead([runoff, input], `${runoff.value}-${input.value}`);

/** Nothing poured is a blank. */
const whenPoured = ({ value }: PlainReading, then: string): string => `IF(${value}=0,"",${then})`;
/** More drained than was poured is refused. */
const whenLess = (drained: PlainReading, poured: PlainReading, then: string): string =>
  `IF(${drained.value}>${poured.value},NA(),${then})`;

export const plainLeaching = (drained: PlainReading, poured: PlainReading): string =>
  whenAllRead([drained, poured], whenPoured(poured, whenLess(drained, poured, `${drained.value}/${poured.value}`)));

export const plainUptake = (poured: PlainReading, drained: PlainReading): string =>
  whenAllRead([poured], whenPoured(poured, drinks(drained, poured)));

const drinks = (drained: PlainReading, poured: PlainReading): string =>
  whenAllRead([drained], whenLess(drained, poured, `${poured.value}-${drained.value}`));

/** Where nothing drained there is no runoff EC to measure, and one that stands there is refused. */
export function plainSaltKept(
  inputEc: PlainReading, poured: PlainReading, runoffEc: PlainReading, drained: PlainReading,
): string {
  const scale = `${saltScale}/${milligramsPerGram}`;
  const intake = `${inputEc.value}*${poured.value}`;
  const nothing = `IF(${isTaken(runoffEc)},NA(),${scale}*${intake})`;
  const kept = whenLess(drained, poured, `${scale}*(${intake}-${runoffEc.value}*${drained.value})`);
  const some = `IF(${isTaken(runoffEc)},${whenPossible([runoffEc], kept)},"")`;
  const drains = whenAllRead([drained], `IF(${drained.value}=0,${nothing},${some})`);
  const known = `IF(${isRefused(runoffEc)},NA(),${drains})`;
  return whenAllRead([inputEc, poured], whenPossible([inputEc], whenPoured(poured, known)));
}

export function plainVpd(air: PlainReading, humidity: PlainReading): string {
  const saturated = `${pressureAtZero}*EXP(${tetens.slope}*${air.value}/(${air.value}+${tetens.celsius}))`;
  const deficit = `${saturated}*(1-${humidity.value}/100)`;
  return whenAllRead([air, humidity], `IF(${humidity.value}<=${driestPercent},NA(),${deficit})`);
}
