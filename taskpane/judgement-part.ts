// Judging a log and finding the book's logs, a script of its own: it is fetched while the host still reads the cells.

export { rootZoneOf } from "./root-zone";
export { logTabs } from "./sheet/log-tabs";
export { logsSection } from "./view/logs";
