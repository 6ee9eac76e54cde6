import { type LogVerdict } from "../../src/index";
import { type RootZone } from "../root-zone";
import { rowsInWords } from "../sheet/address";
import { h } from "./elements";

/** A sign for each verdict, so that it is told by shape as well as by words; drawn by the stylesheet's tone. */
const signs: Readonly<Record<LogVerdict["answer"], readonly [sign: string, tone: string]>> = {
  "in band": ["✓", "calm"],
  "salt buildup": ["▲", "act"],
  "pH out of range": ["◆", "act"],
  "salt buildup and pH out of range": ["▲◆", "act"],
  "confirm with a second reading": ["?", "wait"],
  "check the meter": ["!", "wait"],
  "cannot say": ["…", "wait"],
};

const cautions = [
  "Acids, bases and concentrates burn: goggles and gloves on, concentrate into water and never water into concentrate, one product at a time.",
  "Keep runoff off power strips, pumps and lights; switch off at the wall before you work over water.",
  "Collect drain water and dispose of it as your local rules ask. The product's label and local codes win over anything said here.",
] as const;

/** Where things stand: the verdict, what it rests on, what to do next and when to measure again. */
export function standingSection({ verdict, selection, bandProblem }: RootZone): Node[] {
  if (verdict === undefined) {
    return [h("h2", {}, "Where things stand"), h("p", {}, bandProblem ?? "Choose the medium above: salt and pH are judged against its limits.")];
  }
  const [sign, tone] = signs[verdict.answer];
  const rests = verdict.rows.flatMap((row) => selection.rowNumbers[row] ?? []).sort((a, b) => a - b);
  return [
    h("h2", {}, "Where things stand"),
    h("p", { className: "verdict", data: { tone } }, h("span", { className: "sign", aria: { hidden: "true" } }, sign), ` ${verdict.answer}`),
    h("ul", {}, ...verdict.reasons.map((reason) => h("li", {}, reason))),
    h("p", { className: "why" }, rests.length > 0 ? `Rests on ${rowsInWords(rests)}.` : "Rests on no reading."),
    h("p", {}, h("strong", {}, "Next: "), verdict.next),
    h("p", {}, h("strong", {}, "Measure again: "), `${verdict.measureAgain}.`),
    h("details", {}, h("summary", {}, "Cautions"), h("ul", {}, ...cautions.map((caution) => h("li", {}, caution)))),
  ];
}
