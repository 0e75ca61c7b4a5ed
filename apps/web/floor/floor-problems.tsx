import type { Problem } from "#core/words";

type Props = {
  readonly problems: readonly Problem[];
  /** the mats could not be worked out although the floor is sound */
  readonly failure: string | null;
  readonly hasPlan: boolean;
};

/** What is wrong with the floor, in words, at the drawing; what was drawn stays as it is. */
export function FloorProblems({ problems, failure, hasPlan }: Props) {
  if (problems.length === 0 && failure === null) return null;
  return (
    <div className="problem-list" role="alert">
      {problems.map((it) => (
        <p key={`${it.code} ${it.place}`}>
          <strong>{it.says}</strong> {it.next}
        </p>
      ))}
      {failure !== null && (
        <p>
          <strong>The mats of this floor could not be worked out.</strong> Undo the last change and save the
          hall to a file, so that the fault can be found.
        </p>
      )}
      {hasPlan && <p>The mats drawn grey are old: they belong to the last floor that was sound.</p>}
    </div>
  );
}
