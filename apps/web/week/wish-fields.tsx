import type { WeekDocument, WeekPlan } from "#core/week";
import { weekdayChoices } from "../compare/weekday-choices.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { MoneyField, OptionalMoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { Rows } from "../fields/rows.tsx";
import { type ChangePlan } from "./plan-edit.ts";
import { RowProblem } from "./row-problem.tsx";

type Wish = WeekPlan["wishes"][number];
type Props = {
  readonly plan: WeekPlan;
  readonly document: WeekDocument;
  readonly change: ChangePlan;
};

const kinds: readonly { readonly value: Wish["kind"]; readonly label: string }[] = [
  { value: "day-free", label: "A day free" },
  { value: "evening-free", label: "An evening free" },
  { value: "fewer-classes", label: "Fewer classes" },
  { value: "rather-not", label: "Rather not this class" },
];

/** What would be nice and what it is worth, the price of travel, and the target. */
export function WishFields({ plan, document, change }: Props) {
  const classes = document.candidates.map(({ id, name }) => ({ value: id, label: name ?? id }));
  return (
    <>
      <Rows
        title="Wishes, each with what it is worth to you"
        path="wishes"
        compact
        rows={plan.wishes}
        fresh={(): Wish => ({ kind: "day-free", weekday: 7, perWeek: "10.00" })}
        add="Add a wish"
        named={(index) => `wish ${index + 1}`}
        put={(wishes) => change((before) => ({ ...before, wishes: [...wishes] }))}
        renderRow={(wish, put, path) => <WishRow wish={wish} put={put} path={path} classes={classes} />}
      />
      <fieldset className="fields">
        <legend>What travel costs, and what you need</legend>
        <MoneyField
          path="travelCost.perKm"
          label="A kilometre costs"
          per="a km"
          value={plan.travelCost.perKm}
          put={(perKm) => change((before) => ({ ...before, travelCost: { ...before.travelCost, perKm } }))}
        />
        <MoneyField
          path="travelCost.perHour"
          label="An hour on the way or waiting is worth"
          help="0.00 leaves your time on the way out of the sum"
          per="an hour"
          value={plan.travelCost.perHour}
          put={(perHour) =>
            change((before) => ({ ...before, travelCost: { ...before.travelCost, perHour } }))
          }
        />
        <NumberField
          path="weeks"
          label="Teaching weeks a year"
          help="For what wishes cost a year; each class has its own sessions"
          range={{ least: 1, most: 53, whole: true }}
          value={plan.weeks}
          put={(weeks) => change((before) => ({ ...before, weeks }))}
        />
        <OptionalMoneyField
          path="target"
          label="What the week should earn"
          help="For the lightest week that does; after travel, before tax and fixed costs"
          per="a year"
          value={plan.target}
          put={(target) => change((before) => withTarget(before, target))}
        />
      </fieldset>
    </>
  );
}

function withTarget(before: WeekPlan, target: string | undefined): WeekPlan {
  const { target: _, ...plan } = before;
  return target === undefined ? plan : { ...plan, target };
}

type RowProps = {
  readonly wish: Wish;
  readonly put: (wish: Wish) => void;
  readonly path: string;
  readonly classes: readonly { readonly value: string; readonly label: string }[];
};

function WishRow({ wish, put, path, classes }: RowProps) {
  return (
    <>
      <ChoiceField
        label="What"
        value={wish.kind}
        choices={kinds}
        onChange={(value) =>
          put(freshWish(kinds.find((it) => it.value === value)?.value ?? "day-free", wish.perWeek, classes))
        }
      />
      <WishAbout wish={wish} put={put} path={path} classes={classes} />
      <MoneyField
        path={`${path}.perWeek`}
        label="Worth"
        per="a week"
        value={wish.perWeek}
        put={(perWeek) => put({ ...wish, perWeek })}
      />
      <RowProblem path={`${path}.candidate`} />
    </>
  );
}

function WishAbout({ wish, put, path, classes }: RowProps) {
  switch (wish.kind) {
    case "day-free":
    case "evening-free":
      return (
        <ChoiceField
          label="Day"
          value={String(wish.weekday)}
          choices={weekdayChoices}
          onChange={(day) => put({ ...wish, weekday: Number(day) })}
        />
      );
    case "fewer-classes":
      return (
        <NumberField
          path={`${path}.than`}
          label="For each class beyond"
          unit="a week"
          range={{ least: 0, most: 100, whole: true }}
          value={wish.than}
          put={(than) => put({ ...wish, than })}
        />
      );
    case "rather-not":
      return (
        <ChoiceField
          label="Class"
          value={wish.candidate}
          choices={
            classes.some(({ value }) => value === wish.candidate)
              ? classes
              : [{ value: wish.candidate, label: "A class that is gone" }, ...classes]
          }
          onChange={(candidate) => put({ ...wish, candidate })}
        />
      );
  }
}

function freshWish(kind: Wish["kind"], perWeek: string, classes: RowProps["classes"]): Wish {
  switch (kind) {
    case "day-free":
    case "evening-free":
      return { kind, weekday: 7, perWeek };
    case "fewer-classes":
      return { kind, than: 6, perWeek };
    case "rather-not":
      return { kind, candidate: classes[0]?.value ?? "", perWeek };
  }
}
