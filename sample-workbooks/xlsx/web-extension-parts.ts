import { document, element, vocabularies } from "./xml";

/** The add-in that a workbook may ask for on opening; works only where it was sideloaded or centrally deployed. */
export interface AddIn {
  /** The manifest's Id and Version. */
  readonly id: string;
  readonly version: string;
}

const taskpaneVocabulary = "http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11";
const extensionVocabulary = "http://schemas.microsoft.com/office/webextensions/webextension/2010/11";

export function taskpanesPart(): string {
  const reference = element("wetp:webextensionref", { "xmlns:r": vocabularies.relations, "r:id": "rId1" });
  const pane = element("wetp:taskpane", { dockstate: "right", visibility: 0, width: 350, row: 1 }, reference);
  return document(element("wetp:taskpanes", { "xmlns:wetp": taskpaneVocabulary }, pane));
}

export function webExtensionPart({ id, version }: AddIn): string {
  const opens = element("we:property", { name: "Office.AutoShowTaskpaneWithDocument", value: "true" });
  return document(
    element(
      "we:webextension",
      { "xmlns:we": extensionVocabulary, id: `{${id.toUpperCase()}}` },
      element("we:reference", { id, version, store: "developer", storeType: "Registry" }),
      element("we:alternateReferences"),
      element("we:properties", {}, opens),
      element("we:bindings"),
      element("we:snapshot", { "xmlns:r": vocabularies.relations }),
    ),
  );
}
