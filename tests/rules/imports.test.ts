import { describe, expect, it } from "vitest";
import { importProblems } from "./import-rules";
import { moduleFacts } from "./module-facts";
import { filesUnder } from "./project-files";

const folders = ["src", "functions", "taskpane", "workbench", "sample-workbooks", "tools", "tests"];
const files = folders.flatMap((folder) => filesUnder(folder, /\.tsx?$/));

describe("who may import whom", () => {
  it("holds in every module of the project", () => {
    expect(files.length).toBeGreaterThan(30);
    expect(importProblems(moduleFacts(files))).toEqual([]);
  });
});

describe("the check finds", () => {
  it.each([
    ["a step up the order", "src/maths/a.ts", 'import { b } from "../readings/b";', "src/maths/a must not import src/readings/b"],
    ["a step up for a type only", "src/maths/a.ts", 'import { type B } from "../flush/b";', "src/maths/a must not import src/flush/b"],
    ["a look at a neighbour", "src/mix/a.ts", 'export { b } from "../log/b";', "src/mix/a must not import src/log/b"],
    ["an import of the index inside src", "src/flush/a.ts", 'import { b } from "../index";', "src/flush/a must not import src/index"],
    ["a dynamic import", "src/maths/a.ts", 'const b = await import("../log/b");', "src/maths/a must not import src/log/b"],
    ["a package in src", "src/maths/a.ts", 'import { mean } from "d3-array";', "src/maths/a must not import d3-array"],
    ["a part without a place", "src/extras/a.ts", "export const a = 1;", "src/extras/a has no place"],
    ["functions past the index", "functions/a.ts", 'import { b } from "../src/mix/b";', "functions/a must not import src/mix/b"],
    ["functions into the pane", "functions/a.ts", 'import { b } from "../taskpane/view";', "functions/a must not import taskpane/view"],
    ["the pane into functions", "taskpane/a.ts", 'import { b } from "../functions/cells";', "taskpane/a must not import functions/cells"],
    ["the drawing into the pane", "taskpane/drawing/a.ts", 'import { b } from "../view";', "taskpane/drawing/a must not import taskpane/view"],
    ["the page in the drawing", "taskpane/drawing/a.ts", "export const a = document.title;", "taskpane/drawing/a touches document"],
    ["the host in the drawing", "taskpane/drawing/a.ts", "export const a = Office.context;", "taskpane/drawing/a touches Office"],
    ["the templates into the pane", "taskpane/templates/a.ts", 'import { b } from "../workbook";', "taskpane/templates/a must not import taskpane/workbook"],
    ["the host in the templates", "taskpane/templates/a.ts", "export const a = Office.context;", "taskpane/templates/a touches Office"],
    ["more of the pane than its templates in the samples", "sample-workbooks/a.ts", 'import { b } from "../taskpane/sheet/address";', "sample-workbooks/a must not import taskpane/sheet/address"],
    ["a second Excel.run", "taskpane/a.ts", "await Excel.run(f);", "taskpane/a calls Excel.run"],
    ["the workbench in the pane", "taskpane/a.ts", 'import { b } from "../workbench/book";', "taskpane/a must not import workbench/book"],
    ["functions in the workbench", "workbench/a.ts", 'import { b } from "../functions/cells";', "workbench/a must not import functions/cells"],
    ["a default export", "src/maths/a.ts", "export default 1;", "src/maths/a has default export"],
    ["a default function", "functions/a.ts", "export default function f() {}", "functions/a has default export"],
    ["a default by another name", "taskpane/a.ts", "const f = 1; export { f as default };", "taskpane/a has default export"],
    ["export *", "src/index.ts", 'export * from "./refusal";', "src/index has export *"],
    ["Date.now", "src/log/a.ts", "export const a = Date.now();", "src/log/a uses Date.now"],
    ["new Date()", "src/log/a.ts", "export const a = new Date();", "src/log/a uses new Date()"],
    ["Math.random", "src/log/a.ts", "export const a = Math.random();", "src/log/a uses Math.random"],
    ["Intl", "src/log/a.ts", "export const a = new Intl.NumberFormat();", "src/log/a uses Intl"],
    ["toLocaleString", "src/log/a.ts", "export const a = (1).toLocaleString();", "src/log/a uses .toLocaleString"],
  ])("%s", (_, path, text, problem) => {
    expect(importProblems(moduleFacts([{ path, text }])).join("\n")).toContain(problem);
  });

  it("a cycle", () => {
    const pair = [
      { path: "src/maths/a.ts", text: 'import { b } from "./b";' },
      { path: "src/maths/b.ts", text: 'import { a } from "./a";' },
    ];
    expect(importProblems(moduleFacts(pair))).toEqual(["cycle: src/maths/a -> src/maths/b -> src/maths/a"]);
  });

  it("nothing in a comment, a text, a member's name or a date with an argument", () => {
    const text = '// Date.now\nexport const a = { document: "Excel.run", b: new Date(0), c: log.document };';
    expect(importProblems(moduleFacts([{ path: "taskpane/drawing/a.ts", text }]))).toEqual([]);
  });
});
