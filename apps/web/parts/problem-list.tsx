import type { Problem } from "#core/words";

type Props = { readonly problems: readonly Problem[]; readonly announce?: boolean };

/** A file of another kind has a problem at every place: the first few tell it. */
const MOST = 5;

/** Problems in words: what is wrong and what to do. */
export function ProblemList({ problems, announce = true }: Props) {
  if (problems.length === 0) return null;
  const more = problems.length - MOST;
  return (
    <div className="problem-list" {...(announce ? { role: "alert" } : {})}>
      {problems.slice(0, MOST).map((it) => (
        <p key={`${it.code} ${it.place} ${it.says}`}>
          <strong>{it.says}</strong> {it.next}
        </p>
      ))}
      {more > 0 ? <p>And {more} more, which these may be the cause of.</p> : null}
    </div>
  );
}
