import { DOMParser, type Document, type Element } from "@xmldom/xmldom";

/** The order of children that the manifest's schema demands, by parent. From the host's published manifest reference. */
const childOrder: Record<string, readonly string[]> = {
  OfficeApp: [
    "Id", "Version", "ProviderName", "DefaultLocale", "DisplayName", "Description", "IconUrl", "HighResolutionIconUrl", "SupportUrl",
    "AppDomains", "Hosts", "Requirements", "DefaultSettings", "Permissions", "VersionOverrides",
  ],
  VersionOverrides: ["Description", "Requirements", "Hosts", "Resources"],
  Host: ["Runtimes", "AllFormFactors", "DesktopFormFactor"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
  Group: ["Label", "Icon", "Control"],
  Control: ["Label", "Supertip", "Icon", "Action"],
  Action: ["TaskpaneId", "SourceLocation"],
  Resources: ["Images", "Urls", "ShortStrings", "LongStrings"],
};

const required = [
  "Id", "Version", "ProviderName", "DefaultLocale", "DisplayName", "Description", "IconUrl", "HighResolutionIconUrl", "SupportUrl",
  "Hosts", "DefaultSettings", "Permissions", "VersionOverrides",
];

const longest = { ShortStrings: 125, LongStrings: 250, Urls: 2048, Images: 2048 } as const;
const longestResid = 32;
const guid = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/i;

export const parsed = (xml: string): Document => new DOMParser({ onError: stop }).parseFromString(xml, "text/xml");

function stop(level: string, message: string): never {
  throw new Error(`${level}: ${message}`);
}

export const all = (document: Document | Element, name: string): Element[] => [...document.getElementsByTagNameNS("*", name)];

const childrenOf = (element: Element): Element[] => [...element.childNodes].filter((node): node is Element => node.nodeType === 1);

/** What a host or a store would refuse in a manifest; an empty list when nothing. */
export function manifestProblems(xml: string): string[] {
  const document = parsed(xml);
  return [...orderProblems(document), ...valueProblems(document), ...resourceProblems(document), ...runtimeProblems(document)];
}

function orderProblems(document: Document): string[] {
  const wrong = Object.entries(childOrder).flatMap(([parent, order]) =>
    all(document, parent).flatMap((element) => {
      const names = childrenOf(element).map((child) => child.localName ?? "");
      const unknown = names.filter((name) => !order.includes(name)).map((name) => `${parent} cannot hold ${name}`);
      const places = names.map((name) => order.indexOf(name));
      const sorted = places.every((place, at) => at === 0 || place >= (places[at - 1] ?? 0));
      return sorted ? unknown : [...unknown, `${parent} holds its children out of order: ${names.join(", ")}`];
    }),
  );
  const there = document.documentElement === null ? [] : childrenOf(document.documentElement).map((child) => child.localName);
  return [...wrong, ...required.filter((name) => !there.includes(name)).map((name) => `${name} is missing`)];
}

function valueProblems(document: Document): string[] {
  const problems: string[] = [];
  const text = (name: string): string => all(document, name)[0]?.textContent ?? "";
  if (!guid.test(text("Id"))) problems.push(`Id ${text("Id")} is not a GUID`);
  if (!/^\d+\.\d+\.\d+\.\d+$/.test(text("Version"))) problems.push(`Version ${text("Version")} is not four numbers`);
  const permissions = all(document, "Permissions").map((each) => each.textContent);
  if (permissions.join() !== "ReadWriteDocument") problems.push(`permissions: ${permissions.join()}`);
  if (all(document, "EquivalentAddins").length > 0) problems.push("EquivalentAddins is used");
  for (const element of all(document, "*")) {
    const value = element.getAttribute("DefaultValue") ?? "";
    if (/^https?:/.test(value) && !value.startsWith("https://")) problems.push(`${value} is not https`);
    if ((element.localName ?? "").endsWith("Url") && !value.startsWith("https://") && !element.hasAttribute("resid")) {
      problems.push(`${element.localName ?? ""} is no address`);
    }
  }
  return problems;
}

function resourceProblems(document: Document): string[] {
  const resources = all(document, "Resources").flatMap(childrenOf);
  const entries = resources.flatMap((kind) => childrenOf(kind).map((entry) => ({ kind: kind.localName, entry })));
  const defined = entries.map(({ entry }) => entry.getAttribute("id") ?? "");
  const used = new Set(all(document, "*").flatMap((element) => element.getAttribute("resid") ?? []));
  const tooLong = entries.filter(({ kind, entry }) => {
    const limit = Object.entries(longest).find(([name]) => name === kind)?.[1] ?? 0;
    return (entry.getAttribute("DefaultValue") ?? "").length > limit;
  });
  return [
    ...[...used].filter((id) => !defined.includes(id)).map((id) => `resid ${id} is used but not defined`),
    ...defined.filter((id) => !used.has(id)).map((id) => `resid ${id} is defined but not used`),
    ...defined.filter((id, at) => defined.indexOf(id) !== at).map((id) => `resid ${id} is defined twice`),
    ...defined.filter((id) => id.length > longestResid).map((id) => `resid ${id} is longer than ${longestResid}`),
    ...tooLong.map(({ entry }) => `${entry.getAttribute("id") ?? ""} is too long`),
  ];
}

/** Pane, functions and commands must name one page, and that page must live long, or they would not share a runtime. */
function runtimeProblems(document: Document): string[] {
  const [runtime, ...others] = all(document, "Runtime");
  const page = runtime?.getAttribute("resid");
  const lifetime = runtime?.getAttribute("lifetime");
  const holders = [...all(document, "Page"), ...all(document, "Action")].flatMap((holder) => all(holder, "SourceLocation"));
  const pages = [...all(document, "FunctionFile"), ...holders].map((element) => element.getAttribute("resid"));
  if (others.length > 0 || lifetime !== "long") return ["there must be one runtime, with a long lifetime"];
  return pages.every((each) => each === page) ? [] : [`pane, functions and commands use different pages: ${pages.join(", ")}`];
}
