import type { HallDocument } from "#core/hall";
import type { WeekPlan } from "#core/week";
import type { PracticeDocument } from "#core/words";
import type { Listed } from "../drafts/use-practice.ts";
import { ExportButton } from "../parts/files.tsx";
import { nameOr } from "../places/hall-name.ts";
import { FixedFields } from "./fixed-fields.tsx";
import { LimitFields } from "./limit-fields.tsx";
import { OtherList } from "./other-list.tsx";
import { OwnList } from "./own-list.tsx";
import { PlaceList } from "./place-list.tsx";
import type { ChangePlan } from "./plan-edit.ts";
import type { UsedWeek } from "./use-week.ts";
import { WayList } from "./way-list.tsx";
import { WishFields } from "./wish-fields.tsx";

type Props = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly halls: readonly Listed<HallDocument>[];
  readonly plan: WeekPlan;
  readonly week: UsedWeek;
  readonly change: ChangePlan;
  readonly amount: (text: string) => string;
};

/** All that the week rests on, entered once. */
export function WeekInputs({ practiceId, practice, halls, plan, week, change, amount }: Props) {
  const { document, own } = week;
  const more = halls
    .filter(({ id }) => document.places.every((it) => it.id !== id))
    .map(({ id, document: hall }) => ({ id, name: nameOr(hall.name, "A hall without a name") }));
  const places = [...document.places, ...more].map(({ id, name }) => ({ value: id, label: name ?? id }));
  const hallIds = new Set(halls.map(({ id }) => id));
  return (
    <>
      <section className="part" aria-labelledby="could">
        <h2 id="could" className="part-title">
          What could be taught
        </h2>
        <div className="holds-fields stack week-fields">
          <OwnList practiceId={practiceId} rows={own} plan={plan} change={change} />
          <OtherList plan={plan} change={change} places={places} locale={practice.locale} amount={amount} />
        </div>
      </section>
      <section className="part" aria-labelledby="places">
        <h2 id="places" className="part-title">
          Places and the ways between them
        </h2>
        <div className="holds-fields stack week-fields">
          <PlaceList plan={plan} places={document.places} halls={hallIds} change={change} />
          <WayList document={document} change={change} />
        </div>
      </section>
      <section className="part" aria-labelledby="limits">
        <h2 id="limits" className="part-title">
          Limits, fixed times and wishes
        </h2>
        <div className="holds-fields stack week-fields">
          <FixedFields plan={plan} change={change} />
          <LimitFields plan={plan} change={change} />
          <WishFields plan={plan} document={document} change={change} />
        </div>
      </section>
      <section className="part no-print" aria-label="Keep">
        <p className="row">
          <ExportButton
            label="Save to a file"
            name="week.json"
            document={{ ...document, format: "hallful/week@1" }}
          />
          <button type="button" className="button" onClick={() => print()}>
            Print this page
          </button>
        </p>
        <p className="small soft">The file is what the command line answers: hallful week week.json.</p>
      </section>
    </>
  );
}
