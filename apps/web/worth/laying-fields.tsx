import { type ArrangedMatPlan, layingProblems, USUAL_MIDDLE } from "#core/hall";
import { formatLength, type LengthUnits, type Millimetres, type Problem } from "#core/words";
import type { FloorPart } from "../floor/floor-part.ts";
import { LengthField } from "../floor/length-field.tsx";
import type { FloorHistory } from "../floor/use-floor-history.ts";

type Props = {
  readonly plan: ArrangedMatPlan;
  readonly floor: FloorHistory;
  readonly units: LengthUnits;
};

/** What the plan is laid round, to be set: how wide the middle of two banks is, or where the centre of rings lies. */
export function LayingFields({ plan, floor, units }: Props) {
  const set = (next: FloorPart): Problem | null => {
    const [problem = null] = layingProblems(next, next.outline, units);
    if (problem === null) floor.settle(next);
    return problem;
  };
  switch (plan.arrangement) {
    case "facing":
      return <MiddleField part={floor.shown} set={set} units={units} />;
    case "round":
      return <CentreFields part={floor.shown} set={set} units={units} centre={plan.centre} />;
    case "lines":
    case "staggered":
    case "most":
      return null;
  }
}

type FieldProps = {
  readonly part: FloorPart;
  readonly set: (next: FloorPart) => Problem | null;
  readonly units: LengthUnits;
};

function MiddleField({ part, set, units }: FieldProps) {
  const { middleWidth, ...usual } = part;
  return (
    <fieldset className="fields">
      <legend>The middle between the two banks</legend>
      <div className="row">
        <LengthField
          label="How wide it is to be"
          length={middleWidth ?? USUAL_MIDDLE}
          units={units}
          onSet={(width) => set({ ...part, middleWidth: width })}
        />
        {middleWidth !== undefined && (
          <button type="button" className="link-button" onClick={() => set(usual)}>
            As wide as usual, {formatLength(USUAL_MIDDLE, units)}
          </button>
        )}
      </div>
    </fieldset>
  );
}

function CentreFields({
  part,
  set,
  units,
  centre,
}: FieldProps & { readonly centre: readonly [number, number] }) {
  const { ringCentre, ...usual } = part;
  const [x, y] = ringCentre ?? centre;
  const fields = [
    ["Across", x, (to: Millimetres) => set({ ...part, ringCentre: [to, y] })],
    ["Up", y, (to: Millimetres) => set({ ...part, ringCentre: [x, to] })],
  ] as const;
  return (
    <fieldset className="fields">
      <legend>The centre of the rings</legend>
      <div className="row">
        {fields.map(([word, length, onSet]) => (
          <LengthField
            key={word}
            label={word}
            length={Math.round(length)}
            signed
            units={units}
            onSet={onSet}
          />
        ))}
      </div>
      <p className="small soft">
        Measured on the drawing, as the things on the floor are; laid to whole centimetres from a wall.
        {ringCentre === undefined &&
          ` Until you set it, rings lie around ${part.teacher === null ? "the most open point of the floor" : "the teacher’s place"}.`}
      </p>
      {ringCentre !== undefined && (
        <button type="button" className="link-button" onClick={() => set(usual)}>
          {part.teacher === null ? "Around the most open point again" : "Around the teacher’s place again"}
        </button>
      )}
    </fieldset>
  );
}
