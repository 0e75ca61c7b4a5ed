import { type ArrangementRow, arrangementWords } from "#core/hall";
import { formatLengthShort, type LengthUnits } from "#core/words";

/** One way to lay the mats as it stands in a table: short words and figures. */
export type ArrangementFigures = {
  readonly name: string;
  readonly mats: string;
  /** "30, proven"; "31, 2 more at most" */
  readonly most: string;
  readonly cannotSee: string;
  readonly nearest: string;
  readonly way: string;
};

export const figureNames = {
  mats: "Mats",
  most: "At most",
  cannotSee: "Cannot see",
  nearest: "Least gap",
  way: "Way out",
} as const satisfies Readonly<Record<Exclude<keyof ArrangementFigures, "name">, string>>;

export const figureKeys = ["mats", "most", "cannotSee", "nearest", "way"] as const;

export function arrangementFigures(row: ArrangementRow, units: LengthUnits): ArrangementFigures {
  const { arrangement, count, bound, proven, sight, between, way } = row;
  return {
    name: nameOf(arrangement),
    mats: String(count),
    most: proven ? `${bound}, proven` : `${bound}, ${bound - count} more`,
    cannotSee: sight === null ? "not known" : String(sight.hidden.length),
    nearest: between.any === null ? "–" : formatLengthShort(between.any, units),
    way: wayWords(way),
  };
}

/** "In straight lines" */
export function nameOf(arrangement: ArrangementRow["arrangement"]): string {
  const words = arrangementWords[arrangement];
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function wayWords(way: ArrangementRow["way"]): string {
  if (!way.ok) return "not known";
  return way.value.clear ? "clear" : `${way.value.stuck.length} blocked`;
}
