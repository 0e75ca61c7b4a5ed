import type { Problem } from "#core/words";

type Props = { readonly problems: readonly Problem[]; readonly announce?: boolean };

/** Problems in words: what is wrong and what to do. */
export function ProblemList({ problems, announce = true }: Props) {
  if (problems.length === 0) return null;
  return (
    <div className="problem-list" {...(announce ? { role: "alert" } : {})}>
      {problems.map((it) => (
        <p key={`${it.code} ${it.place} ${it.says}`}>
          <strong>{it.says}</strong> {it.next}
        </p>
      ))}
    </div>
  );
}
