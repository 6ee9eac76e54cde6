import { HostError, type HostErrorCode } from "../excel/host-error";
import { type HostDocument, HostObject, type Kind, object, type Property } from "../objects/kind";
import { kinds } from "../objects/kinds";

/** Calls the tables' own functions: they take just what objects of their kind stand for. */
type AnyKind = Kind<never>;

const kindOf = ({ kind }: HostObject): AnyKind => kinds[kind];

/** What the tables lack is said under its name, so that nobody takes it for a fault of the host. */
const unknown = ({ kind }: HostObject, member: string): HostError =>
  new HostError(`NotInWorkbench: ${kind}.${member}`);

export function idOf(target: HostObject, document: HostDocument): unknown {
  const { id, properties } = kindOf(target);
  return (id ?? properties?.["id"]?.get)?.(target.it as never, document);
}
export const scalarNames = (target: HostObject): string[] => Object.keys(kindOf(target).properties ?? {});
export const hasScalar = (target: HostObject, name: string): boolean => Object.hasOwn(kindOf(target).properties ?? {}, name);

export function itemsOf(target: HostObject, document: HostDocument): readonly HostObject[] | undefined {
  return kindOf(target).items?.(target.it as never, document);
}

/** What the tables say of a member, by which it is read, written or carried out. */
function known<Said>(target: HostObject, member: string, said: Said | undefined): Said {
  if (said === undefined) throw unknown(target, member);
  return said;
}

const propertyOf = (target: HostObject, name: string): Property<never> => kindOf(target).properties?.[name] ?? {};

export function readScalar(target: HostObject, name: string, document: HostDocument): unknown {
  return known(target, name, propertyOf(target, name).get)(target.it as never, document);
}

export function writeScalar(target: HostObject, name: string, value: unknown, document: HostDocument): void {
  known(target, name, propertyOf(target, name).set)(target.it as never, value, document);
}

export function partOf(target: HostObject, name: string, document: HostDocument): HostObject | null {
  return known(target, name, kindOf(target).parts?.[name])(target.it as never, document);
}

const isCalled = (item: HostObject, key: unknown, document: HostDocument): boolean => {
  if (idOf(item, document) === key) return true;
  return typeof key === "string" && kindOf(item).alsoCalled?.(item.it as never, document).toLowerCase() === key.toLowerCase();
};

/** The item with this id or name. */
export function itemCalled(target: HostObject, key: unknown, document: HostDocument): HostObject | null {
  return known(target, "getItem", itemsOf(target, document)).find((item) => isCalled(item, key, document)) ?? null;
}

/** @throws {HostError} where nothing is there */
export function there(item: HostObject | null | undefined, code: HostErrorCode, wanted: string): HostObject {
  if (item === null || item === undefined) throw new HostError(code, wanted);
  return item;
}

/** What every collection of the host offers. */
const ofCollections: Readonly<Record<string, (target: HostObject, document: HostDocument, key: unknown) => unknown>> = {
  getItem: (target, document, key) => there(itemCalled(target, key, document), "ItemNotFound", String(key)),
  getItemOrNullObject: (target, document, key) => itemCalled(target, key, document),
  getItemAt: (target, document, index) => there(itemsOf(target, document)?.[Number(index)], "ItemNotFound", String(index)),
  getFirst: (target, document) => there(itemsOf(target, document)?.[0], "ItemNotFound", "the first"),
  getCount: (target, document) => itemsOf(target, document)?.length,
};

/** Carries a method out: an object, null for a null object, or a plain answer. */
export function callMethod(target: HostObject, name: string, given: readonly unknown[], document: HostDocument): unknown {
  const { finds, acts, shows, items } = kindOf(target);
  const method = finds?.[name] ?? acts?.[name] ?? shows?.[name];
  if (method !== undefined) return method(target.it as never, document, ...given);
  const ofCollection = items === undefined ? undefined : ofCollections[name];
  return known(target, name, ofCollection)(target, document, given[0]);
}

/** The names of all methods that change the workbook. */
export const writingMethods: ReadonlySet<string> = new Set(Object.values<AnyKind>(kinds).flatMap(({ acts }) => Object.keys(acts ?? {})));

export const workbook = object("Workbook", true);
