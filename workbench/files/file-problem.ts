/** A file that cannot be used, in one line for the person who chose it. */
export class FileProblem extends Error {
  override readonly name = "FileProblem";
}

/** What a thrown thing says, on one line. */
export function messageOf(problem: unknown): string {
  const text = problem instanceof Error ? problem.message : String(problem);
  return text.replaceAll(/\s+/gu, " ").trim();
}

/** Says of which file a problem is. */
export async function about<Answer>(file: string, work: () => Answer | Promise<Answer>): Promise<Answer> {
  try {
    return await work();
  } catch (problem) {
    throw problem instanceof FileProblem ? new FileProblem(`${file}: ${problem.message}`) : problem;
  }
}

/** Whatever fails, as a problem of one kind. */
export function orElse<Answer>(Problem: new (message: string) => Error, work: () => Answer): Answer {
  try {
    return work();
  } catch (problem) {
    throw problem instanceof Problem ? problem : new Problem(messageOf(problem));
  }
}
