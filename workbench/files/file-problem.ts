/** A file that cannot be used, in one line for the person who chose it. */
export class FileProblem extends Error {
  override readonly name = "FileProblem";
}

/** What a thrown thing says, on one line. */
export function messageOf(problem: unknown): string {
  const text = problem instanceof Error ? problem.message : String(problem);
  return text.replaceAll(/\s+/gu, " ").trim();
}
