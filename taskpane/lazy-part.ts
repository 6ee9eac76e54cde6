/** A script of its own, loaded when it is first asked for, and asked for again after a failure. */
export class LazyPart<Part> {
  private loaded: Part | undefined;
  private loading: Promise<Part> | undefined;

  constructor(private readonly load: () => Promise<Part>) {}

  /** The part, if it is here already. */
  get here(): Part | undefined { return this.loaded; }

  async get(): Promise<Part> {
    try {
      this.loading ??= this.load();
      this.loaded = await this.loading;
      return this.loaded;
    } catch (problem) {
      this.loading = undefined;
      throw problem;
    }
  }
}
