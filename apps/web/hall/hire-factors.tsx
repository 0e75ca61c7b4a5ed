import { PercentField } from "../fields/percent-field.tsx";
import type { HireParts } from "./hire-change.ts";

/** The share of the rate for set-up minutes and at weekends. */
export function HireFactors({ hire, change }: HireParts) {
  return (
    <div>
      <PercentField
        path="hire.setUpFactor"
        label="Set-up minutes are charged at"
        help="100 is the full rate, 50 is half"
        most={100}
        value={hire.setUpFactor ?? 1}
        put={(factor) => change({ setUpFactor: factor === 1 ? undefined : factor })}
      />
      <PercentField
        path="hire.weekendFactor"
        label="Saturdays and Sundays are charged at"
        help="150 is half as much again"
        most={1000}
        value={hire.weekendFactor ?? 1}
        put={(factor) => change({ weekendFactor: factor === 1 ? undefined : factor })}
      />
    </div>
  );
}
