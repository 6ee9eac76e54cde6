import { describe, expect, it } from "vitest";
import { type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";
import { soundCalls } from "../functions/sound-calls";
import { filesUnder } from "./project-files";

const { host, metadata } = loadBundle();
const page = filesUnder("docs", /functions\.md$/)[0]?.text ?? "";
const sectionOf = (id: string): string => page.split(`\n### ${id}\n`)[1]?.split("\n### ")[0] ?? "";
const asCells = (good: CellValue | readonly CellValue[]): Matrix => (Array.isArray(good) ? good.map((cell: CellValue) => [cell]) : [[good as CellValue]]);

/** What the engine itself lists when a word is unknown: "choose mS/cm, uS/cm, ..."; a note in brackets is not part of a choice. */
function choicesOf(id: string, at: number): string[] {
  const args = (soundCalls[id] ?? []).map(({ good }, index) => (index === at ? [["xyz"]] : asCells(good)));
  const answer = host.call(id, args)[0]?.[0];
  const [, list = ""] = /: choose (.+)$/.exec(typeof answer === "object" ? (answer.reason ?? "") : "") ?? [];
  return list.replaceAll(/ \([^)]*\)/g, "").split(/, | or /).filter((choice) => choice !== "" && !choice.includes("own factor"));
}

/** Every argument that is one of a list of words; a band has a page of its own. */
const places = metadata.functions.flatMap(({ id, parameters }) =>
  (soundCalls[id] ?? []).flatMap(({ wants, takes }, at) => (wants === "word" && takes !== "band" ? [[`${id}, ${parameters[at]?.name ?? "?"}`, id, at] as const] : [])),
);

describe("the lists of units, media, acids, buffers and other choices in docs/functions.md are the engine's own", () => {
  it("there are some: units, scales, buffers, media, acids, bases, analytes, limits", () => {
    expect(places.length).toBeGreaterThan(15);
  });

  it.each(places)("%s: no choice is missing from its page", (_, id, at) => {
    const choices = choicesOf(id, at);
    expect(choices.length).toBeGreaterThan(1);
    expect(choices.filter((choice) => !sectionOf(id).includes(choice))).toEqual([]);
  });
});
