import { OptionalNumberField, NumberField } from "../fields/number-field.tsx";
import { PercentField } from "../fields/percent-field.tsx";
import { Rows } from "../fields/rows.tsx";
import type { HireParts } from "./hire-change.ts";

const HOURS = { least: 0, most: 8784 };

/** A lower rate for whoever hires many hours a year. */
export function BandRows({ hire, change }: HireParts) {
  const bands = hire.bands ?? [];
  return (
    <Rows
      title="Many hours a year"
      path="hire.bands"
      rows={bands}
      fresh={() => ({ fromHoursPerYear: 50, factor: 0.9 })}
      add="Add a lower rate for many hours"
      named={(index) => `lower rate ${index + 1}`}
      put={(rows) => change({ bands: rows.length === 0 ? undefined : [...rows] })}
      renderRow={(band, put, path) => (
        <>
          <NumberField
            path={`${path}.fromHoursPerYear`}
            label="From"
            unit="hours a year"
            range={HOURS}
            value={band.fromHoursPerYear}
            put={(fromHoursPerYear) => put({ ...band, fromHoursPerYear })}
          />
          <PercentField
            path={`${path}.factor`}
            label="The rate is charged at"
            value={band.factor}
            put={(factor) => put({ ...band, factor })}
          />
        </>
      )}
      before={
        bands.length === 0 ? null : (
          <OptionalNumberField
            path="hire.hoursPerYear"
            label="Hours you hire there in a year"
            unit="hours"
            range={HOURS}
            value={hire.hoursPerYear}
            none={undefined}
            put={(hoursPerYear) => change({ hoursPerYear })}
          />
        )
      }
    />
  );
}
