import {
  type ArrangedMatPlan,
  type ClearWay,
  clearWay,
  doorInWall,
  type Hall,
  hallFrame,
  type KeepClear,
  matsInWords,
  placeWords,
  wallInWords,
} from "#core/hall";
import { type LengthUnits, MM_PER_INCH } from "#core/words";
import { sizeOnFloor } from "./size-on-floor.ts";
import type { HallSheetInput, NamedShapes } from "./hall-sheet-types.ts";
import { saidLength } from "./said-length.ts";

export type Ways = {
  readonly items: readonly string[];
  readonly inTheWay: readonly number[];
  /** of the ways that the words tell of, in millimetres; 0 where there is nothing to draw */
  readonly width: number;
};

/** What a way out should rather have: 0.90 m, or 36 in where lengths are in feet. */
const WIDE: Readonly<Record<LengthUnits, number>> = { metric: 900, feet: 36 * MM_PER_INCH };
/** Nobody gets through less. */
const NARROWEST = 300;

/** Doors with their widths, zones to keep clear, and whether every mat has a way out. */
export function wayWords(input: HallSheetInput, named: NamedShapes): Ways {
  const { hall, units } = input;
  const doors = hall.keepClear.filter((it) => it.door !== undefined);
  const leaves =
    doors.length === 0
      ? "No door is drawn: find every way out before anything is laid."
      : `A door’s width is that of its leaf; the clear opening is less. ${whoSays(hall)}`;
  const clear = clearWords(input);
  return { ...clear, items: [...zoneItems(hall, named, units), leaves, ...clear.items] };
}

/** The marks are hers: the hall has the last word. */
function whoSays({ keepClear }: Hall): string {
  const doors = keepClear.flatMap((it) => (it.door === undefined ? [] : [it.door]));
  if (doors.every((it) => it.wayOut === false))
    return "No door that is drawn is marked as a way out: find every way out before anything is laid.";
  return doors.some((it) => it.wayOut !== undefined)
    ? "Which doors are ways out was marked by whoever drew the hall; the hall says which are fire exits."
    : "Which doors are fire exits the hall says.";
}

function zoneItems(hall: Hall, named: NamedShapes, units: LengthUnits): readonly string[] {
  return hall.keepClear.flatMap((zone, index) => {
    const name = named.keepClear[index] ?? "";
    return name === "" ? [] : [`${name} ${zone.label}: ${zoneWords(hall, zone, units)}`];
  });
}

function zoneWords(hall: Hall, zone: KeepClear, units: LengthUnits): string {
  const frame = hallFrame(hall);
  const where = placeWords(zone.outline, hall, frame);
  const size = sizeOnFloor(zone.outline, frame, units);
  if (zone.place !== undefined)
    return `${size} ${where}. Keep it and its way to a door, dotted too, clear of mats.`;
  if (zone.door === undefined) return `keep clear ${size} ${where}.`;
  const door = doorInWall(hall.outline, zone);
  const width = door?.width ?? distance(zone.door.hinge, zone.door.closed);
  const wall = door === null ? where : `in ${wallInWords(hall.outline, frame, door.wall)}`;
  return `${saidLength(width, units)} wide, ${wall}${markWords(zone.door.wayOut)}. Keep its swing clear.`;
}

function markWords(wayOut: boolean | undefined): string {
  if (wayOut === undefined) return "";
  return wayOut ? "; marked as a way out in an emergency" : "; marked as not a way out";
}

function distance(a: readonly [number, number], b: readonly [number, number]): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

const none: Ways = { items: [], inTheWay: [], width: 0 };

/**
 * Of the way as wide as it was set, and which mats are in it. Where nobody has set it, of a wide one first, and where
 * not every mat has that, of one as wide as the gap between mats: that much they leave by themselves.
 */
function clearWords(input: HallSheetInput): Ways {
  const { hall, plan, wayWidth, units } = input;
  const width = wayWidth ?? WIDE[units];
  const found = clearWay(hall, plan, width, units);
  const unusable = found.ok ? [] : found.problems.filter((it) => it.code === "way-width");
  if (unusable.length > 0) {
    const unset = clearWords({ ...input, wayWidth: null });
    return { ...unset, items: [...unusable.map((it) => `${it.says} ${it.next}`), ...unset.items] };
  }
  if (!found.ok || plan.count === 0) return none;
  const wide = found.value;
  if (wide.clear) return { items: [`Every mat ${hasWay(width, units)}. Keep it so.`], inTheWay: [], width };
  if (wayWidth !== null)
    return { items: [`${stuckWords(plan, wide, width, units)} ${decides}`], inTheWay: wide.blocking, width };
  return narrowWords(input, plan.count - wide.stuck.length);
}

/** So many mats have the wide way; which have one as wide as the gap between mats. */
function narrowWords({ hall, plan, units }: HallSheetInput, wide: number): Ways {
  const width = Math.min(WIDE[units], Math.max(NARROWEST, hall.gaps.side));
  const found = clearWay(hall, plan, width, units);
  if (!found.ok) return none;
  const few = `${wide} of ${plan.count} have one ${saidLength(WIDE[units], units)} wide. ${decides}`;
  const { clear, blocking } = found.value;
  const says = clear
    ? `Every mat ${hasWay(width, units)}, past no other mat; ${few}`
    : `${stuckWords(plan, found.value, width, units)} ${few}`;
  return { items: [says], inTheWay: blocking, width };
}

const decides = "Whether that will do the hall and the fire service decide.";

function hasWay(width: number, units: LengthUnits): string {
  return `has a way ${saidLength(width, units)} wide to a door`;
}

function stuckWords(plan: ArrangedMatPlan, way: ClearWay, width: number, units: LengthUnits): string {
  const stuck = way.stuck.map((it) => it.mat);
  const without = `${stuck.length} of ${plan.count} mats ${stuck.length === 1 ? "has" : "have"} no way ${saidLength(width, units)} wide to a door: ${matsInWords(plan, stuck)}.`;
  return way.blocking.length === 0
    ? `${without} Walls and what stands on the floor leave none.`
    : `${without} In the way, drawn with a thick edge: ${matsInWords(plan, way.blocking)}.`;
}
