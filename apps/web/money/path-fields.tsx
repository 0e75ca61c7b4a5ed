import type { MoneyPlan } from "#core/cash";
import { MoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { PercentField } from "../fields/percent-field.tsx";
import { type ChangePlan, freshPath, type Path } from "./plan-edit.ts";

type Props = { readonly plan: MoneyPlan; readonly change: ChangePlan };

/** What she needs and how sure she wants to be before something goes. */
export function PathFields({ plan, change }: Props) {
  const path = plan.path ?? freshPath;
  const put = (part: Partial<Path>) =>
    change((before) => ({ ...before, path: { ...(before.path ?? freshPath), ...part } }));
  return (
    <fieldset className="fields">
      <legend>From studio work to your own classes</legend>
      <p className="small soft">
        Which work may go is ticked at each work above; own classes that will grow are given what they bring
        later. Give the need, and the months until which each could go are worked out.
      </p>
      <MoneyField
        path="path.need"
        label="What you need, before tax"
        per="a month"
        guessable
        value={path.need}
        put={(need) => put({ need })}
      />
      <PercentField
        path="path.level"
        label="How sure to be"
        help="80 % is eight chances of ten"
        least={50}
        most={99}
        value={path.level}
        put={(level) => put({ level })}
      />
      <NumberField
        path="path.window"
        label="A thin month may be made up over"
        unit="months"
        range={{ least: 1, most: 12, whole: true }}
        value={path.window}
        put={(window) => put({ window })}
      />
      <NumberField
        path="path.together"
        label="Classes rise and fall together"
        help="A guess: 0 not at all, 1 as one"
        range={{ least: 0, most: 1 }}
        guessable
        value={path.together}
        put={(together) => put({ together })}
      />
    </fieldset>
  );
}
