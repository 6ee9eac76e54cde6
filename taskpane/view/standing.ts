import { type LogReading, type LogVerdict } from "../../src/index";
import { type RootZone } from "../root-zone";
import { rowsInWords } from "../sheet/address";
import { fold, h } from "./elements";

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

/** Where things stand: the verdict, what to do next, when to measure again, and what it rests on. */
export function standingSection({ verdict, selection, reading, timeline, bandProblem }: RootZone): Node[] {
  if (reading.rows.length === 0) return notYet(noRows(reading));
  if (verdict === undefined) return notYet(bandProblem ?? "Choose the medium above: salt and pH are judged against its limits.");
  const [sign, tone] = signs[verdict.answer];
  const rests = verdict.rows.flatMap((row) => selection.rowNumbers[row] ?? []).sort((a, b) => a - b);
  return [
    h("h2", { className: "verdict", data: { tone } }, h("span", { className: "sign", aria: { hidden: "true" } }, sign), capitalised(verdict.answer)),
    ...(timeline.afterFlush === undefined ? [] : [h("p", { id: "after-flush" }, timeline.afterFlush)]),
    h("p", { className: "next" }, h("strong", {}, "Next: "), verdict.next),
    h("p", { className: "next" }, h("strong", {}, "Measure again: "), `${verdict.measureAgain}.`),
    fold("why-fold", "Why", () => [
      h("ul", {}, ...verdict.reasons.map((reason) => h("li", {}, reason))),
      h("p", { className: "why" }, rests.length > 0 ? `Rests on ${rowsInWords(rests)}.` : "Rests on no reading."),
    ], true),
    fold("cautions-fold", "Cautions", () => [h("ul", {}, ...cautions.map((caution) => h("li", {}, caution)))]),
  ];
}

/** What is told to those who do not see the page, whenever it changes. */
export const standingInWords = ({ verdict, selection }: RootZone): string =>
  verdict === undefined ? "" : `${selection.sheetName}: ${verdict.answer}. Next: ${verdict.next}`;

const notYet = (words: string): Node[] => [h("h2", {}, "Where things stand"), h("p", { id: "not-yet" }, words)];

function noRows({ questions, setAside }: LogReading): string {
  if (questions.length > 0) return "Nothing can be read before the question above is answered.";
  const [first] = setAside;
  const why = first === undefined ? "" : ` The first row: ${first.reason}.`;
  return `No row of readings was found in these cells.${why} Select the log with its header row, or say below what each column holds.`;
}

/** "pH" keeps its small p. */
const capitalised = (text: string): string => (text.startsWith("pH") ? text : text.slice(0, 1).toUpperCase() + text.slice(1));
