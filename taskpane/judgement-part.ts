// Judging a log, a script of its own: it is fetched while the host still reads the cells.

export { rootZoneOf } from "./root-zone";
