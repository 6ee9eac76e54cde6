import path from "node:path/posix";
import { Marked } from "marked";

/** Where a file of the project stands among the built pages, or undefined when it is not published. */
export function publishedAs(file) {
  if (file === "README.md") return "docs/index.html";
  return file.startsWith("docs/") ? file.replace(/\.md$/, ".html") : undefined;
}

/** The link as the built page needs it: between pages relative, out of the project unchanged, to an unpublished file none. */
function relinked(href, from) {
  if (/^([a-z]+:|#)/i.test(href)) return href;
  const [file, anchor] = href.split("#");
  const to = publishedAs(path.join(path.dirname(from), file));
  if (to === undefined) return undefined;
  return path.relative(path.dirname(publishedAs(from)), to) + (anchor === undefined ? "" : `#${anchor}`);
}

/** The anchor of a heading, as code hosts make it too: SALTRATIO becomes saltratio. */
const anchorOf = (text) => text.toLowerCase().replaceAll(/[^a-z0-9 _-]/g, "").replaceAll(" ", "-");

const escaped = (text) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

/** A decision names no page that leads back. */
const wayBack = (from) =>
  from.startsWith("docs/decisions/") ? '<p><a href="../index.html">Back to the README</a></p>\n' : "";

/** A page of the documentation from its markdown, so that the help of a formula opens beside the sheet without leaving the host. */
export function page(markdown, from) {
  const renderer = {
    heading({ tokens, depth, text }) {
      return `<h${depth} id="${anchorOf(text)}">${this.parser.parseInline(tokens)}</h${depth}>\n`;
    },
    link({ href, tokens }) {
      const to = relinked(href, from);
      const text = this.parser.parseInline(tokens);
      return to === undefined ? text : `<a href="${escaped(to)}">${text}</a>`;
    },
    image({ href, text }) {
      return `<img src="${escaped(relinked(href, from) ?? href)}" alt="${escaped(text)}">`;
    },
    listitem(item) {
      const key = /^\[([\w.-]+)\] /.exec(item.text)?.[1];
      return `<li${key === undefined ? "" : ` id="${key}"`}>${this.parser.parse(item.tokens)}</li>\n`;
    },
  };
  const title = /^# (.+)$/m.exec(markdown)?.[1] ?? "Runoff Ledger";
  const style = path.relative(path.dirname(publishedAs(from)), "docs/pages.css");
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${escaped(title)}</title>
<link rel="stylesheet" href="${style}">
<body>
${wayBack(from)}${new Marked({ renderer }).parse(markdown)}</body>
</html>
`;
}
