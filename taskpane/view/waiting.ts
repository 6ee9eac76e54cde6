import { type LogQuestion, type LogReading } from "../../src/index";
import { type RootZone } from "../root-zone";
import { questionNames, standingWords as words } from "../words/standing";
import { button, h } from "./elements";
import { questionId } from "./questions";

/** What waits for an answer, said where the verdict stands, with the way to the question. */
export function waitingLines({ reading, waitsFor }: RootZone): Node[] {
  const header = reading.questions.some(({ kind }) => kind === "which row is the header");
  return reading.questions.flatMap((question, place) => {
    const said = waits(question, reading) ?? (waitsFor.includes(question.text) ? question.text : undefined);
    // Which row is the header is asked first: what a column holds may be told by it.
    if (said === undefined || (header && question.kind === "what is this column")) return [];
    const go = button(
      words.answerIt,
      () => {
        document.getElementById(questionId(place))?.focus();
      },
      { id: `answer-${place}` },
    );
    return [h("div", { className: "bar waits" }, h("span", {}, said), ...(question.choices.length === 0 ? [] : [go]))];
  });
}

/** What is to be said of the log as a whole: hidden rows, rows without a date. */
export const remarkLines = ({ reading: { remarks } }: RootZone): Node[] =>
  remarks.map((remark) => h("p", { className: "remark" }, remark));

/** Which columns wait for which question; `undefined` where it concerns no column, or has no answer to give. */
function waits({ kind, columns, choices }: LogQuestion, reading: LogReading): string | undefined {
  const waiting = columns.flatMap((column) => reading.columns[column] ?? []);
  if (waiting.length === 0 || choices.length === 0) return undefined;
  const named = waiting.map(({ quantity, header, letters }) =>
    quantity === "other" ? header || `column ${letters}` : quantity,
  );
  return words.waits(questionNames[kind], named.join(" and "), named.length > 1);
}
