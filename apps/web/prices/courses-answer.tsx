import type { CoursesPart } from "#app/views";

/** Late joiners, cancelled sessions and a year by the month; nothing where there is neither. */
export function CoursesAnswer({ part }: { readonly part: CoursesPart | undefined }) {
  if (part?.kind !== "ready") return null;
  return (
    <div className="stack-close">
      {part.says.map((says) => (
        <p key={says}>{says}</p>
      ))}
    </div>
  );
}
