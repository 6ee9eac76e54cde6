import { type Band, bandFor, ec25, type Litres, litres, ownBand, ph, potVolume, Refusal } from "../src/index";
import { isBlankLimits, limitNames, type PotChoices } from "./choices";

// What the choices for a pot come to: its limits and its volume, or what is wrong with what was typed.

/** The band that the choices name; `undefined` until there is one, or the Refusal that says what is wrong with it. */
export function bandOf({ medium, feeder, own }: Pick<PotChoices, "medium" | "feeder" | "own">): Band | Refusal | undefined {
  if (own === undefined || isBlankLimits(own)) return medium === undefined ? undefined : bandFor(medium, feeder);
  return orRefusal(() => {
    const [phLow = NaN, phHigh = NaN, ecLow = NaN, ecHigh = NaN] =
      limitNames.map((name) => typedNumber(own[name], "a limit", "fill in all four limits, or none"));
    const of = { medium, feeder };
    return ownBand(ph(phLow, "pH low"), ph(phHigh, "pH high"), ec25(ecLow, "EC low"), ec25(ecHigh, "EC high"), of);
  });
}

/** The pot's own volume; `undefined` until it is typed, or the Refusal that says what is wrong with it. */
export function containerOf({ container }: PotChoices): Litres | Refusal | undefined {
  if (container.trim() === "") return undefined;
  return orRefusal(() =>
    potVolume(
      litres(typedNumber(container, "the pot's volume", "a number of litres, or leave it empty"), "the pot's volume"),
    ),
  );
}

function orRefusal<T>(work: () => T): T | Refusal {
  try {
    return work();
  } catch (problem) {
    if (problem instanceof Refusal) return problem;
    throw problem;
  }
}

/** A number in a field of the pane; "5,8" can only be 5.8 there. */
function typedNumber(text: string, quantity: string, next: string): number {
  const tidy = text.trim().replace(",", ".");
  if (/^\d+(\.\d+)?$/.test(tidy)) return Number(tidy);
  throw new Refusal(tidy === "" ? "missing" : "not-a-number", { quantity, given: text, next });
}
