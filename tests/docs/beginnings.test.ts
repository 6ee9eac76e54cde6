import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";

const docs = path.resolve(import.meta.dirname, "../../docs");
const pages = readdirSync(docs).filter((name) => name.endsWith(".md"));
const linesOf = (page: string): string[] => readFileSync(path.join(docs, page), "utf8").split("\n");

/** Shorter than this a page is seen whole. */
const longPage = 50;

describe("each page of the documentation", () => {
  it.each(pages)("%s begins with a sentence on what it is for, and not with how it is made", (page) => {
    const [title = "", ...rest] = linesOf(page);
    const first = rest.find((line) => line.trim() !== "") ?? "";
    expect(title).toMatch(/^# \S/);
    expect(first).toMatch(/^[A-Z0-9]/);
    expect(first).not.toMatch(/^(?:Written by|Printed by|This page is made)/);
  });

  it.each(pages)("%s has a way back to the README among its first lines", (page) => {
    expect(linesOf(page).slice(0, 10).join("\n")).toContain("[README](../README.md)");
  });

  it.each(pages.filter((page) => linesOf(page).length > longPage))("%s is long, and lists what is on it before its first part", (page) => {
    const lines = linesOf(page);
    const parts = lines.filter((line) => line.startsWith("## ")).map((line) => line.slice(3));
    const first = lines.findIndex((line) => line.startsWith("## "));
    const before = lines.slice(0, first).join("\n");
    expect(parts.filter((part) => !before.includes(part))).toEqual([]);
  });
});
