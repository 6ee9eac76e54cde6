let isDown = false;
let waiting: (() => void) | undefined;

function release(): void {
  setTimeout(() => {
    isDown = false;
    const work = waiting;
    waiting = undefined;
    work?.();
  });
}

addEventListener("pointerdown", () => { isDown = true; }, true);
addEventListener("pointerup", release, true);
addEventListener("pointercancel", release, true);
/** Let go outside the pane. */
addEventListener("pointermove", ({ buttons }) => { if (isDown && buttons === 0) release(); }, true);

/** A press on a button that is replaced meanwhile is lost: while a finger is down the work waits until it is lifted. */
export function unlessPressed(work: () => void): void {
  if (isDown) waiting = work;
  else work();
}
