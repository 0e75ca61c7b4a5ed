import type { ArrangedMatPlan, Hall, Sight } from "#core/hall";
import { formatLength, type LengthUnits } from "#core/words";
import { BestSightFinder } from "./best-sight-finder.tsx";
import { SightPicture } from "./sight-picture.tsx";
import { Question } from "./question.tsx";

type Props = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly units: LengthUnits;
  /** undefined until it is worked out, null where no place for the teacher is known */
  readonly sight: Sight | null | undefined;
};

/** Who does not see the teacher, named and drawn. */
export function SightQuestion({ hall, plan, units, sight }: Props) {
  return (
    <Question title="Who sees the teacher" says={inShort(sight)}>
      {sight === null && <p>Add the teacher’s place to the floor, above, and this is answered.</p>}
      {sight !== null && sight !== undefined && (
        <div className="question-beside">
          <div className="stack-close">
            {sight.sentences.slice(1).map((says) => (
              <p key={says}>{says}</p>
            ))}
            <p className="small soft">
              Everybody stands at the head end of her mat and takes {formatLength(500, units)} of room; only
              people in her own row and in the two before it are looked past. A stage and pillars are not.
            </p>
          </div>
          <div className="stack-close">
            <SightPicture hall={hall} plan={plan} units={units} sight={sight} />
          </div>
        </div>
      )}
      {sight !== undefined && <BestSightFinder hall={hall} plan={plan} units={units} />}
    </Question>
  );
}

function inShort(sight: Sight | null | undefined): string {
  if (sight === undefined) return "Looking along the lines.";
  return sight?.sentences[0] ?? "Not known: no place for the teacher is drawn.";
}
