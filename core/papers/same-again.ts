// Example: "Line 2: 4.39 m from the front wall. First mat starts 0.71 m …" after a line 1 with the same mats becomes
// "Line 2: 4.39 m from the front wall. The mats as in line 1."
// Invariant: only words that stand in an earlier line are left out, so nothing is said that was not.

const LINE = /^(Line (\d+): .*?\.) (First mat .*)$/;

/** A set-out in which lines that repeat the mats of an earlier one say so; other sentences stay as they are. */
export function sameAgain(setOut: readonly string[]): readonly string[] {
  const before = new Map<string, string>();
  return setOut.map((sentence) => {
    const [, head, line, mats] = LINE.exec(sentence) ?? [];
    if (head === undefined || line === undefined || mats === undefined) return sentence;
    const earlier = before.get(mats);
    if (earlier !== undefined) return `${head} The mats as in line ${earlier}.`;
    before.set(mats, line);
    return sentence;
  });
}
