import { type Column } from "./column";
import { type Concept } from "./header-words";

/** A column of this share of dates is one of dates, whatever its header says. */
const nearlyAll = 0.8;
/**
 * Below the serial numbers of any log's dates: such a column counts its days from a start that the sheet does not tell.
 */
const lowestSerial = 20_000;

type Columns = readonly Column[];

/**
 * Which column tells the day of the reading: decided by the cells, and by the words only between columns of dates. Two
 * that could be are asked about; days of sowing, flushing or calibrating, and a day that never changes, are none.
 */
export function settleDates(columns: Columns): Column[] {
  const answered = columns.some(({ quantity, answer }) => quantity === "date" && answer !== undefined);
  if (answered)
    return columns.map((column) =>
      isDated(column) ? unread(column, "the date is read from the column answered") : column,
    );
  const dated = columns.filter(isDated);
  return dated.length > 0 ? amongDated(columns, dated) : withoutDated(columns);
}

/** Whether its cells are dates, where its words do not speak against it. */
function isDated({ quantity, answer, measure, sample }: Column): boolean {
  if (answer !== undefined || measure !== undefined || quantity === "notes" || sample.filled === 0) return false;
  const certain = sample.dates >= sample.filled * nearlyAll;
  const partly = quantity === "date" && sample.dateLike * 2 >= sample.filled;
  return certain || partly;
}

function amongDated(columns: Columns, dated: Columns): Column[] {
  const changing = dated.filter(({ sample }) => sample.changes);
  const alive = changing.length > 0 ? changing : dated;
  const best = Math.max(...alive.map(rank));
  const first = alive.filter((column) => rank(column) === best);
  return columns.map((column) => {
    if (!dated.includes(column)) return column.quantity === "date" ? withoutDays(column) : column;
    if (!first.includes(column))
      return column.quantity === "time" ? column : unread(column, "another day than the reading's");
    return first.length > 1 ? asked(column, "more than one column holds dates") : settled(column, best);
  });
}

const settled = (column: Column, best: number): Column =>
  best < 0
    ? asked(column, "it seems to be another day than the reading's")
    : {
        ...column,
        quantity: "date",
        choices: [],
        why: column.quantity === "date" ? column.why : "its cells are dates",
      };

/** Words of the day of the reading itself come first, those of another day last. */
function rank({ quantity, header: { meaning } }: Column): number {
  const has = (concept: Concept): boolean => meaning.concepts.has(concept);
  if (has("otherDay") || has("noReading") || has("feed")) return -1;
  if (has("readingDay")) return 4;
  if (quantity === "date") return meaning.strangers === 0 ? 3 : 2;
  return quantity === "time" ? 1 : 0;
}

/** No column holds dates: one may still be meant to, and then its cells say what is wrong with them. */
function withoutDated(columns: Columns): Column[] {
  const meant = columns.filter(({ quantity, answer }) => quantity === "date" && answer === undefined);
  const good = meant.find(
    (column) =>
      !countsDays(column) && !column.sample.weekdays && (column.sample.dateLike > 0 || column.sample.filled === 0),
  );
  const time = columns.find(({ quantity, sample }) => quantity === "time" && sample.filled > 0);
  const hidden = meant.length > 0 ? undefined : columns.find(isDateWithMore);
  return columns.map((column) => {
    if (column === good) return column;
    if (column === hidden)
      return asked(column, "its cells hold a date and more; put the dates into a column of their own");
    if (meant.includes(column))
      return good === undefined && column === meant[0] ? daysMissing(column) : withoutDays(column);
    const clockOnly = column === time && meant.length === 0;
    return clockOnly
      ? asked(column, "it tells the clock and no day: put the dates into a column of their own", "time")
      : column;
  });
}

/** An unread column of words, each with a date in it. */
const isDateWithMore = ({ quantity, answer, measure, sample }: Column): boolean =>
  quantity === "other" &&
  answer === undefined &&
  measure === undefined &&
  sample.numbers === 0 &&
  sample.dateLike > sample.filled / 2;

const countsDays = ({ sample }: Column): boolean => Number(sample.median) < lowestSerial;

const daysMissing = (column: Column): Column =>
  asked(column, `${said(column)}; put the dates into a column of their own`);

const withoutDays = (column: Column): Column => unread(column, said(column));

const said = (column: Column): string => {
  if (column.sample.weekdays) return "it names days of the week";
  return countsDays(column) ? "it counts days" : "its cells are no dates that can be read";
};

const unread = (column: Column, why: string): Column => ({ ...column, quantity: "other", choices: [], why });
const asked = (column: Column, why: string, ...others: readonly "time"[]): Column =>
  ({ ...column, quantity: undefined, choices: ["date", ...others], why, insists: true });
