import { type Band } from "../bands/band";
import { type Ec25, type Litres } from "../quantities";
import { washoutRate } from "./container-capacity";
import { drainedMedia } from "./container-table";
import { believableEcs, type FlushReading, litresPoured } from "./flush-reading";
import { type FlushVerdict } from "./flush-verdict";
import { type WashingCourse, washingCourse, washingFall } from "./washing-course";
import { inLitres, inMillisiemens } from "./words";

interface Pot {
  readonly band: Band;
  readonly containerLitres: Litres | undefined;
}

/**
 * What to do while the runoff EC is still above the band, by the course of its readings.
 *
 * Errs to pausing: a rise is measured again, and in soil a fall too.
 *
 * Source:   common practice; [kerr-1983] for the flattening
 *
 * @param filled rows up to the last filled one, whose EC can be believed and is above the band
 */
export function whileSalty(filled: readonly FlushReading[], pot: Pot): FlushVerdict {
  const read = believableEcs(filled);
  const ecs = read.map(({ ec }) => ec);
  const lastThree = ecs.slice(-3).map((ec) => ec.toFixed(2)).join(", ");
  const above = `runoff EC is above the band's ${inMillisiemens(pot.band.ec[1])}`;
  const answers: Record<WashingCourse, () => FlushVerdict> = {
    "too few": () => pourOn(filled, pot, [`${lastThree}: ${above}`, "too few readings yet to see where it is going"]),
    falling: () => pourOn(filled, pot, [`still falling: ${lastThree}`, above]),
    rising: () => ({
      answer: "pause and measure again",
      reasons: [
        `rising: ${lastThree}`,
        above,
        "salts are still dissolving or the sample was not mixed: wait, then measure again",
      ],
    }),
    flat: () => {
      const unproven = tooLittleWater(filled, read, pot);
      return unproven === undefined
        ? noLongerFalling(lastThree, above)
        : pourOn(filled, pot, [`level: ${lastThree}`, unproven, above]);
    },
  };
  return answers[washingCourse(ecs)]();
}

const noLongerFalling = (lastThree: string, above: string): FlushVerdict => ({
  answer: "stop: no longer falling",
  reasons: [
    `${lastThree}: two portions took off less than ${100 * washingFall} %, so more water no longer helps`,
    above,
    "let it drain, check the water's own EC, feed at reduced strength and measure the next runoff",
  ],
});

/** Why three level readings prove nothing: so little water lay between them that no fall was to be seen. */
function tooLittleWater(
  filled: readonly FlushReading[],
  read: readonly { readonly row: number; readonly ec: Ec25 }[],
  { band, containerLitres }: Pot,
): string | undefined {
  const third = read.at(-3);
  if (third === undefined || litresPoured(filled) === 0) return undefined;
  const between = litresPoured(filled.slice(third.row + 1));
  if (between === 0) return "no water was poured between these readings";
  if (containerLitres === undefined) return undefined;
  const rates = (band.medium === undefined ? drainedMedia : [band.medium]).map((medium) =>
    washoutRate(containerLitres, medium),
  );
  const mostItCouldFall = third.ec * (1 - Math.exp(-Math.max(...rates) * between));
  return mostItCouldFall > washingFall * third.ec
    ? undefined
    : `${inLitres(between)} between these readings is too little to show a fall`;
}

/** Pour the next portion; in soil only after a pause, which shows as a row with a reading and no litres. */
function pourOn(filled: readonly FlushReading[], { band }: Pot, reasons: readonly [string, ...string[]]): FlushVerdict {
  if (band.medium !== "soil")
    return { answer: "keep going", reasons: [...reasons, "pour one portion, let it drip, measure"] };
  const litresUnknown = litresPoured(filled) === 0 && filled.length > 1;
  const justPoured = litresUnknown || (filled.at(-1)?.litres ?? 0) > 0;
  return justPoured
    ? { answer: "pause and measure again", reasons: [...reasons, soilPause, soilTrend] }
    : { answer: "keep going", reasons: [...reasons, soilPortion, soilTrend] };
}

const soilPause =
  "soil goes slower: wait an hour or more, until it no longer drips, and write the next reading in a row of its own without litres";
const soilPortion = "soil goes slower: pour one small portion, a tenth of the pot's volume";
const soilTrend = "in soil the runoff shows a trend, not what the roots meet, and water does not correct its pH";
