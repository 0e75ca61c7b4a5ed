import { formatLength, type LengthUnits } from "#core/words";
import type { StringEnd } from "../mat-plan-types.ts";
import type { NamedString, PlaceGroup, PlacesSetOut } from "./places-set-out-types.ts";

/** The set-out of mats without lines as sentences, one a line; an empty plan has one that says so. */
export function placesSentences(
  { toTheCentimetre, strings, groups }: Omit<PlacesSetOut, "sentences">,
  units: LengthUnits,
): readonly string[] {
  if (groups.length === 0) return ["There is no mat to set out."];
  const from = strings.length === 0 ? "two walls" : "two walls or strings, square to them,";
  return [
    `Each mat is measured from ${from} to its nearest edges. Mats that lie equally far from one are told together.`,
    ...strings.map((it) => stringSaid(it, units)),
    ...(toTheCentimetre
      ? []
      : ["A figure with three decimals is to the millimetre: a whole centimetre would break a gap there."]),
    ...groups.map((group) => groupSentence(group, units)),
    ...(units === "feet"
      ? ["Feet and inches are to the nearest quarter inch; the figures in metres are exact."]
      : []),
  ];
}

function stringSaid({ name, from, to }: NamedString, units: LengthUnits): string {
  const end = ({ wall, corner, distance }: StringEnd): string =>
    `${wall}, ${lengthSaid(distance, units)} from corner ${corner}`;
  const which = name === "the string" ? "a string" : name;
  return `Stretch ${which} from ${end(from)}, to ${end(to)}.`;
}

function groupSentence(
  { lengthLies, outFrom, out, alongFrom, places }: PlaceGroup,
  units: LengthUnits,
): string {
  const said = (figure: number): string => lengthSaid(figure, units);
  const [first, ...more] = places;
  const last = places.at(-1);
  if (first === undefined || last === undefined) return "";
  const through = more.length === 1 ? "and" : "to";
  const who = more.length === 0 ? `Mat ${first.number}` : `Mats ${first.number} ${through} ${last.number}`;
  const lies = more.length === 0 ? "lies" : "lie";
  const starts = places.map((it) => said(it.along));
  return `${who} ${lies} ${lengthLies}, ${said(out)} from ${outFrom} and ${listed(starts)} from ${alongFrom}.`;
}

/** Metres with three decimals where a figure is no whole centimetre, so that it is not short. */
export function lengthSaid(figure: number, units: LengthUnits): string {
  if (units === "metric" && figure % 10 !== 0) return `${(figure / 1000).toFixed(3)} m`;
  return formatLength(figure, units);
}

function listed(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}
