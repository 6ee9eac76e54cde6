const widths = { least: 320, usual: 380, most: 600, step: 10 } as const;

/** The pane beside the grid, in a frame of its own, with an edge to drag or to move with the arrow keys. */
export class PaneFrame {
  private width: number = widths.usual;

  constructor(
    private readonly frame: HTMLIFrameElement,
    private readonly edge: HTMLElement,
  ) {
    edge.setAttribute("aria-valuemin", String(widths.least));
    edge.setAttribute("aria-valuemax", String(widths.most));
    edge.addEventListener("pointerdown", (event) => { this.drag(event); });
    edge.addEventListener("keydown", (event) => {
      const steps: Readonly<Record<string, number>> = { ArrowLeft: widths.step, ArrowRight: -widths.step };
      const change = steps[event.key];
      if (change !== undefined) this.setWidth(this.width + change);
    });
    this.setWidth(widths.usual);
  }

  /** Loads the pane, or loads it anew. */
  open(): void {
    this.frame.src = "add-in/taskpane.html";
  }

  close(): void {
    this.frame.src = "about:blank";
  }

  setWidth(wanted: number): void {
    this.width = Math.min(widths.most, Math.max(widths.least, Math.round(wanted)));
    this.frame.style.width = `${this.width}px`;
    this.edge.setAttribute("aria-valuenow", String(this.width));
  }

  private drag(start: PointerEvent): void {
    const [startX, startWidth] = [start.clientX, this.width];
    const move = (event: PointerEvent): void => { this.setWidth(startWidth + startX - event.clientX); };
    this.edge.setPointerCapture(start.pointerId);
    this.edge.addEventListener("pointermove", move);
    this.edge.addEventListener("lostpointercapture", () => { this.edge.removeEventListener("pointermove", move); }, { once: true });
  }
}
