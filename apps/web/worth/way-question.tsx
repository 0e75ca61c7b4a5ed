import { type ArrangedMatPlan, type Hall, widthProblems } from "#core/hall";
import { formatLength, type LengthUnits, type Millimetres } from "#core/words";
import { LengthField } from "../floor/length-field.tsx";
import { PlanPicture } from "../floor/plan-picture.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { MarkKey } from "./mark-key.tsx";
import { CrossedMats, InkedMats } from "./mat-marks.tsx";
import { Question } from "./question.tsx";
import { WaysDrawing } from "./ways-drawing.tsx";
import type { Worth } from "./worth-worker.ts";

type Props = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly units: LengthUnits;
  readonly width: number;
  readonly putWidth: (width: Millimetres) => void;
  readonly worth: Worth | null;
};

/** Whether everybody gets out by a way of that width, drawn; and which mats are in it. */
export function WayQuestion({ hall, plan, units, width, putWidth, worth }: Props) {
  const way = worth?.way;
  return (
    <Question title="The ways to the doors" says={inShort(way)}>
      <p>
        <LengthField
          label="How wide the ways are to be"
          length={width}
          units={units}
          onSet={(length) => {
            const [problem = null] = widthProblems(length, units);
            if (problem === null) putWidth(length);
            return problem;
          }}
        />
      </p>
      {way?.ok === false && <ProblemList problems={way.problems} announce={false} />}
      {way?.ok === true && worth !== null && (
        <div className="question-beside">
          <div className="stack-close">
            <WidestWay clear={way.value.clear} widest={worth.widest} units={units} />
            {way.value.sentences.slice(1).map((says) => (
              <p key={says}>{says}</p>
            ))}
            <StuckList says={way.value.stuck.map((it) => it.says)} />
            <p className="small soft">
              Doors that were taken for ways out: {way.value.doors.join(", ")}. A door that does not go out
              does not count: mark it so in the list of things on the floor. The hall’s fire risk assessment
              says which do.
            </p>
          </div>
          <div className="stack-close">
            <PlanPicture
              hall={hall}
              plan={plan}
              units={units}
              says={`ways ${formatLength(width, units)} wide to a door; ${way.value.stuck.length} mats without one are crossed`}
              renderBeneath={(view) => <WaysDrawing lines={worth.lines} width={width} view={view} />}
              renderAbove={(view) => (
                <>
                  <InkedMats mat={hall.mat} mats={plan.mats} marked={way.value.blocking} view={view} />
                  <CrossedMats
                    mat={hall.mat}
                    mats={plan.mats}
                    marked={way.value.stuck.map((it) => it.mat)}
                    view={view}
                  />
                </>
              )}
            />
            <MarkKey
              marks={[
                { kind: "way", says: `a way ${formatLength(width, units)} wide` },
                { kind: "cross", says: "has no such way" },
                { kind: "inked", says: "in the way of another" },
              ]}
            />
          </div>
        </div>
      )}
    </Question>
  );
}

function inShort(way: Worth["way"] | undefined): string {
  if (way === undefined) return "Looking for the ways out.";
  if (way.ok) return (way.value.sentences[0] ?? "").replace(/: .*\.$/, ".");
  return way.problems.map((it) => it.says).join(" ");
}

/** What she has as it is, where what she asks for is too much. */
function WidestWay(props: {
  readonly clear: boolean;
  readonly widest: number | null;
  readonly units: LengthUnits;
}) {
  const { clear, widest, units } = props;
  if (clear) return null;
  if (widest === null) return <p>Nor is there one of {formatLength(300, units)} for every mat.</p>;
  return <p>The widest way that every mat has in this plan is {formatLength(widest, units)}.</p>;
}

/** Which mats block which: past ten of them the drawing tells it better. */
function StuckList({ says }: { readonly says: readonly string[] }) {
  if (says.length === 0 || says.length > 10) return null;
  return (
    <ul className="list-plain small">
      {says.map((it) => (
        <li key={it}>{it.charAt(0).toUpperCase() + it.slice(1)}.</li>
      ))}
    </ul>
  );
}
