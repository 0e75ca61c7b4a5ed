import { bad, good, problem, type Result, togetherInOrder } from "#core/words";
import { readCapacity } from "../heads/read-demand.ts";
import type { ComparedHallDocument } from "./compare-document.ts";
import type { Way } from "./compare-types.ts";

// the plain way for mats to stand, where others are named beside it
const PLAIN = "in lines";

/** The ways for the mats to stand in a hall. Problems: those of a capacity, "arrangement-twice". */
export function readWays(hall: ComparedHallDocument, place: string): Result<readonly Way[]> {
  const { arrangements = [] } = hall;
  const named = [
    {
      name: arrangements.length === 0 ? (hall.arrangement ?? null) : (hall.arrangement ?? PLAIN),
      capacity: hall.capacity,
      at: `${place}.capacity`,
    },
    ...arrangements.map((it, index) => ({ ...it, at: `${place}.arrangements[${index}].capacity` })),
  ];
  const names = named.map(({ name }) => name);
  const twice = names.findIndex((name, index) => names.indexOf(name) < index);
  if (twice > 0) {
    const says = `The mats of ${hall.name} stand ${names[twice] ?? ""} twice.`;
    return bad(
      problem("arrangement-twice", `${place}.arrangements[${twice - 1}].name`, says, "Keep one of them."),
    );
  }
  return togetherInOrder(
    named.map(({ name, capacity, at }) => {
      const read = readCapacity(capacity, at);
      return read.ok ? good({ name, capacity: read.value }) : read;
    }),
  );
}
