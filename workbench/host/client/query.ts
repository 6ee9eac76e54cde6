import { HostError } from "../excel/host-error";
import type { HostDocument, HostObject } from "../objects/kind";
import { hasScalar, idOf, itemsOf, partOf, readScalar, scalarNames } from "./members";
import { lowerFirst, type QueryInfo, upperFirst } from "./protocol";

/** What an object tells of itself before anything is loaded: its id. */
export function identity(target: HostObject, document: HostDocument): Record<string, unknown> {
  const id = idOf(target, document);
  if (id === undefined) return {};
  return { [hasScalar(target, "id") ? "Id" : "_Id"]: id };
}

/** Answers a load: the properties asked for, those of inner objects by their path (`format/fill/color`), the items of a collection. */
export function answerQuery(target: HostObject, { Select = [], Expand = [], Top, Skip }: QueryInfo, document: HostDocument): unknown {
  if (Top !== undefined || Skip !== undefined) throw new HostError(`NotInWorkbench: ${target.kind}.load with top or skip`);
  return selected(target, [...Select, ...Expand], document);
}

function selected(target: HostObject, paths: readonly string[], document: HostDocument): Record<string, unknown> {
  const id = idOf(target, document);
  const answer: Record<string, unknown> = id === undefined ? {} : { _Id: id };
  const items = itemsOf(target, document);
  if (items !== undefined) {
    const ofItems = paths.map((path) => path.replace(/^items(\/|$)/i, "")).filter((path) => path !== "count");
    return { ...answer, _Items: items.map((item) => selected(item, ofItems, document)) };
  }
  const asked = paths.filter((path) => path !== "");
  for (const [name, inner] of grouped(asked.length === 0 ? ["*"] : asked)) Object.assign(answer, member(target, name, inner, document));
  return answer;
}

/** The first step of each path, and what is asked beyond it. */
function grouped(paths: readonly string[]): Map<string, string[]> {
  const groups = new Map<string, string[]>();
  for (const path of paths) {
    const [first = "", ...more] = path.split("/");
    const name = lowerFirst(first.trim());
    const inner = groups.get(name) ?? [];
    groups.set(name, more.length === 0 ? inner : [...inner, more.join("/")]);
  }
  return groups;
}

function member(target: HostObject, name: string, inner: readonly string[], document: HostDocument): Record<string, unknown> {
  if (name === "*") return Object.fromEntries(scalarNames(target).map((each) => [upperFirst(each), readScalar(target, each, document)]));
  if (hasScalar(target, name)) return { [upperFirst(name)]: readScalar(target, name, document) };
  const part = partOf(target, name, document);
  return { [upperFirst(name)]: part === null ? null : selected(part, inner, document) };
}
