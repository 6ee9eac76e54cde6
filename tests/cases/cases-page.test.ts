import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { caseBook } from "./case-book";
import { casesPage } from "./cases-page";
import { openCrops } from "./open-crops";

const themes = caseBook();
const page = readFileSync(path.resolve(import.meta.dirname, "../../docs/cases.md"), "utf8");

describe("docs/cases.md", () => {
  it("is what `npm run cases` makes today", () => {
    expect(page).toBe(casesPage(themes, openCrops()));
  });

  it.each(themes.flatMap(({ cases }) => cases).map(({ title, why, source }) => [title, why, source]))(
    "tells of %s: its why and its source", (title, why, source) => {
      const [, after = ""] = page.split(`### ${title}\n`);
      const [told = ""] = after.split("\n#");
      expect(told).toContain(why);
      expect(told).toContain(source);
    },
  );
});
