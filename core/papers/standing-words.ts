import { type Hall, hallFrame, placeWords } from "#core/hall";
import type { LengthUnits } from "#core/words";
import type { NamedShapes } from "./hall-sheet-types.ts";
import { briefSize, sizeOnFloor } from "./size-on-floor.ts";

/** Longer lists are run together: the drawing shows where things stand. */
const LONG = 10;

/** What stands on the floor, those that are alike in one line: "b, c Chair stack: 0.50 m wide and 0.50 m deep; can be moved." */
export function standingWords(hall: Hall, named: NamedShapes, units: LengthUnits): readonly string[] {
  const groups = alike(hall, named, units);
  if (groups.length > LONG) return runTogether(groups);
  return groups.map(({ names, label, size, movable, place }) => {
    const stays = movable ? "can be moved" : "stays";
    const where = names.length === 1 ? `, ${place}` : "";
    return `${names.join(", ")} ${label}: ${size}; ${stays}${where}.`;
  });
}

type Group = {
  readonly names: readonly string[];
  readonly label: string;
  readonly size: string;
  readonly brief: string;
  readonly movable: boolean;
  /** of the first of them */
  readonly place: string;
};

function alike(hall: Hall, named: NamedShapes, units: LengthUnits): readonly Group[] {
  const frame = hallFrame(hall);
  const groups = new Map<string, Group>();
  for (const [index, { label, movable, outline }] of hall.fixtures.entries()) {
    const size = sizeOnFloor(outline, frame, units);
    const key = JSON.stringify([label, size, movable]);
    const name = named.fixtures[index] ?? "";
    const same = groups.get(key);
    const names = [...(same?.names ?? []), name];
    const place = same?.place ?? placeWords(outline, hall, frame);
    groups.set(key, { names, label, size, brief: briefSize(outline, frame, units), movable, place });
  }
  return [...groups.values()];
}

function runTogether(groups: readonly Group[]): readonly string[] {
  const said = ({ names, label, brief }: Group): string => `${names.join(", ")} ${label} ${brief}`;
  return ([false, true] as const).flatMap((movable) => {
    const those = groups.filter((it) => it.movable === movable);
    const head = movable ? "Can be moved" : "Stays";
    return those.length === 0 ? [] : [`${head}, width by depth: ${those.map(said).join("; ")}.`];
  });
}
