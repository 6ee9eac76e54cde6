import { written } from "../../quantities";
import { type Facts } from "./facts";
import { isInputPhWrong } from "./input";
import { type Level } from "./level";
import { isExtract, littleRunoff } from "./limits";
import { reboundOf } from "./rebound";
import { isFedBark } from "./salt";
import { ecText, percentText, phText } from "./says/figures";
import { drinksText } from "./says/ph-says";

/** What one quantity of the runoff says, with the readings it rests on. */
export function levelReason(level: Level | undefined, name: "ph" | "ec", { band, feed, phase }: Facts): string {
  const of = band.medium === "water culture" ? "" : "runoff ";
  const called = `${of}${name === "ph" ? "pH" : "EC"}`;
  if (level === undefined) return `${called} was not measured in the last two readings`;
  const values = [level.before, level.latest].flatMap((value) => value ?? []);
  const said = values.map((value) => written(value, name).replace("pH ", "")).join(", then ");
  const isSoilDrain = band.medium === "soil" && !isExtract(band.sample);
  const less =
    name === "ec" && band.medium === "bark" && feed.waterEc !== undefined
      ? ` above the water's own ${ecText(feed.waterEc)}`
      : "";
  const isAfterFlush = phase.phase === "after a flush";
  const standing = standingOf(level, band[name], { isSoilDrain, isAfterFlush });
  return `${called} ${said}${less}: ${standing}${trendSaid(level)}`;
}

function trendSaid({ trend, inSteps, values }: Level): string {
  if (trend === "none") return "";
  if (!inSteps) return `, ${trend} over the last ${values.length}`;
  return trend === "rising" ? ", up twice in a row" : ", down twice in a row";
}

function standingOf(
  { side, sideBefore, witness }: Level,
  [low, high]: readonly [number, number],
  { isSoilDrain, isAfterFlush }: { readonly isSoilDrain: boolean; readonly isAfterFlush: boolean },
): string {
  const limit = side === "low" || side === "barely low" ? `below ${low}` : `above ${high}`;
  if (side === "inside" && (sideBefore === "low" || sideBefore === "high"))
    return `back in the band ${low} to ${high}, the one before was outside`;
  if (side === "inside") return `in the band ${low} to ${high}`;
  if (isSoilDrain && side.startsWith("barely"))
    return `${limit}, but not by more than the drain of soil can be off what the roots meet`;
  if (side === "barely low" || side === "barely high")
    return `so close to the band ${low} to ${high} that a meter cannot tell`;
  if (witness === "sole") return `${limit}, and the only reading${isAfterFlush ? " since the flush" : ""}`;
  if (witness === "once") return `${limit}, and no second reading agrees yet`;
  return sideBefore === side ? `${limit} twice` : limit;
}

/** What the feed, the volumes and the plant add to the readings; a ratio is told, never as a comfort. */
export function besides(facts: Facts): string[] {
  const { ec, feed, water, plant, band, crop } = facts;
  const isSalty = ec?.side === "high";
  const ratio =
    feed.ec === undefined || ec === undefined || band.medium === "water culture" ? undefined : ec.latest / feed.ec;
  return [
    ...(isSalty && ratio !== undefined && feed.ec !== undefined
      ? [`the runoff is ${written(ratio, "saltRatio")} times the feed of ${ecText(feed.ec)}`]
      : []),
    ...(isFedBark(facts) && isSalty ? ["hardly more than the feed itself: nothing has gathered in the bark"] : []),
    ...(reboundOf(facts) === "fed"
      ? ["salt in less salt out since the flush explains the rise: what was fed did not drain"]
      : []),
    ...(water.share === undefined || water.runoff === "enough" ? [] : [shareReason(water.share, isSalty)]),
    ...(feed.waterIsSalty && feed.waterEc !== undefined ? [`the water itself brings ${ecText(feed.waterEc)}`] : []),
    ...(feed.softened ? ["the notes tell of softened water: its sodium is not taken up and stays"] : []),
    ...(feed.phSide === undefined || feed.phSide === "inside" || feed.ph === undefined
      ? []
      : [
          `what is poured stands at ${phText(feed.ph)}, outside ${band.ph[0]} to ${band.ph[1]}${isInputPhWrong(facts) ? "" : ", and so pulls the pot back"}`,
        ]),
    ...(feed.alkalinity === undefined ? [] : [`the water's alkalinity is ${feed.alkalinity} mg/L CaCO3`]),
    ...(plant.drinks === undefined ? [] : [drinksText(plant.drinks)]),
    ...plant.words.slice(0, 2).map((words) => `noted: ${words}`),
    ...(crop === undefined ? [] : [`the notes name ${crop.called}`]),
  ];
}

const shareReason = (share: number, isSalty: boolean): string =>
  isSalty && share < littleRunoff
    ? `only ${percentText(share)} drains: that is why salt stays`
    : `${percentText(share)} drains`;
