import { MoneyField } from "../fields/money-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { monthName } from "../words/dates.ts";
import type { HireParts } from "./hire-change.ts";

const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const;
/** When halls that charge for heating usually do; common practice, no source. */
const WINTER = [10, 11, 12, 1, 2, 3];

/** Heating that is charged by the hour in some months. */
export function HeatingFields({ hire, change }: HireParts) {
  const { heating } = hire;
  if (heating === undefined) {
    return (
      <TickField
        label="Heating is charged on top"
        checked={false}
        put={() => change({ heating: { perHour: "0.00", months: WINTER.toSorted((a, b) => a - b) } })}
      />
    );
  }
  const turn = (month: number, on: boolean) =>
    change({
      heating: {
        ...heating,
        months: MONTHS.filter((it) => (it === month ? on : heating.months.includes(it))),
      },
    });
  return (
    <fieldset className="fields">
      <legend className="unseen">Heating</legend>
      <TickField label="Heating is charged on top" checked put={() => change({ heating: undefined })} />
      <MoneyField
        path="hire.heating.perHour"
        label="Heating"
        per="an hour"
        value={heating.perHour}
        put={(perHour) => change({ heating: { ...heating, perHour } })}
      />
      <fieldset className="fields months">
        <legend className="unseen">Months in which heating is charged</legend>
        {MONTHS.map((month) => (
          <TickField
            key={month}
            label={monthName(month).slice(0, 3)}
            checked={heating.months.includes(month)}
            put={(on) => turn(month, on)}
          />
        ))}
      </fieldset>
    </fieldset>
  );
}
