import type { SessionsFile } from "./sessions-file.ts";
import type { Session, Taking } from "./taking.ts";

/** What a file would do to the record, in a sentence. */
export function takingWords(file: SessionsFile, taking: Taking | null): string {
  if (file.kind === "no table") return "it cannot be read.";
  if (file.kind === "asks")
    return file.seen.rows === 0
      ? "there is no session in it."
      : "something must be said before it can be read.";
  const { fresh, clashes, same } = taking ?? { fresh: [], clashes: [], same: 0 };
  const parts = [
    counted(fresh.length, "new session"),
    ...(same > 0 ? [`${counted(same, "date")} in the record with the same figures`] : []),
    ...(clashes.length > 0 ? [`${counted(clashes.length, "date")} in the record with other figures`] : []),
    ...(file.left.length > 0 ? [`${counted(file.left.length, "row")} left out`] : []),
  ];
  return `${parts.join("; ")}.`;
}

export function takenWords({
  fresh,
  replaced,
}: {
  readonly fresh: number;
  readonly replaced: number;
}): string {
  const parts = [
    ...(fresh > 0 ? [`${counted(fresh, "session")} taken in`] : []),
    ...(replaced > 0 ? [`${counted(replaced, "session")} replaced`] : []),
  ];
  return `${together(parts)}.`;
}

/** "12 came, 14 places, 1 turned away" */
export function sessionWords(it: Session): string {
  if (it.cancelled === true) return "cancelled";
  const others = [
    [it.capacity, "places"],
    [it.turnedAway, "turned away"],
    [it.waiting, "waited"],
    [it.newcomers, "new"],
  ] as const;
  const told = others.flatMap(([count, word]) => (count === undefined ? [] : [`${count} ${word}`]));
  return [`${it.heads} came`, ...told].join(", ");
}

function counted(count: number, what: string): string {
  return `${count === 0 ? "no" : count} ${what}${count === 1 ? "" : "s"}`;
}

function together(parts: readonly string[]): string {
  return parts.length < 2 ? (parts[0] ?? "") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}
