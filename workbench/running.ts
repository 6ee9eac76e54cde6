/** Whether a process is there, be it another user's. */
export function isRunning(id: number): boolean {
  try {
    return process.kill(id, 0);
  } catch (problem) {
    return (problem as NodeJS.ErrnoException).code === "EPERM";
  }
}
