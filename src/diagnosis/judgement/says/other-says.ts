import { acidCaution, concentrateCaution, drainCaution } from "./cautions";
import { ecText, feedText, litresText, percentText, phText } from "./figures";

export const measureSays = {
  sameSampleNow: "Read the same sample again, probe rinsed, before anything is changed.",
  secondSample:
    "Take a second sample within the hour, in the same way. Until it agrees only what harms nothing: no full feed, no flush.",
  thirdSample: (said: string): string =>
    `Two samples of one day that cannot both be true (${said}). Rinse the probe, try it in its standard, take a third, and believe the two that agree; until then change nothing.`,
  nextWatering: "Change nothing yet. Measure input and runoff again at the next watering, taken the same way.",
  nextWateringAfter: "Measure input and runoff again at the next watering, taken the same way.",
  phAfterSalt: (ph: number, aim: number | undefined): string =>
    `Salt first: ${phText(ph)} waits, and is judged again by the readings after it${aim === undefined ? "" : `; until then pour at ${phText(aim)}`}. A salty pot reads another pH than a clean one.`,
  phAfterFeed: (ph: number): string =>
    `Measure input and runoff again at the next watering, taken the same way: ${phText(ph)}, a little out, is judged again once the plant is fed.`,
  drainSample: (share: number): string =>
    `A pot that gives no drain gives no sample: pour slowly, a little every few minutes, until ${percentText(share)} runs off, and read that. It is the cure as well, if it is salt.`,
  tankNext: "Stir, and measure the tank again tomorrow, at the same hour.",
  after24: "Measure the runoff 24 h after it.",
  after48: "Measure again 48 h after it; only then decide on more.",
  whenWet: "Measure once the pot is wet through; only then decide on more.",
  inDays: "Measure the runoff pH again in 3 to 7 days: that is how long a correction takes to show.",
  inAWeek: "Measure again in a week, sooner if the plant changes.",
  measureBoth: "Measure pH and EC of what you pour in and of what drains.",
  measureEc: "The pH is well; of salt the log says nothing. Measure the EC of the drain too, at the next watering.",
  measureEcNow: "Measure the EC of the drain now: what the plant shows may be salt, and of salt the log says nothing.",
  measurePhNow: "Measure the pH of the drain now: what the plant shows may be its pH, and of pH the log says nothing.",
  measurePh: "The EC is in band; measure the pH too, at the next watering.",
  pause: "Pause: let it drip and stand, then measure again before more is poured.",
  testSoil:
    "Have the soil itself tested, by a 1:2 or a saturated extract: its drain shows a direction, not what the roots meet.",
  testWhichSalts:
    "Have the soil tested for which salts they are (sodium, chloride or fertiliser) before it is leached.",
  testMedium:
    "Take a sample of the medium, or the drain of a whole day: a spot sample can flatter, when feed runs straight through.",
} as const;

export const meterSays = {
  check: "Rinse the probe and check the meter in fresh standards; do nothing on its word until it reads them right.",
  standards: "Then read input and runoff again, the same sample twice.",
} as const;

export const feedSays = {
  ramp: (share: number, ec: number | undefined, day: number | undefined): string =>
    `Feed at ${share < 1 ? `${percentText(share)} of full strength` : "full strength again"}${ec === undefined ? "" : `, ${feedText(ec)}`}` +
    `${day === undefined ? "" : ` (day ${day} after the flush)`}, ` +
    `${share < 1 ? "and step up to full over a week " : ""}while the runoff stays in band. ${concentrateCaution}`,
  rampAfterFlush: (share: number, ec: number | undefined, after: "flush" | "rinse"): string =>
    `After the ${after} begin with ${percentText(share)} of full strength${ec === undefined ? "" : `, ${feedText(ec)}`}, and step up to full over a week. ${concentrateCaution}`,
  raise: (to: number | undefined, weak: boolean, drainFrom: number): string =>
    `${weak ? "Check first that the mix is what it should be: recipe and dosing. Then raise" : "The plant takes more than it is given. Check the mix, then raise"} ` +
    `the feed${to === undefined ? " by a tenth to a fifth" : ` to about ${feedText(to)}`}, and again at later waterings, one such step at a time, until the runoff reads ${ecText(drainFrom)} or more. ${concentrateCaution}`,
  remix: (now: number, usual: number): string =>
    `The mix is weak: ${ecText(now)} where ${ecText(usual)} was usual. Check recipe and dosing, and bring it back to ${feedText(usual)}. ${concentrateCaution}`,
  lowerBeforeItShows: (now: number, to: number): string =>
    `The feed goes in at ${ecText(now)}, above its limit. Bring it down to about ${feedText(to)} before the pot shows it.`,
  weakOnPurpose: (now: number, low: number): string =>
    `The feed goes in at ${ecText(now)}, itself below the ${ecText(low)} that the drain is held against: right for seedlings and a plant just potted on. ` +
    "For a grown plant raise it a little at a time. Measure again at the next watering.",
  fedFromWithin:
    "What lies in the medium feeds by itself, and a weak sample is usual then. Carry on while the new growth is good; no feed on top.",
  startFeeding: (from: number): string =>
    `Nothing but water goes in, and the plant pales: begin to feed, at about ${feedText(from)}, and step up over a week while the runoff stays in band. ${concentrateCaution}`,
  backToFeed: "Plain water went in, so weak water comes out. Go back to the feed and read then.",
} as const;

export const waterSays = {
  less: (share: number | undefined, litres: number | undefined): string =>
    `${share === undefined ? "The pot is wetter than the plant drinks." : `${percentText(share)} runs through and the plant does not take it up.`} ` +
    `Let the pot dry back between waterings and pour less${litres === undefined ? "" : `, about ${litresText(litres)}`}.`,
  soggy:
    "No water until the pot is clearly lighter: off its saucer, air at the roots. The salt is a little over its limit and waits: read it again when the pot has dried back.",
  letDrain: "Stop pouring and let it drain; keep the pot off its saucer and let it dry back.",
} as const;

export const flushingSays = {
  goOn: (litres: number | undefined): string =>
    `Go on in portions${litres === undefined ? "" : ` of about ${litresText(litres)}`}: it works. Let each drip and measure. ${drainCaution}`,
  stop: (why: string): string => `Stop: ${why}. Let it drain.`,
  soakSlowly: `Wait an hour, level the pot, loosen the top, and soak it slowly from above or below, small portions over the whole surface, until it is heavy; then read. ${drainCaution}`,
  feedAtOnce: (to: number): string =>
    `The roots stand in next to plain water: feed at the next drain-down, today, at about ${feedText(to)}, and step up over a week. ${concentrateCaution}`,
  heldFeed: (share: number, ec: number | undefined): string =>
    `It is not down yet. Feed at ${percentText(share)} of full strength${ec === undefined ? "" : `, ${feedText(ec)}`}, and no step up until a reading is in band. ${concentrateCaution}`,
  noFeedYet: "No feed until a reading is in band: let the soil drain and dry back first, loosened on top, then plain water only.",
  rinseAgain: `Measure again 48 h after it. Still above the band: rinse again, slowly and over the whole surface, now that the roots have had air. ${drainCaution}`,
} as const;

export const tankSays = {
  dilute: (
    ec: number,
    { to, share, litres }: { readonly to: number; readonly share: number; readonly litres: number | undefined },
  ): string =>
    `The tank stands at ${ecText(ec)}. Thin it with plain water to about ${feedText(to)}: top it up to its mark first, then let some out and replace it, until ${percentText(share)} of the full tank${litres === undefined ? "" : `, ${litresText(litres)},`} is new water; in two steps, stirred and measured.`,
  phAfterWater: (aim: number): string =>
    `Water moves the pH too: once the tank is thinned measure it, and set it to ${phText(aim)} then, in small steps, stirred and measured after each. ${acidCaution}`,
  phAfterFeed: (aim: number): string =>
    `The feed moves the pH too: set it to ${phText(aim)} once the feed is in, in small steps, stirred and measured after each. ${acidCaution}`,
  thinBack: (to: number): string =>
    `The plants drink water and leave the salt, and the leaf edges show it: top up to the mark with plain water, not feed, until it reads about ${feedText(to)}, as before it rose; stir and measure.`,
  change:
    "Change the solution: what the plants leave piles up while it is only topped up, and a steady EC can hide it.",
  changeRotten: (aim: number): string =>
    `Roots that rot sour the tank faster than any base mends it: see that pump and air run, cut away what is slimy, and change the solution for a fresh one at ${phText(aim)}.`,
  feed: (to: number): string =>
    `The plants take more salt than water. Bring the tank up to about ${feedText(to)}. ${concentrateCaution}`,
  topUpWater:
    "The plants drink water and leave the salt: top up to the level with plain water, not feed, stir and measure.",
  topUpFeed: `The plants take the salt faster than the water: top up to the level with feed, not plain water, stir and measure. ${concentrateCaution}`,
  dosedTooMuch: "It rose when the tank was topped up with feed: top up with plain water or a weaker feed.",
  stir: "Stir the tank and read it again before anything is added.",
} as const;
