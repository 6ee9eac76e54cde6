import { parseArea } from "./area";
import { HostError } from "./host-error";
import type { OpenBook } from "./sheet-access";

/** @throws {HostError} `InvalidArgument` on a name that is none, `ItemAlreadyExists` on one that is taken */
export function assertTableName({ records }: OpenBook, name: string): void {
  if (!/^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u.test(name) || parseArea(name, "") !== undefined) throw new HostError("InvalidArgument", `${name} is no name`);
  const { tables, names } = records;
  const taken = [...tables, ...names].some((each) => each.name.toLowerCase() === name.toLowerCase());
  if (taken) throw new HostError("ItemAlreadyExists", name);
}
