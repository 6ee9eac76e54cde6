import { plain } from "../../cells/text";
import { type LogEvent, type LogEventKind } from "../log";
import { colouredThing, isMixedIn, liesOnTop, signWords, slowRelease } from "./sign-words";

/** In the words just before a sign, these say that it is not there, or was another time. */
const absent =
  /\b(?:no|not|never|without|kein\w*|nicht|ohne|sin|pas|sans|geen|niet|zonder|less|if|avoid|against|prevent)(?: \w+){0,2} ?$/;

/** In the same statement, these say that it is over, or that it is only thought of. */
const elsewhere =
  /\b(?:(?<!since )yesterday|ago|last (?:week|time|month|year)|gone|no longer|stopped|maybe|might|watch for|in case|(?<!seit )gestern|ayer|(?<!depuis )hier|gisteren)\b/;

/** Spoiled leaves do not mend: where new growth is clean, what is still seen of these on old ones is over. */
const damage: ReadonlySet<LogEventKind> = new Set(["tip burn", "leaf spots", "dying leaves", "pale leaves", "pale old leaves"]);
const isOld = /\b(?:old\w*|still|remain\w*|earlier|existing|former|alte\w*|noch|viej[oa]s?|encore|oude?)\b/;

/** What a note says was seen at the plant, each thing once. Errs to leaving out what is denied, past or only feared. */
export function signsIn(note: string): readonly LogEvent[] {
  const said = plain(note).replace(/['’]/g, "");
  const kinds = new Set<LogEventKind>();
  const old = new Set<LogEventKind>();
  for (const statement of statementsOf(said)) {
    for (const { kind, says, unless } of signWords) {
      const found = says.exec(statement);
      if (found === null || unless?.test(statement) === true) continue;
      const isDenied = kind !== "not drinking" && absent.test(statement.slice(0, found.index));
      if (isDenied || (elsewhere.test(statement) && kind !== "not drinking" && kind !== "stunted")) continue;
      (damage.has(kind) && isOld.test(statement) ? old : kinds).add(kind);
    }
  }
  if (!kinds.has("clean new growth")) for (const kind of old) kinds.add(kind);
  const release = releaseIn(said);
  return [...kinds, ...(release === undefined ? [] : [release])].map((kind) => ({ kind, words: note }));
}

/** Statements with their hyphens as spaces, and things without their colour; a question is none. */
const statementsOf = (said: string): string[] =>
  said
    .replaceAll("-", " ")
    .replace(colouredThing, "")
    .split(/(?<=[?!.;,\n])/)
    .filter((statement) => !statement.includes("?"))
    .map((statement) => statement.replace(/[?!.;,\n]+$/, "").trim());

function releaseIn(said: string): LogEventKind | undefined {
  const text = said.replaceAll("-", " ");
  const found = slowRelease.exec(text);
  if (found === null || absent.test(text.slice(0, found.index))) return undefined;
  if (liesOnTop.test(text)) return "slow-release on top";
  return isMixedIn.test(text) ? "slow-release mixed in" : "slow-release";
}
