// Judging a log, its limits, and finding the book's logs: a script of its own, fetched while the host still reads the
// cells.

export { rootZoneOf } from "./root-zone";
export { logTabs } from "./sheet/log-tabs";
export { limitsSection } from "./view/limits";
export { logsSection } from "./view/logs";
