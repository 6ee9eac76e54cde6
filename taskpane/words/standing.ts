import { type LogQuestionKind, type Urgency } from "../../src/index";

/** The words around the judgement; what to do is never said here: the judgement says it. */
export const standingWords = {
  title: "Where things stand",
  urgency: {
    none: "nothing to mend",
    watch: "keep watching",
    "next watering": "at the next watering",
    today: "today",
    now: "now",
  } satisfies Record<Urgency, string>,
  worstOf: (pot: string, pots: number): string => `${pot}, the most urgent of ${pots} pots`,
  oneOf: (pot: string, pots: number): string => `${pot}, one of ${pots} pots`,
  figure: (name: "EC" | "pH", value: string): string => `Runoff ${name} ${value}`,
  band: (low: string, high: string): string => `band ${low} to ${high}`,
  course: "What to do, in this order",
  takeLimits: ({ phLow, phHigh, ecLow, ecHigh }: Record<"phLow" | "phHigh" | "ecLow" | "ecHigh", string>): string =>
    `Use own limits: pH ${phLow} to ${phHigh}, EC ${ecLow} to ${ecHigh}`,
  why: "Why",
  restsOn: (rows: string): string => `Rests on ${rows}.`,
  restsOnNothing: "Rests on no reading.",
  cautions: "Cautions",
  waits: (question: string, columns: string, many: boolean): string =>
    `Answer ${question}: ${columns} ${many ? "wait" : "waits"} for it.`,
  answerIt: "Answer it",
  chooseMedium: "Choose the medium: salt and pH are judged against its limits.",
  noLog:
    "This does not look like a log: no row names what its columns hold, such as Date, Runoff EC, Runoff pH. If it is one, say which row is its header.",
  allHidden: (rows: number): string =>
    `Under the header ${rows === 1 ? "the one row is" : `all ${rows} rows are`} hidden, by a filter or by hand, and hidden rows are not read. Show them, then read the selection again.`,
  questionsFirst: "Nothing can be read before the question is answered.",
  answerFirst:
    "Nothing is said of the root zone before this is answered: a reading taken wrongly would be cured wrongly.",
  noRows: (why: string): string =>
    `No row of readings was found in these cells.${why} Select the log with its header row, or say below what each column holds.`,
  firstRow: (reason: string): string => ` The first row: ${reason}.`,
} as const;

/** A question as it is called where something waits for its answer. */
export const questionNames: Readonly<Record<LogQuestionKind, string>> = {
  "what is this column": "what a column holds",
  "ppm scale": "the ppm question",
  "EC unit": "the question of the EC unit",
  "volume unit": "the question of the volumes' unit",
  "temperature unit": "the question of C or F",
  "date order": "the question of day or month first",
  "which row is the header": "which row is the header",
  layout: "how the sheet is laid out",
};

export const cautions = [
  "Acids, bases and concentrates burn: goggles and gloves on, concentrate into water and never water into concentrate, one product at a time.",
  "Keep runoff off power strips, pumps and lights; switch off at the wall before you work over water.",
  "Collect drain water and dispose of it as your local rules ask. The product's label and local codes win over anything said here.",
] as const;
