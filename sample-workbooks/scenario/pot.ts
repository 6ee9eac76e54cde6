/**
 * The true state of a container, which no one sees: a balance of water, salt and acid. The log's readings come from here
 * and not from the engine's formulas, so that the engine is shown something it did not make itself.
 */
export interface Pot {
  /** Water that the medium holds after it has drained, litres. */
  readonly capacityLitres: number;
  /** Share of each drained litre that ran past the roots unmixed. */
  readonly channelling: number;
  /** How far one full exchange of the water moves the root zone's pH towards the feed's; small in a buffering medium. */
  readonly phExchange: number;
  readonly waterLitres: number;
  /** Salt in the root zone as EC times litres. */
  readonly saltLoad: number;
  readonly ph: number;
}

/** What is poured on, or drains out. */
export interface Solution {
  readonly litres: number;
  readonly ec: number;
  readonly ph: number;
}

/** What a plant takes between two irrigations. */
export interface Thirst {
  /** Taken up or evaporated. */
  readonly litres: number;
  /** Salt that goes into the plant with each litre, as EC. */
  readonly ecTaken: number;
  /** pH units by which each litre taken up shifts the root zone; negative for an acidifying feed. */
  readonly phPerLitre: number;
}

export function newPot(capacityLitres: number, start: { ec: number; ph: number }, medium: { channelling: number; phExchange: number }): Pot {
  return { capacityLitres, ...medium, waterLitres: capacityLitres, saltLoad: start.ec * capacityLitres, ph: start.ph };
}

/** The plant drinks: water goes, some of the salt goes with it, and the rest stands in less water. */
export function drink(pot: Pot, thirst: Thirst): Pot {
  const litres = Math.min(thirst.litres, pot.waterLitres * 0.8);
  return {
    ...pot,
    waterLitres: pot.waterLitres - litres,
    saltLoad: Math.max(0, pot.saltLoad - litres * thirst.ecTaken),
    ph: pot.ph + litres * thirst.phPerLitre,
  };
}

/** Feed goes on, mixes with what is there, and all above the capacity drains. */
export function pour(pot: Pot, feed: Solution): { readonly pot: Pot; readonly drained: Solution } {
  const water = pot.waterLitres + feed.litres;
  const mixedEc = (pot.saltLoad + feed.litres * feed.ec) / water;
  const moved = Math.min(1, (feed.litres / pot.capacityLitres) * pot.phExchange);
  const ph = pot.ph + (feed.ph - pot.ph) * moved;
  const litres = Math.max(0, water - pot.capacityLitres);
  const drained = {
    litres,
    ec: mixedEc * (1 - pot.channelling) + feed.ec * pot.channelling,
    ph: ph * (1 - pot.channelling) + feed.ph * pot.channelling,
  };
  const saltLoad = pot.saltLoad + feed.litres * feed.ec - litres * drained.ec;
  return { pot: { ...pot, waterLitres: water - litres, saltLoad, ph }, drained };
}
