import { type ArrangedMatPlan, type Hall, hallFrame, placeWords } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { PlaceFinder } from "./place-finder.tsx";
import { placesOf, withoutPlace } from "./places-of.ts";
import { Question } from "./question.tsx";

type Props = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly units: LengthUnits;
  readonly wayWidth: number;
  readonly become: (hall: Hall) => void;
};

/** Larger places with a way to a door, that the mats keep clear of. */
export function PlacesQuestion({ hall, plan, units, wayWidth, become }: Props) {
  const places = placesOf(hall);
  const frame = hallFrame(hall);
  return (
    <Question title="Places for wheelchairs and chairs" says={inShort(places.length)}>
      {places.length > 0 && (
        <ul className="list-plain ledger">
          {places.map(({ number, bay }) => (
            <li key={number} className="gain-line">
              <span>
                {bay.label}, {placeWords(bay.outline, hall, frame)}, with its way to a door
              </span>
              <button
                type="button"
                className="button"
                aria-label={`Remove ${bay.label}`}
                onClick={() => become({ ...hall, keepClear: withoutPlace(hall.keepClear, number) })}
              >
                Remove
              </button>
            </li>
          ))}
        </ul>
      )}
      <p>
        A place has a clear way to a door and no mat in either. Who sits there counts as one more person who
        is not on a mat. Ask whoever comes what they need.
      </p>
      <PlaceFinder hall={hall} plan={plan} units={units} wayWidth={wayWidth} become={become} />
    </Question>
  );
}

function inShort(count: number): string {
  if (count === 0) return "None is kept clear; every person is on a mat.";
  return count === 1
    ? "1 place is kept clear, with its way."
    : `${count} places are kept clear, with their ways.`;
}
