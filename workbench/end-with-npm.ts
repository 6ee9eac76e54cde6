import { isRunning } from "./running";

const everyMilliseconds = 500;

/**
 * Calls `end` once the shell that npm started this program in is gone. npm passes a signal on to that shell only, which ends
 * and leaves the program running. Does nothing for a program that npm did not start, nor keeps one alive.
 */
export function endWithNpm(end: () => void): void {
  if (process.env["npm_lifecycle_event"] === undefined) return;
  const shell = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === shell && isRunning(shell)) return;
    clearInterval(watch);
    end();
  }, everyMilliseconds);
  watch.unref();
}
