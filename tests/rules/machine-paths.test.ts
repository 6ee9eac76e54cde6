import { describe, expect, it } from "vitest";
import { filesUnder } from "./project-files";

/** Folders of one person's machine. What every system has, such as the place of a browser, is no such folder. */
const machineFolders = ["home", "Users", "root", "work", "tmp", "mnt"].join("|");
const machinePath = new RegExp(`(^|[^\\w.*/-])((/(${machineFolders})/\\w)|([A-Z]:\\\\\\w))`, "m");

const written = filesUnder(".", /(\.(ts|tsx|js|json|md|html|css|xml|svg|csv)|\/run)$/).filter(({ path }) => path !== "package-lock.json");

describe("the project", () => {
  it("names no place on anybody's machine", () => {
    expect(written.length).toBeGreaterThan(40);
    expect(written.filter(({ text }) => machinePath.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it("would be caught if it did", () => {
    expect(`read ${["", "home", "ann", "log.csv"].join("/")}`).toMatch(machinePath);
    expect(`"${["C:", "logs"].join("\\")}"`).toMatch(machinePath);
    expect("https://example.org/works/x, ./tmp/a, src/home/b, /usr/bin/chromium").not.toMatch(machinePath);
  });
});
