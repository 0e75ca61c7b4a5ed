import type { CapacityLimits } from "#core/hall";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { Given } from "./command.ts";

const caps = { matsOwned: "mats-owned", ownCap: "own-cap", insurerCap: "insurer-cap" } as const;

/** Numbers of people from the options of that name. Problem: "cap-unreadable". */
export function readCaps(given: Given): Result<CapacityLimits> {
  const written = Object.entries(caps).flatMap(([field, option]) => {
    const value = given.values[option];
    return value === undefined ? [] : [{ field, option, value }];
  });
  const wrong = written.filter(({ value }) => !/^\d{1,4}$/.test(value));
  if (wrong.length > 0) return bad(...wrong.map(unreadable));
  return good(Object.fromEntries(written.map(({ field, value }) => [field, Number(value)])));
}

function unreadable({ option, value }: { readonly option: string; readonly value: string }): Problem {
  const says = `“${value.slice(0, 40)}” is not a number of people.`;
  return problem("cap-unreadable", `--${option}`, says, "Give a whole number from 0 to 9999.");
}
