import { type LogTab } from "../sheet/log-tabs";
import { logsWords as words } from "../words/logs";
import { type Actions } from "./actions";
import { button, chooser, h } from "./elements";

/** The logs of the book by name, each a choice away; nothing where the only one is shown. `shown` is the sheet read. */
export function logsSection(
  logs: readonly LogTab[],
  shown: string | undefined,
  actions: Pick<Actions, "openLog">,
): Node[] {
  const [first, ...others] = logs;
  if (first === undefined || (others.length === 0 && first.sheetId === shown)) return [];
  if (others.length === 0) {
    const read = button(
      words.read(first.sheetName),
      () => {
        actions.openLog(first);
      },
      { id: "open-log" },
    );
    return [h("p", { id: "logs-said" }, words.elsewhere(first.sheetName)), h("div", { className: "bar" }, read)];
  }
  const isShown = logs.some(({ sheetId }) => sheetId === shown);
  const choices = logs.map(({ sheetId, sheetName }) => ({ value: sheetId, text: sheetName }));
  const field = chooser("open-log", words.shown, isShown ? choices : [{ value: "", text: words.choose }, ...choices], {
    value: isShown ? (shown ?? "") : "",
    onChoose: (chosen) => {
      const tab = logs.find(({ sheetId }) => sheetId === chosen);
      if (tab !== undefined) actions.openLog(tab);
    },
  });
  return [h("p", { id: "logs-said" }, words.several(logs.map(({ sheetName }) => sheetName))), field];
}
