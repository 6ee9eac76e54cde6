import { type ColumnAnswer, logQuantities, type LogQuestion, type LogQuantity } from "../../src/index";
import { type Choices } from "../choices";
import { headerKeys } from "../column-answers";
import { type RootZone } from "../root-zone";
import { questionsWords as words } from "../words/questions";
import { type Actions } from "./actions";
import { chooser, h } from "./elements";

/** The field of a question, by its place among the questions. */
export const questionId = (place: number): string => `question-${place}`;

/** What the sheet does not tell: each question with its answers; until then its columns are not read. */
export function questionsSection({ reading, selection }: RootZone, choices: Choices, actions: Actions): Node[] {
  if (reading.questions.length === 0) return [];
  const keys = headerKeys(reading.columns.map(({ header }) => header));
  const asked = reading.questions.map((question, place) => {
    if (question.choices.length === 0) return h("p", {}, question.text);
    const offered = [{ value: "", text: words.choose }, ...question.choices.map((value) => ({ value, text: value }))];
    return chooser(questionId(place), question.text, offered, {
      value: "",
      onChoose: (answer) => {
        if (answer !== "")
          actions.choose(changeFor(question, answer, choices, { keys, rowNumbers: selection.rowNumbers }));
      },
    });
  });
  return [h("h2", {}, words.title(reading.questions.length)), ...asked];
}

/** The names under which column answers are kept, and the sheet's row of each row of the grid. */
interface Places {
  readonly keys: readonly string[];
  readonly rowNumbers: readonly number[];
}

/** What an answer changes in the choices. */
function changeFor(
  question: LogQuestion,
  answer: string,
  { columns }: Choices,
  { keys, rowNumbers }: Places,
): Partial<Choices> {
  switch (question.kind) {
    case "ppm scale":
      return { ppmScale: Number(answer) };
    case "EC unit":
      return { ecUnit: answer as NonNullable<Choices["ecUnit"]> };
    case "volume unit":
      return { volumeUnit: answer as NonNullable<Choices["volumeUnit"]> };
    case "temperature unit":
      return { temperatureUnit: answer as NonNullable<Choices["temperatureUnit"]> };
    case "date order":
      return { dateOrder: answer as NonNullable<Choices["dateOrder"]> };
    case "which row is the header":
      return { headerRow: answer === "none" ? -1 : rowNumbers.indexOf(Number(answer.replace(/\D+/g, "")) - 1) };
    case "what is this column":
      return { columns: { ...columns, ...answersByHeader(question.columns, answer, keys) } };
    case "layout":
      return {};
  }
}

function answersByHeader(
  places: readonly number[],
  answer: string,
  keys: readonly string[],
): Record<string, ColumnAnswer> {
  const quantity = logQuantities.find((each): each is LogQuantity => each === answer) ?? "other";
  return Object.fromEntries(
    places.flatMap((place) => (keys[place] === undefined ? [] : [[keys[place], { quantity }]])),
  );
}
