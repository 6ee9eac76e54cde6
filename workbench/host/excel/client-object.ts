import { HostError } from "./host-error";
import { type LoadOption, pathsOf } from "./load-option";
import type { RequestContext } from "./request-context";

/** One property of a host object: how to read it from its target and how to write it. */
export interface Property<Target, Owner = unknown> {
  readonly get?: (target: Target, owner: Owner) => unknown;
  readonly set?: (target: Target, value: unknown, owner: Owner) => void;
  /** The version of ExcelApi that brought it, where that is above 1.9. */
  readonly since?: string;
}

export type Properties<Target, Owner = unknown> = Readonly<Record<string, Property<Target, Owner>>>;

/**
 * What every object of the host shares. It stands for a `Target` that is looked up when the queue reaches it; its properties
 * can be read only after `load()` and `sync()`.
 */
export abstract class ClientObject<Target> {
  private readonly loaded = new Map<string, unknown>();
  private state: "waiting" | "here" | "absent" = "waiting";
  private found: Target | undefined;
  private tracked = false;
  private readonly innerObjects = new Map<string, unknown>();
  /** Whether the host lets go of the object when the Excel.run that made it ends: so it is with ranges. */
  protected readonly endsWithRun: boolean = false;

  protected abstract readonly properties: Properties<Target, never>;

  constructor(
    readonly context: RequestContext,
    lookUp: () => Target | undefined,
    private readonly mayBeAbsent = false,
  ) {
    context.enqueue("read", () => {
      this.found = lookUp();
      this.state = this.found === undefined ? "absent" : "here";
      if (this.state === "absent" && !this.mayBeAbsent) throw new HostError("ItemNotFound", "", this.constructor.name);
    });
  }

  /** Known after the next sync; only objects from an `...OrNullObject` call can be null. */
  get isNullObject(): boolean {
    if (this.state === "waiting") throw new HostError("PropertyNotLoaded", "isNullObject", this.constructor.name);
    return this.state === "absent";
  }

  /** Queues the reading of properties, and of properties of inner objects: `format/fill/color`. */
  load(option?: LoadOption): this {
    for (const path of pathsOf(option, Object.keys(this.properties))) this.loadPath(path);
    return this;
  }

  /** Writes several properties at once. */
  set(values: Readonly<Record<string, unknown>>): void {
    for (const [name, value] of Object.entries(values)) {
      if (name in this.properties) this.writeProperty(name, value);
      else (Reflect.get(this, name) as ClientObject<unknown>).set(value as Readonly<Record<string, unknown>>);
    }
  }

  toJSON(): Record<string, unknown> {
    return Object.fromEntries(this.loaded);
  }

  /** Keeps the object usable after its Excel.run has ended. */
  track(): this {
    this.tracked = true;
    return this;
  }

  untrack(): this {
    this.tracked = false;
    return this;
  }

  /** The target, while the queue is being carried out. @throws {HostError} `InvalidObjectPath` on a null object */
  get target(): Target {
    if (this.found === undefined) throw new HostError("InvalidObjectPath", "", this.constructor.name);
    if (this.context.ended && this.endsWithRun && !this.tracked) {
      throw new HostError("InvalidObjectPath", "its Excel.run has ended; track() keeps it", this.constructor.name);
    }
    return this.found;
  }

  /** The target or nothing, for an object that is derived from one that may be absent. */
  get targetIfAny(): Target | undefined {
    return this.found;
  }

  protected write(run: () => void, since?: string): void {
    this.context.needs(since, this.constructor.name);
    this.context.enqueue("write", run);
  }

  /** An object that belongs to this one: the same at every access. */
  protected inner<Inner>(name: string, make: () => Inner): Inner {
    if (!this.innerObjects.has(name)) this.innerObjects.set(name, make());
    return this.innerObjects.get(name) as Inner;
  }

  protected loadPath(path: string): void {
    const [name = "", ...inner] = path.split("/");
    const property = this.properties[name];
    if (property === undefined) {
      const object: unknown = name in this ? Reflect.get(this, name) : undefined;
      if (object instanceof ClientObject) object.load(inner.length > 0 ? inner.join("/") : undefined);
      else this.context.enqueue("read", () => { throw new HostError("InvalidArgument", `no property ${name}`, this.constructor.name); });
      return;
    }
    this.context.needs(property.since, `${this.constructor.name}.${name}`);
    this.context.enqueue("read", () => {
      if (this.state === "here") this.loaded.set(name, property.get?.(this.target, this as never));
    });
  }

  readProperty(name: string): unknown {
    if (this.state === "absent") return undefined;
    if (this.loaded.has(name)) return this.loaded.get(name);
    throw new HostError("PropertyNotLoaded", name, `${this.constructor.name}.${name}`);
  }

  writeProperty(name: string, value: unknown): void {
    const property = this.properties[name];
    const set = property?.set;
    if (set === undefined) throw new HostError("InvalidArgument", `${name} cannot be written`, this.constructor.name);
    this.loaded.set(name, value);
    this.write(() => { set(this.target, value, this as never); }, property?.since);
  }
}

/** Gives a class a getter and a setter for each of its properties. */
export function declareProperties<Target>(
  owner: { readonly prototype: ClientObject<Target> },
  properties: Properties<Target, never>,
): void {
  for (const name of Object.keys(properties)) {
    Object.defineProperty(owner.prototype, name, {
      get(this: ClientObject<Target>) { return this.readProperty(name); },
      set(this: ClientObject<Target>, value: unknown) { this.writeProperty(name, value); },
    });
  }
}
