/** Texts kept at most: what grows beyond is not the same few words again and again. */
const mostKept = 5000;

/** Reads each text once, for the cells of a long log say the same few things again and again. */
export function readOnce<Answer>(read: (text: string) => Answer): (text: string) => Answer {
  const known = new Map<string, Answer>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined || known.has(text)) return before as Answer;
    const answer = read(text);
    if (known.size < mostKept) known.set(text, answer);
    return answer;
  };
}
