import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";

const eventsOf = (note: string): string[] =>
  (readLog({ cells: [["Date", "Runoff EC mS/cm", "Notes"], [45_383, 2.1, note]] }).rows[0]?.events ?? []).map(({ kind }) => kind);

// What a person would say that the note tells of. Common practice, no source.
describe("notes of a log", () => {
  it.each([
    ["Flushed", ["flush"]],
    ["flush, 3x pot volume", ["flush"]],
    ["Flush #2, stopped at EC 1.4", ["flush"]],
    ["flushed after lunch", ["flush"]],
    ["no runoff so flushed again", ["flush", "little drain"]],
    ["sprayed the leaves with soap", ["foliar spray"]],
    ["spray bottle lost its cap", []],
    ["leached with 5 L of plain water", ["flush", "plain water"]],
    ["rinsed through", ["flush"]],
    ["started the flush", ["flush"]],
    ["new feed EC 1.2", ["feed change"]],
    ["feed lowered to half strength", ["feed change"]],
    ["half strength feed", ["feed change"]],
    ["switched nutrients", ["feed change"]],
    ["recalibrated probe", ["calibration"]],
    ["pH meter calibration done", ["calibration"]],
    ["potted up to 11 L", ["repotting"]],
    ["re-potted", ["repotting"]],
    ["transplanted into coir", ["repotting"]],
    ["lights raised 10 cm", ["light change"]],
    ["moved lamp up", ["light change"]],
    ["dimmed to 60%", ["light change"]],
    ["flush no 3", ["flush"]],
    ["plain water only, took a sample", ["plain water"]],
    ["plain water today, pour-through 2.1", ["plain water"]],
    ["coir bricks soaked in tap water, not buffered", []],
    ["pour-through, distilled water, 50 mL collected", []],
    ["flushed and calibrated; lowered the lights", ["flush", "calibration", "light change"]],
  ])("%s tells of %j", (note, kinds) => {
    expect(eventsOf(note)).toEqual(kinds);
  });

  it.each([
    "no flush yet", "not flushed", "didn't flush", "did not flush", "don't flush again", "flush tomorrow", "flush tomorrow?", "flush?", "need to flush", "will flush if EC rises",
    "maybe flush", "flush planned", "day 2 after flush", "2 days since flush", "before flush", "flushed yesterday", "post-flush reading", "last flush was great",
    "flush not needed", "flush - not yet", "flush: no", "never flushed", "without flushing", "skipped the flush", "calibration due", "time to calibrate", "calibration overdue", "needs repotting",
    "repot next week", "no feed change", "no change to feed", "feed unchanged", "lights on 6 am", "leaves look light", "light green leaves", "new leaves", "fed as usual", "raised EC?",
    "kein Spülen", "nicht gespült", "sin lavado", "pas de rinçage", "niet gespoeld", "muss gespült werden",
    "did not get it topped up", "should have flushed", "forgot to flush", "wanted to flush but ran out of water", "flush cancelled", "thinking about a flush", "flush didn't happen", "cannot flush today", "can't calibrate",
  ])("%s tells of nothing done", (note) => {
    expect(eventsOf(note)).toEqual([]);
  });
});
