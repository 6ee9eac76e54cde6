import { type Celsius, type Percent, type Ph } from "../../quantities";
import { type Acid, type AcidName, acidTable } from "./acid-table";
import { molesPerBottle, protonsGiven } from "./acids";
import { phInAir } from "./air";
import { carbonateConstants, standardCelsius } from "./constants";
import { cautions, checkDirection, checkWater, type Dose, measurable, type TreatedWater } from "./dose";
import { alkalinityAt, milliequivalents, thousand, totalCarbonate } from "./water";

/**
 * Acid to bring water to a pH: mL of the bottle, or g of citric acid.
 *
 * Errs to less: rounded down, first 80 %. Acid to pH 5.8 neutralises about three quarters of the alkalinity, not all of
 * it.
 *
 * Formula:  acid meq/L = alkalinity now - alkalinity of the same carbonate at the target pH; over protons given per
 *           mole
 * Valid:    closed water whose alkalinity is carbonate's, target pH 4.5 to 7.5, a tabulated strength
 * Source:   [plummer-busenberg-1982]; acids in src/flush/carbonate/acid-table.ts
 *
 * @param water litres, alkalinity and pH now
 * @param target pH wanted, not above the pH now
 * @param acid which acid and its strength in % by mass; water temperature, 25 C unless given
 * @returns mL or g, exact and measured, with cautions
 * @throws {Refusal} `order` for a target above the pH now; `outside-validity` for a target or strength out of range;
 *   `implausible` water
 */
export function acidDose(
  water: TreatedWater,
  target: Ph,
  acid: { readonly name: AcidName; readonly percent: Percent; readonly celsius?: Celsius },
): Dose {
  checkWater(water, target);
  checkDirection(target, water.phNow, "below");
  const constants = carbonateConstants(acid.celsius ?? standardCelsius);
  const alkalinity = milliequivalents(water.alkalinity);
  const left = alkalinityAt(totalCarbonate(alkalinity, water.phNow, constants), target, constants);
  const neutralised = Math.max(0, alkalinity - left);
  const moles = (neutralised * water.litres) / protonsGiven(acid.name, target) / thousand;
  const exact = (moles / molesPerBottle(acid.name, acid.percent)) * thousand;
  const { densities, leaves, caution, saltsShare: [least, most] }: Acid = acidTable[acid.name];
  const unit = densities === undefined ? "g" : "mL";
  const measured = measurable(exact);
  const added =
    leaves === undefined ? [] : [leftBehind(leaves, (moles / water.litres) * leaves.gramsPerMole * thousand)];
  return {
    exact,
    measured,
    unit,
    reasons: [
      `neutralises ${neutralised.toFixed(2)} of ${alkalinity.toFixed(2)} meq/L alkalinity: pH ${water.phNow} to ${target}`,
      ...cautions(measured, unit),
      "pour acid into the full volume of water, slowly, never water into acid; never beside bleach, a base or concentrated calcium stock",
      caution,
      ...(acid.name === "citric anhydrous"
        ? ["reckoned as anhydrous citric acid; the monohydrate needs a tenth more"]
        : []),
      ...added,
      `salts in the water let less do, which the first 80 % allows for: ${least} to ${most} % less of this acid in a strong feed, half of that in tap water`,
      `left open to air it climbs back towards pH ${phInAir(left, constants).toFixed(1)}: that is no fault of the dose`,
    ],
  };
}

/** What the acid leaves in the water, with a warning where that is more than a whole feed holds. */
function leftBehind({ element, mostInFeed }: NonNullable<Acid["leaves"]>, milligramsPerLitre: number): string {
  const adds = `adds ${milligramsPerLitre.toFixed(0)} mg/L ${element}`;
  if (!(milligramsPerLitre > mostInFeed)) return `${adds}: take it off the feed`;
  return `${adds}, more than a whole feed should hold (${mostInFeed}): take another acid for part of it, or cleaner water`;
}
