import type { WeekDocument, WeekPlan } from "#core/week";
import { bad, good, problem, type Result } from "#core/words";
import { useRef } from "react";
import { newId } from "../api/new-id.ts";
import { useDropTyped } from "../fields/form.tsx";
import { TypedBox } from "../fields/typed-box.tsx";
import { Show } from "../parts/show.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { type ChangePlan, withoutPlace } from "./plan-edit.ts";
import { readMapPoint } from "./read-map-point.ts";

type Place = WeekDocument["places"][number];

type Props = {
  readonly plan: WeekPlan;
  /** with the halls that come in by themselves */
  readonly places: readonly Place[];
  /** ids of the halls of the practice, whose names are their own */
  readonly halls: ReadonlySet<string>;
  readonly change: ChangePlan;
};

/** Where the day begins and where classes are, each with its point on the map if she likes. */
export function PlaceList({ plan, places, halls, change }: Props) {
  const adder = useRef<HTMLButtonElement>(null);
  const dropTyped = useDropTyped();
  const used = new Set(plan.candidates.map(({ place }) => place));
  return (
    <Show
      summary={`${places.length === 1 ? "1 place" : `${places.length} places`}, their names and where they are`}
    >
      <p className="small soft">
        Your halls come in by themselves. A point on the map, as any map gives it, is only for a guess of ways
        that nobody stated.
      </p>
      {places.map((place) => (
        <div key={place.id} className="rows-one">
          <PlaceFields
            place={place}
            typed={plan.places.find(({ id }) => id === place.id)?.name ?? ""}
            named={!halls.has(place.id)}
            put={(next) => change((before) => withPlace(before, next))}
          />
          {place.id === plan.home || halls.has(place.id) ? null : (
            <p>
              <button
                type="button"
                className="link-button small"
                aria-label={`Take away ${place.name ?? place.id}`}
                disabled={used.has(place.id)}
                onClick={() => {
                  dropTyped(`places.${place.id}.`);
                  change((before) => withoutPlace(before, place.id));
                  adder.current?.focus();
                }}
              >
                {used.has(place.id) ? "Some class is there" : "Take away"}
              </button>
            </p>
          )}
        </div>
      ))}
      <button
        ref={adder}
        type="button"
        className="button"
        onClick={() =>
          change((before) => ({
            ...before,
            places: [...before.places, { id: newId(), name: `Place ${before.places.length}` }],
          }))
        }
      >
        Add a place
      </button>
    </Show>
  );
}

function withPlace(plan: WeekPlan, place: Place): WeekPlan {
  const known = plan.places.some(({ id }) => id === place.id);
  return {
    ...plan,
    places: known ? plan.places.map((it) => (it.id === place.id ? place : it)) : [...plan.places, place],
  };
}

type FieldsProps = {
  readonly place: Place;
  /** its name as she wrote it */
  readonly typed: string;
  readonly named: boolean;
  readonly put: (place: Place) => void;
};

function PlaceFields({ place, typed, named, put }: FieldsProps) {
  const { at, ...rest } = place;
  const name = place.name ?? place.id;
  return (
    <>
      {named ? (
        <WordsField
          label="Name of the place"
          value={typed}
          onChange={(text) => put({ ...place, name: text })}
        />
      ) : (
        <p>
          <strong>{name}</strong>
        </p>
      )}
      <TypedBox<Place["at"]>
        path={`places.${place.id}.at`}
        label={`${name} on the map`}
        help="Latitude and longitude, like 51.21, −2.18; may stay empty"
        shown={at === undefined ? "" : `${at.latitude}, ${at.longitude}`}
        read={(text) => readPoint(text, `places.${place.id}.at`)}
        put={(point) => put(point === undefined ? rest : { ...rest, at: point })}
        inputMode="text"
      />
    </>
  );
}

function readPoint(text: string, path: string): Result<Place["at"]> {
  if (text.trim() === "") return good(undefined);
  const point = readMapPoint(text);
  if (point !== null) return good(point);
  const says = `“${text.trim().slice(0, 40)}” is not a point on the map.`;
  const next = "Write two numbers with a comma between: latitude from −90 to 90, longitude from −180 to 180.";
  return bad(problem("map-point-unreadable", path, says, next));
}
