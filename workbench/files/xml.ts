import sax, { type Parser, type Tag } from "sax";
import { FileProblem, messageOf } from "./file-problem";

/** Letters or bytes read at once. */
const portion = 65_536;

/** What is told of a part while it is read. */
interface XmlListener {
  readonly open?: (tag: Tag, at: Parser) => void;
  readonly close?: (name: string, at: Parser) => void;
  /** A text, or a piece of a long one. */
  readonly text?: (text: string) => void;
}

/** Tells a part's tags and texts one after the other: a large sheet never becomes a tree, nor a trap one text in memory. */
export function readXml(part: Uint8Array | string, { open, close, text }: XmlListener): void {
  const xml = sax.parser(true);
  xml.onerror = (problem) => { throw new FileProblem(`it is damaged: ${messageOf(problem)}`); };
  xml.ondoctype = () => { throw new FileProblem("it declares entities of its own, which no workbook needs: it is not opened"); };
  if (open !== undefined) xml.onopentag = (tag) => { open(tag, xml); };
  if (close !== undefined) xml.onclosetag = (name) => { close(name, xml); };
  if (text !== undefined) xml.ontext = xml.oncdata = text;
  for (const piece of typeof part === "string" ? cut(part) : decoded(part)) xml.write(piece);
  xml.close();
}

function* cut(text: string): Generator<string> {
  for (let at = 0; at < text.length; at += portion) yield text.slice(at, at + portion);
}

function* decoded(bytes: Uint8Array): Generator<string> {
  const decoder = new TextDecoder();
  for (let at = 0; at < bytes.length; at += portion) yield decoder.decode(bytes.subarray(at, at + portion), { stream: true });
  yield decoder.decode();
}

/** A tag's name without its prefix. */
export const localName = (name: string): string => name.slice(name.indexOf(":") + 1);

/** The attributes of every tag of one name, in order. */
export function attributesOf(part: Uint8Array, wanted: string): Tag["attributes"][] {
  const found: Tag["attributes"][] = [];
  readXml(part, { open: ({ name, attributes }) => { if (localName(name) === wanted) found.push(attributes); } });
  return found;
}

/** The texts of all tags of one name, each whole or in runs, without the reading aids that may stand beside it. */
export function richTexts(part: Uint8Array, wanted: string): string[] {
  const texts: string[] = [];
  const open: string[] = [];
  readXml(part, {
    open: ({ name }) => {
      open.push(localName(name));
      if (open.at(-1) === wanted) texts.push("");
    },
    close: () => { open.pop(); },
    text: (text) => { if (isRead(open)) texts.push((texts.pop() ?? "") + text); },
  });
  return texts;
}

/** Whether a text between these tags is part of what the cell says. */
const isRead = (tags: readonly string[]): boolean => tags.at(-1) === "t" && !tags.includes("rPh");
