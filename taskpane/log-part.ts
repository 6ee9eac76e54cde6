// All that reads a log, judges it and speaks of it: a script of its own, fetched while the host still answers, so that
// the pane itself stands at once.

export { choicesFor, keepChoices } from "./kept-choices";
export { rootZoneOf } from "./root-zone";
export { logTabs } from "./sheet/log-tabs";
export { readSelection } from "./sheet/read-selection";
export { logParts } from "./view/log-parts";
export { logsSection } from "./view/logs";
export { rowsRead } from "./view/rows-read";
export { standingInWords } from "./view/standing";

// What comes later is asked for through this script, so that none of them holds anew what it holds.

export const flushPart = () => import(/* webpackChunkName: "flush" */ "./flush-part");
export const picturePart = () => import(/* webpackChunkName: "picture" */ "./picture-part");
export const workPart = () => import(/* webpackChunkName: "sheet-work" */ "./sheet-work");
