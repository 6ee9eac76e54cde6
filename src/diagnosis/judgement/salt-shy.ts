import { bandFor, isOwnBand } from "../../bands/band";
import { isAbove } from "../../maths/compare";
import { quantities } from "../../quantities";
import { type Conclusion } from "./conclusion";
import { step } from "./course/step";
import { type Facts } from "./facts";
import { wantedRunoff } from "./limits";
import { saltSays } from "./says/salt-says";

/** A salt-shy crop above the light feeder's limit, in a band for stronger feeders; its name. */
export function tooSaltyForCrop({ crop, band, ec }: Facts): string | undefined {
  if (
    crop?.saltShy !== true ||
    ec === undefined ||
    band.medium === undefined ||
    band.feeder === "light" ||
    isOwnBand(band)
  )
    return undefined;
  const light = bandFor(band.medium, "light", band.sample);
  return isAbove(ec.latest, light.ec[1], quantities.ec.resolution) ? crop.called : undefined;
}

/**
 * Until it is known which limits hold: more is let run off where two readings agree and not much drains already.
 */
export function runoffForShy({ ec, water }: Facts, crop: string): Conclusion["steps"] {
  if (ec?.before === undefined || water.runoff === "enough" || water.runoff === "much") return [];
  const says = saltSays.shyMeanwhile(crop, wantedRunoff);
  return [step("let more run off", "at the next watering", says, { share: wantedRunoff })];
}
