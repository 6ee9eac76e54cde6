import { type CourseStep, type PotJudgement, type VerdictWord } from "../../src/index";
import { dayWords } from "../day-words";
import { headFigures } from "../headline";
import { nextThing } from "../next-thing";
import { type RootZone } from "../root-zone";
import { rowsInWords } from "../sheet/address";
import { nextThingWords } from "../words/next-thing";
import { cautions, standingWords as words } from "../words/standing";
import { type Actions } from "./actions";
import { button, fold, h } from "./elements";
import { remarkLines, waitingLines } from "./waiting";

type Tone = "calm" | "act" | "wait";

/** A sign for each verdict, so that it is told by shape as well as by words. */
export const signs: Readonly<Record<VerdictWord, readonly [sign: string, tone: Tone]>> = {
  "in band": ["✓", "calm"],
  "salt buildup": ["▲", "act"],
  "pH out of range": ["◆", "act"],
  "salt buildup and pH out of range": ["▲◆", "act"],
  "short of feed": ["▽", "act"],
  "too much water": ["≈", "act"],
  "confirm with a second reading": ["?", "wait"],
  "check the meter": ["!", "wait"],
  "cannot say": ["…", "wait"],
};

/**
 * Where things stand: the verdict and how urgent it is, the figure that matters, one thing to press, the course, and
 * why.
 */
export function standingSection(zone: RootZone, actions: Actions): Node[] {
  const { judgement, reading, bandProblem } = zone;
  if (reading.rows.length === 0) return [...notYet(noRows(zone)), ...waitingLines(zone)];
  if (judgement === undefined)
    return [...notYet(bandProblem ?? whatIsMissing(zone)), ...waitingLines(zone), ...remarkLines(zone)];
  return [
    ...headline(zone, judgement),
    ...waitingLines(zone),
    ...remarkLines(zone),
    ...primary(judgement, actions),
    h("h3", {}, words.course),
    h("ol", { className: "course" }, ...judgement.course.map(step)),
    ...ownLimits(judgement, actions),
    fold("why-fold", words.why, () => why(zone, judgement)),
    fold("cautions-fold", words.cautions, () => [h("ul", {}, ...cautions.map((caution) => h("li", {}, caution)))]),
  ];
}

function headline(zone: RootZone, { verdict, urgency }: PotJudgement): Node[] {
  const [sign, tone] = signs[verdict];
  const { vessel, pots } = zone;
  const named = vessel === undefined ? undefined
    : pots.length > 1 ? (pots[0]?.vessel === vessel ? words.worstOf : words.oneOf)(vessel, pots.length) : vessel;
  const figures = headFigures(zone.timeline).map(({ name, value, limits }) =>
    h("span", {}, h("strong", {}, words.figure(name, value)), limits === undefined ? "" : ` ${words.band(...limits)}`));
  return [
    ...(named === undefined ? [] : [h("p", { id: "which-pot" }, named)]),
    h("h2", { className: "verdict", data: { tone } },
      h("span", { className: "sign", aria: { hidden: "true" } }, sign),
      h("span", {}, capitalised(verdict), h("span", { className: "urgency" }, words.urgency[urgency]))),
    ...(figures.length === 0 ? [] : [h("p", { id: "figures" }, ...figures)]),
  ];
}

function primary(judgement: PotJudgement, actions: Actions): Node[] {
  const next = nextThing(judgement);
  if (next === undefined) return [];
  const press = button(
    nextThingWords(next.tool, next.act),
    () => {
      actions.open(next.tool);
    },
    { id: "next-thing", className: "main" },
  );
  return [h("div", { className: "bar" }, press)];
}

/** The limits that fit a strong feed by choice, to be taken in one press. */
function ownLimits({ limitsThatFit }: PotJudgement, actions: Actions): Node[] {
  if (limitsThatFit === undefined) return [];
  const { ph: [phLow, phHigh], ec: [ecLow, ecHigh] } = limitsThatFit;
  const own = { phLow: `${phLow}`, phHigh: `${phHigh}`, ecLow: `${ecLow}`, ecHigh: `${ecHigh}` };
  const take = button(words.takeLimits(own), () => { actions.chooseForPot({ own, since: undefined }); }, { id: "take-limits" });
  return [h("div", { className: "bar" }, take)];
}

const step = ({ when, at, says }: CourseStep): HTMLElement =>
  h(
    "li",
    { className: "step" },
    h("strong", { className: "when" }, at === undefined ? when : `${when} (${dayWords(at)})`),
    ` ${says}`,
  );

function why({ selection, restsOn }: RootZone, { reasons }: PotJudgement): Node[] {
  const rows = restsOn.flatMap((row) => selection.rowNumbers[row] ?? []).sort((a, b) => a - b);
  return [
    h("ul", {}, ...reasons.map((reason) => h("li", {}, reason))),
    h("p", { className: "why" }, rows.length > 0 ? words.restsOn(rowsInWords(rows)) : words.restsOnNothing),
  ];
}

/** What is told to those who do not see the page, whenever it changes. */
export function standingInWords({ judgement, reading, selection, vessel }: RootZone): string {
  if (judgement === undefined || reading.rows.length === 0) return "";
  const where = vessel === undefined ? selection.sheetName : `${selection.sheetName}, ${vessel}`;
  return `${where}: ${judgement.verdict}, ${words.urgency[judgement.urgency]}. ${judgement.course[0].when}: ${judgement.course[0].says}`;
}

const notYet = (text: string): Node[] => [h("h2", {}, words.title), h("p", { id: "not-yet" }, text)];

function noRows({ selection: { hiddenRows }, reading: { questions, setAside } }: RootZone): string {
  if (questions.some(({ kind }) => kind === "which row is the header")) return words.noLog;
  if (questions.length > 0) return words.questionsFirst;
  if (hiddenRows > 0 && setAside.length === 0) return words.allHidden(hiddenRows);
  const [first] = setAside;
  return words.noRows(first === undefined ? "" : words.firstRow(first.reason));
}

const whatIsMissing = ({ band }: RootZone): string => (band === undefined ? words.chooseMedium : words.answerFirst);

/** "pH" keeps its small p. */
const capitalised = (text: string): string =>
  text.startsWith("pH") ? text : text.slice(0, 1).toUpperCase() + text.slice(1);
