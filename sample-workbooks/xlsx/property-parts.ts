import { document, element, escaped, vocabularies } from "./xml";

const terms = "http://purl.org/dc/terms/";

/** docProps/core.xml: the title, and one fixed time, so that the bytes do not depend on the hour. */
export function corePropertiesPart(title: string): string {
  const time = (name: string): string => element(name, { "xsi:type": "dcterms:W3CDTF" }, "2026-01-01T00:00:00Z");
  const names = {
    "xmlns:cp": "http://schemas.openxmlformats.org/package/2006/metadata/core-properties",
    "xmlns:dc": "http://purl.org/dc/elements/1.1/",
    "xmlns:dcterms": terms,
    "xmlns:xsi": "http://www.w3.org/2001/XMLSchema-instance",
  };
  const creator = element("dc:creator", {}, "Runoff Ledger samples");
  return document(
    element("cp:coreProperties", names, element("dc:title", {}, escaped(title)), creator, time("dcterms:created"), time("dcterms:modified")),
  );
}

/** docProps/app.xml. Programs keep the cached values of a file that names this application, and recalculate others. */
export const appPropertiesPart = (): string =>
  document(
    element(
      "Properties",
      { xmlns: vocabularies.extendedProperties },
      element("Application", {}, "Microsoft Excel"),
      element("AppVersion", {}, "16.0300"),
    ),
  );
