import { type ClassOutlook, type OutlookFigure, outlookFigure } from "#core/class";
import { USUAL_SEASON } from "#core/outlook";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { GuessAt } from "../fields/guess-at.tsx";
import { NumberField, OptionalNumberField } from "../fields/number-field.tsx";
import { PercentField } from "../fields/percent-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { Show } from "../parts/show.tsx";
import { monthName } from "../words/dates.ts";
import { putOutlook } from "./outlook-part.ts";

type Roll = NonNullable<ClassOutlook["roll"]>;

/** The guesses with which the outlook begins; the record takes them over week by week. */
export function RollFields({ document, change }: ClassPart) {
  const { roll = {}, regulars, startedBefore = false } = document.outlook ?? {};
  const part = { document, change };
  const put = (next: Roll) => putOutlook(part, "roll", next);
  const figure = (name: OutlookFigure) => outlookFigure(document, name);
  return (
    <fieldset className="fields">
      <legend>What you guess</legend>
      <NumberField
        path="outlook.roll.newcomers"
        label="New people in an ordinary week"
        unit="people"
        range={{ least: 0.01, most: 200 }}
        guessable
        value={figure("roll.newcomers")}
        put={(newcomers) => put({ ...roll, newcomers })}
      />
      <PercentField
        path="outlook.roll.stays"
        label="Of 100 new people, so many stay"
        least={0.1}
        most={99.9}
        guessable
        value={figure("roll.stays")}
        put={(stays) => put({ ...roll, stays })}
      />
      <PercentField
        path="outlook.roll.attends"
        label="Of 100 sessions, a regular comes to"
        least={0.1}
        most={99.9}
        guessable
        value={figure("roll.attends")}
        put={(attends) => put({ ...roll, attends })}
      />
      <PercentField
        path="outlook.roll.leaves"
        label="Of 100 regulars, so many stop each week"
        least={0.1}
        most={99.9}
        guessable
        value={figure("roll.leaves")}
        put={(leaves) => put({ ...roll, leaves })}
      />
      <PercentField
        path="outlook.roll.luck"
        label="Of 100 people, so many more or fewer by an evening’s luck"
        help="Rain, illness or a match on television keeps all of them away together"
        most={80}
        guessable
        value={figure("roll.luck")}
        put={(luck) => put({ ...roll, luck })}
      />
      <OptionalNumberField<undefined>
        path="outlook.regulars"
        label="Regulars who were there before the first session"
        help="Only those you know will come"
        unit="people"
        range={{ least: 0, most: 2000, whole: true }}
        none={undefined}
        value={regulars}
        put={(count) => putOutlook(part, "regulars", count)}
      />
      <TickField
        label="The class ran before the first session written down"
        checked={startedBefore}
        put={(before) => putOutlook(part, "startedBefore", before)}
      />
      <SeasonFields {...part} />
    </fieldset>
  );
}

function SeasonFields({ document, change }: ClassPart) {
  const season = document.outlook?.season ?? USUAL_SEASON;
  return (
    <Show summary="The seasons of the year">
      <fieldset className="fields">
        <legend>How full each month is beside an ordinary one</legend>
        <div className="rows-before">
          <GuessAt path="outlook.season" label="The seasons of the year" />
        </div>
        <p className="small soft">1 is an ordinary month, 0.6 a thin one, 1.2 a full one.</p>
        <div className="season">
          {season.map((value, at) => (
            <NumberField
              // a month is its place
              // oxlint-disable-next-line react/no-array-index-key
              key={at}
              path={`outlook.season[${at}]`}
              label={monthName(at + 1)}
              range={{ least: 0.05, most: 5 }}
              value={value}
              put={(next) =>
                putOutlook(
                  { document, change },
                  "season",
                  season.map((it, other) => (other === at ? next : it)),
                )
              }
            />
          ))}
        </div>
      </fieldset>
    </Show>
  );
}
