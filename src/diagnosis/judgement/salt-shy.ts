import { bandFor, isOwnBand } from "../../bands/band";
import { isAbove } from "../../maths/compare";
import { quantities } from "../../quantities";
import { type Facts } from "./facts";

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
