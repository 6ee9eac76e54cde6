import { ClientObject, declareProperties, type Properties } from "./client-object";
import { Collection } from "./collection";
import type { RequestContext } from "./request-context";

const settingProperties: Properties<string, Setting> = {
  key: { get: (key) => key },
  value: {
    get: (key, { context }) => copied(context.records.settings.get(key)),
    set: (key, value, { context }) => { context.records.settings.set(key, copied(value)); },
  },
};

/** Settings travel as JSON: what cannot be written so is lost. */
function copied(value: unknown): unknown {
  return value === undefined ? undefined : JSON.parse(JSON.stringify(value));
}

/** Something the add-in keeps inside the workbook. */
export class Setting extends ClientObject<string> {
  protected override readonly properties = settingProperties;
  delete(): void { this.write(() => { this.context.records.settings.delete(this.target); }); }
}

declareProperties(Setting, settingProperties);

export class SettingCollection extends Collection<Setting, string> {
  constructor(context: RequestContext) {
    super(context, () => true);
  }

  add(key: string, value: unknown): Setting {
    this.write(() => { this.context.records.settings.set(key, copied(value)); });
    return new Setting(this.context, () => key);
  }

  getItem(key: string): Setting { return new Setting(this.context, () => this.known(key)); }
  getItemOrNullObject(key: string): Setting { return new Setting(this.context, () => this.known(key), true); }

  protected override keys(): readonly string[] {
    return [...this.context.records.settings.keys()];
  }

  protected override itemFor(key: string): Setting {
    return new Setting(this.context, () => key);
  }

  private known(key: string): string | undefined {
    return this.context.records.settings.has(key) ? key : undefined;
  }
}
