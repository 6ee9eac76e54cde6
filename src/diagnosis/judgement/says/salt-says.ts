import { concentrateCaution, drainCaution } from "./cautions";
import { ecText, feedText, litresText, percentText, phText } from "./figures";

/** The figures of a flush. */
export interface FlushFigures {
  readonly ph: number;
  /** What is poured, by medium. */
  readonly liquid: string;
  /** mS/cm at which it is done. */
  readonly target: number;
  readonly waterEc: number | undefined;
  /** Litres of one portion, and what should do in all, where they are known. */
  readonly portion: number | undefined;
  readonly most: number | undefined;
  /** The limits are those of a sample taken on purpose, which the drain of a flush is not. */
  readonly isSampled: boolean;
  /** Litres at which any flush of this pot ends, where its size is known. */
  readonly limit: number | undefined;
}

const portions = ({ portion, most, limit }: FlushFigures): string => {
  const each = portion === undefined ? "in portions" : `in portions of about ${litresText(portion)}`;
  if (most === undefined) return each;
  return limit === undefined || limit <= most
    ? `${each}, ${litresText(most)} in all at most`
    : `${each}, about ${litresText(most)} in all by reckoning and never above ${litresText(limit)}`;
};
const done = ({ target, isSampled }: FlushFigures): string =>
  `Let each drip, measure, and stop when the runoff is at ${ecText(target)} or below, or no longer falls${isSampled ? "; a fresh sample, taken as before an hour later, decides" : ""}`;
const water = ({ waterEc }: FlushFigures): string =>
  waterEc === undefined ? "" : ` This water brings ${ecText(waterEc)} of its own: the runoff cannot go below it. Rain or purified water, or a blend with it, gets further.`;

/** So many readings show a fall. */
const fallShown = 4;

export const saltSays = {
  flush: (figures: FlushFigures): string =>
    `Flush once, ${portions(figures)}, with ${figures.liquid} at ${phText(figures.ph)}. ${done(figures)}.${water(figures)} ${drainCaution}`,
  flushIfAgreed: (figures: FlushFigures): string =>
    `Only if the second sample agrees: flush once, ${portions(figures)}, with ${figures.liquid} at ${phText(figures.ph)}. ${done(figures)}.${water(figures)} ${drainCaution}`,
  flushAgain: (figures: FlushFigures): string =>
    "It came back: the water missed pockets, or a crust, dry spots or slow-release grains give off salt. Look for which, then rinse again slowly and evenly, " +
    `${portions(figures)}, with ${figures.liquid} at ${phText(figures.ph)}. ${done(figures)}. ${drainCaution}`,
  leachSoil: (figures: FlushFigures): string =>
    `Leach slowly with ${figures.waterEc === undefined ? "plain" : "rain or purified"} water at ${phText(figures.ph)}, ${portions(figures)}, with pauses of an hour or more. ${done(figures)}.${water(figures)} ${drainCaution}`,
  weakWaterings: (share: number, litres: number | undefined, liquid: string): string =>
    `The next one to three waterings with ${liquid}, each so that 20 to 30 % drains; ` +
    `after that let about ${percentText(share)} run off each time${litres === undefined ? "" : `: about ${litresText(litres)} a watering`}. ${drainCaution}`,
  keepOn: (ecs: readonly number[]): string =>
    `It works: ${ecs
      .slice(-fallShown)
      .map((ec) => Number(ec.toFixed(2)))
      .join(", ")}, lower each time. Go on as now, with weak feed or more runoff, ` +
    `and read again. No flush while it falls. ${drainCaution}`,
  moreRunoff: (share: number, litres: number | undefined, now: number | undefined): string =>
    `${now === undefined ? "Measure how much drains, and let" : `Only ${percentText(now)} drains: that is why salt stays. Let`} ` +
    `${percentText(share)} run off each time${litres === undefined ? "" : `: about ${litresText(litres)} a watering`}. ${drainCaution}`,
  beforeItShows: (why: string): string =>
    `Still in band, but ${why}. Let 10 to 20 % run off each time, before it leaves the band. ${drainCaution}`,
  seenInBand: (why: string, isLeaf: boolean, share: number): string =>
    `Still in band, but ${why}, and ${isLeaf ? "the leaf edges show" : "a crust shows"} it: salt gathers. Let about ${percentText(share)} run off each time until it falls; no stronger feed. ${drainCaution}`,
  shyMeanwhile: (crop: string, share: number): string =>
    `Meanwhile let about ${percentText(share)} run off each time, and raise no feed: ${crop} suffers from less salt than this band allows. ${drainCaution}`,
  wrongMix: (now: number, usual: number): string =>
    `Stop using this mix: it reads ${ecText(now)} where ${ecText(usual)} was usual. Thin it or mix anew to ${feedText(usual)}, and check the doser. ${concentrateCaution}`,
  weakerFeed: (to: number, now: number | undefined): string =>
    `${now === undefined ? "" : `The feed goes in at ${ecText(now)}. `}Lower it to about ${feedText(to)} until the runoff is back in band: runoff cannot fall below what is poured.`,
  unknownFeed: (most: number): string =>
    `Measure what you pour. Until the runoff is back in band feed at half strength, ${feedText(most)} at most.`,
  clearWaterOnly: "No liquid feed for now: what lies in the medium feeds by itself.",
  topUpPlain: (to: number): string =>
    `What drains comes back stronger. Top up with plain water, not feed, to about ${feedText(to)}, or change the tank.`,
  stopFeeding: (isWaterSalty: boolean): string =>
    `Stop feeding: the soil is probably salty. ${isWaterSalty ? "Rain or purified" : "Plain"} water only until it has been tested.`,
  rinseSoil: (isWaterSalty: boolean): string =>
    `Until the test is back water with ${isWaterSalty ? "rain or purified water" : "plain water"}, slowly, so that 20 to 30 % drains. ${drainCaution}`,
  moreOften: "The pot drinks all it gets. Water more often, before it dries out, and each time so that some drains.",
  clearDripper:
    "Clear the dripper first, and measure what it gives in a minute beside its neighbours: whatever is washed out now comes back while it is blocked.",
  takeOffTop: (what: "slow-release" | "crust"): string =>
    what === "crust"
      ? "Scrape the crust off, half a centimetre at most, before water dissolves it into the pot again."
      : "Take the slow-release grains off the top first: each watering frees more of them. Then leach.",
  askRelease:
    "Is the slow-release fertiliser mixed in or on top? On top: take it off. Mixed in: repot. No flush until you know: leaching frees more salt.",
  repot:
    "Repot in fresh medium without fertiliser: leaching only frees more of the slow-release that is mixed in. Then liquid feed only.",
} as const;
