import { ClientObject, type Properties } from "./client-object";
import { HostError } from "./host-error";
import { type LoadOption, pathsOf } from "./load-option";

const collectionProperties: Properties<unknown> = {};

/** A list of host objects: `items` can be read after it, or any property of its items, has been loaded and synced. */
export abstract class Collection<Item extends ClientObject<Key>, Key> extends ClientObject<true> {
  protected override readonly properties = collectionProperties;
  private loadedItems: Item[] | undefined;

  /** The keys of the items at this point of the queue. */
  protected abstract keys(): readonly Key[];
  protected abstract itemFor(key: Key): Item;

  get items(): Item[] {
    if (this.loadedItems !== undefined) return this.loadedItems;
    throw new HostError("PropertyNotLoaded", "items", `${this.constructor.name}.items`);
  }

  /** `load("items/name")`, `load("name")` and `load({ name: true })` all load the names of the items. */
  override load(option?: LoadOption): this {
    const asked = pathsOf(option, []).map((path) => path.replace(/^items\/?/, ""));
    const paths = [...new Set(asked.length === 0 ? [""] : asked)].filter((path) => path !== "count");
    const bare = asked.length === 0 || paths.includes("");
    // The items are known only when the queue reaches them; what they load is carried out in the same sync.
    this.context.enqueueAfter(() => {
      this.loadedItems = this.keys().map((key) => this.itemFor(key).load(bare ? undefined : paths.join(",")));
    });
    return this;
  }

  /** The number of items, in an object of its own: `count.value` after a sync. */
  getCount(): { readonly value: number } {
    const result = new ClientResult<number>();
    this.context.enqueue("read", () => { result.settle(this.keys().length); });
    return result;
  }
}

/** A plain answer that is known after the next sync. */
export class ClientResult<Value> {
  private answer: { readonly value: Value } | undefined;

  get value(): Value {
    if (this.answer !== undefined) return this.answer.value;
    throw new HostError("PropertyNotLoaded", "value", "ClientResult.value");
  }

  settle(value: Value): void {
    this.answer = { value };
  }
}
