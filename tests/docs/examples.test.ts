import { readFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { parts } from "../../tools/docs/functions-page";
import { docTags } from "../../tools/docs/tags";
import { computeFormulas } from "../workbench/engine/compute-formulas";
import { type CellValue } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";
import { root } from "../rules/project-files";
import { asWritten, formulaExamples } from "./example-answers";

const documented = parts.flatMap(({ part }) => docTags(path.join(root, "functions", `${part}.ts`)));
const worked = readFileSync(path.join(root, "README.md"), "utf8").match(/^=RUNOFF.* -> .*$/gm) ?? [];
const examples = [...documented, { id: "README.md", examples: worked }].flatMap(formulaExamples);

describe("the examples in docs/functions.md and README.md, typed into a sheet as they stand", () => {
  let answers: readonly (readonly CellValue[][])[] = [];
  beforeAll(async () => {
    const { host, metadata } = loadBundle();
    answers = await computeFormulas(examples.map(({ formula }) => formula), host, metadata);
  });

  it.each(examples.map((each, at) => [each.formula, each.answer, at] as const))("=%s -> %s", (_, answer, at) => {
    expect(asWritten(answers[at] ?? [], answer)).toBe(answer);
  });

  it.each(["README.md", ...documented.map(({ id }) => id)])("%s has one", (id) => {
    expect(examples.filter((each) => each.id === id)).not.toEqual([]);
  });
});

describe("the reading of examples", () => {
  it.each([
    ["a number at the decimals shown", [[1.4126]], "1.413", true],
    ["a near miss", [[1.4119]], "1.413", false],
    ["a number shown without decimals, exactly", [[2.2]], "2", false],
    ["a text", [["salt buildup"]], "salt buildup", true],
    ["another text", [["in band"]], "salt buildup", false],
    ["a text with commas in a spill", [["a", "b, c; d"]], '{a,"b, c; d"}', true],
    ["a blank", [[""]], '""', true],
    ["an error", [[{ error: "#VALUE!", reason: "pH 15 cannot be" }]], "#VALUE!", true],
    ["a spill", [[1, 2.25], [3, 4]], "{1,2.25;3,4}", true],
    ["a spill of another shape", [[1, 2, 3, 4]], "{1,2;3,4}", false],
    ["nothing at all", [], "2", false],
  ])("%s", (_, cells: CellValue[][], answer, same) => {
    expect(asWritten(cells, answer) === answer).toBe(same);
  });
});
