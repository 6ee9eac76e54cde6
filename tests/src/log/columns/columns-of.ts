import { readLog } from "../../../../src/index";

/** What each column of a log is read as: its quantity, or what it could be where it is asked. */
export function columnsOf(header: readonly string[], ...rows: readonly (readonly unknown[])[]): string[] {
  const { columns, questions } = readLog({ cells: [header, ...rows] });
  return columns.map(({ column, quantity }) => {
    const asked = questions.find((question) => question.columns.includes(column));
    return asked === undefined ? quantity : `asks ${asked.choices.filter((choice) => choice !== "other").join(" or ")}`;
  });
}
