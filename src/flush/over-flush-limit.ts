import { type Medium } from "../bands/media-table";
import { type Litres } from "../quantities";
import { potVolume } from "./container-capacity";
import { drainedMedia, washingOf } from "./container-table";

/** The houseplant rule of extension services: leach with twice the pot's volume. */
const potVolumesLimit = 2;

/**
 * The litres at which a flush ends whatever the runoff reads, because roots stand in water and little more comes out.
 *
 * Errs to less water: the smaller of two rules; an unknown medium gets the smallest limit of all media.
 *
 * Formula:  limit = min(n x container capacity, 2 x pot volume); n = 3, in soil 2
 * Source:   common practice; [kerr-1983] for the falling-off after 1 to 1.5 capacities
 *
 * @param medium unknown when the grower gave limits of their own
 * @returns L
 * @example overFlushLimit(litres(10), "coir") // 19.5
 */
export function overFlushLimit(containerLitres: Litres, medium: Medium | undefined): Litres {
  const volumes = medium === undefined ? Math.min(...drainedMedia.map(volumesOf)) : volumesOf(medium);
  return (potVolume(containerLitres) * Math.min(potVolumesLimit, volumes)) as Litres;
}

/** The container capacities of a medium's limit, in pot volumes. */
function volumesOf(medium: Medium): number {
  const { capacitiesLimit, shareHeld } = washingOf(medium);
  return capacitiesLimit * shareHeld;
}
