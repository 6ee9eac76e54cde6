import { type RootZone } from "../root-zone";
import { questionNames, standingWords as words } from "../words/standing";
import { button, h } from "./elements";
import { questionId } from "./questions";

/** What waits for an answer, said where the verdict stands, with the way to the question. */
export function waitingLines({ reading }: RootZone): Node[] {
  return reading.questions.flatMap(({ kind, columns, choices }, place) => {
    const waiting = columns.flatMap((column) => reading.columns[column] ?? []);
    if (waiting.length === 0 || choices.length === 0) return [];
    const named = waiting.map(({ quantity, header, letters }) => (quantity === "other" ? header || `column ${letters}` : quantity));
    const go = button(words.answerIt, () => { document.getElementById(questionId(place))?.focus(); }, { id: `answer-${place}` });
    return [h("div", { className: "bar waits" }, h("span", {}, words.waits(questionNames[kind], named.join(" and "), named.length > 1)), go)];
  });
}
