import { ClientObject, declareProperties, type Properties } from "./client-object";
import type { RequestContext } from "./request-context";

const applicationProperties: Properties<true, Application> = {
  calculationMode: { get: () => "Automatic", set: () => undefined },
  calculationState: { get: () => "Done" },
};

/** The host program. */
export class Application extends ClientObject<true> {
  protected override readonly properties = applicationProperties;

  constructor(context: RequestContext) {
    super(context, () => true);
  }

  calculate(): void { this.write(() => undefined); }
  suspendApiCalculationUntilNextSync(): void { this.write(() => undefined); }
  suspendScreenUpdatingUntilNextSync(): void { this.write(() => undefined); }
}

declareProperties(Application, applicationProperties);

const runtimeProperties: Properties<true, Runtime> = {
  enableEvents: {
    get: (_, { context }) => context.records.eventsEnabled,
    set: (_, enabled, { context }) => { context.records.eventsEnabled = enabled === true; },
  },
};

/** The add-in's own runtime: whether it wants to be told of events. */
export class Runtime extends ClientObject<true> {
  protected override readonly properties = runtimeProperties;

  constructor(context: RequestContext) {
    super(context, () => true);
  }
}

declareProperties(Runtime, runtimeProperties);
