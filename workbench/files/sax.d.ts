/** The part of the package `sax` that is used here; it brings no types of its own. */
declare module "sax" {
  namespace sax {
    interface Tag {
      readonly name: string;
      readonly attributes: Readonly<Record<string, string>>;
      readonly isSelfClosing: boolean;
    }
    interface Parser {
      /** Characters read so far. */
      readonly position: number;
      /** Where the tag that is being told began, an end tag too, counted from 1. */
      readonly startTagPosition: number;
      onopentag: (tag: Tag) => void;
      onclosetag: (name: string) => void;
      ontext: (text: string) => void;
      oncdata: (text: string) => void;
      ondoctype: (type: string) => void;
      onerror: (problem: Error) => void;
      write: (text: string) => Parser;
      close: () => Parser;
    }
    function parser(strict: boolean): Parser;
  }
  export = sax;
}
