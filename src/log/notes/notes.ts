import { eventWords, type EventWords, clauseEnds, notDone, notToday, onlyBefore, waterElsewhere } from "./event-words";
import { plain } from "../../cells/text";
import { type LogEvent } from "../log";

import { signsIn } from "./signs";

/** So many words back, and after the word so many ahead, a "no" still speaks of it. */
const reachBack = 3;
const reachAhead = 2;

/**
 * The events that a note tells of: what was done, then what was seen. "no flush yet", "flush tomorrow?" and "two days
 * after flush" tell of none: an event that is not certain is left out, for an invented flush would hide what the next
 * readings say.
 */
export function eventsIn(note: string): readonly LogEvent[] {
  const events: LogEvent[] = [];
  const text = plain(note);
  for (const clause of clausesOf(text)) {
    for (const words of eventWords) {
      if (words.kind === "plain water" && waterElsewhere.test(text)) continue;
      if (!events.some(({ kind }) => kind === words.kind) && tells(clause, words))
        events.push({ kind: words.kind, words: note });
    }
  }
  return events.concat(signsIn(note));
}

/** The statements of a note in plain letters, each a list of plain words; a question is none. */
function clausesOf(text: string): readonly (readonly string[])[] {
  return text
    .replace(/['’]/g, "")
    .replace(/\bno\.? ?(?=\d)/g, "number ")
    .replace(/re-pot/g, "repot")
    .replace(/pott(?:ed|ing)[\s-]up|up-?pott(?:ed|ing)|pot(?:ted)? on\b/g, "uppotted")
    .split(/(?<=[?!.;,\n])/)
    .filter((sentence) => !sentence.includes("?"))
    .flatMap((sentence) => sentence.split(clauseEnds))
    .map((clause) => clause.match(/[a-z]+/g) ?? [])
    .filter((clause) => clause.length > 0);
}

function tells(clause: readonly string[], { alone, thing, done, phrase }: EventWords): boolean {
  const said = phrase?.exec(clause.join(" "));
  if (said != null && happened(clause, clause.join(" ").slice(0, said.index).split(" ").length - 1)) return true;
  const lone = clause.findIndex((word) => alone?.test(word));
  if (lone >= 0) return happened(clause, lone);
  const named = clause.findIndex((word) => thing?.test(word));
  const acted = clause.findIndex((word) => done?.test(word));
  return (
    named >= 0 && acted >= 0 && happened(clause, Math.min(named, acted)) && happened(clause, Math.max(named, acted))
  );
}

function happened(clause: readonly string[], at: number): boolean {
  const near = clause.slice(Math.max(0, at - reachBack), at).concat(clause.slice(at + 1, at + 1 + reachAhead));
  if (near.some((word) => notDone.test(word))) return false;
  return !clause.some((word, place) => notToday.test(word) && (place < at || !onlyBefore.test(word)));
}
