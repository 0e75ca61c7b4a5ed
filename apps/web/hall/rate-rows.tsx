import { DateField } from "../fields/date-field.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { Rows } from "../fields/rows.tsx";
import { today } from "../words/dates.ts";
import type { HireParts } from "./hire-change.ts";

/** A new rate from its date. */
export function RateRows({ hire, change }: HireParts) {
  const bySession = hire.perSession !== undefined;
  const amount = hire.perSession ?? hire.perHour ?? "0.00";
  return (
    <Rows
      title="A new rate from a date"
      path="hire.rates"
      rows={hire.rates ?? []}
      fresh={() => (bySession ? { from: today(), perSession: amount } : { from: today(), perHour: amount })}
      add="Add a new rate"
      named={(index) => `new rate ${index + 1}`}
      put={(rows) => change({ rates: rows.length === 0 ? undefined : [...rows] })}
      renderRow={(rate, put, path) => (
        <>
          <DateField label="From" value={rate.from} put={(from) => put({ ...rate, from })} />
          <MoneyField
            path={`${path}.${bySession ? "perSession" : "perHour"}`}
            label="New rate"
            per={bySession ? "a session" : "an hour"}
            value={rate.perSession ?? rate.perHour ?? "0.00"}
            put={(value) =>
              put(bySession ? { from: rate.from, perSession: value } : { from: rate.from, perHour: value })
            }
          />
        </>
      )}
    />
  );
}
