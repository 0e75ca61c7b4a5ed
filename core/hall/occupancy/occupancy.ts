import { area } from "#kernels/geometry";
import { bad, formatLength, good, type LengthUnits, problem, type Problem, type Result } from "#core/words";
import type { Hall } from "../hall.ts";
import { type Exit, exitsOf } from "./exits-of.ts";
import { freeArea } from "./free-area.ts";
import { exitSentence, noExitSentence, postedSentence, spaceSentence } from "./occupancy-in-words.ts";
import { peopleThrough } from "./people-through.ts";
import type { Occupancy, SpaceOccupancy } from "./occupancy-types.ts";
import { exitFigures, type FloorSpaceFigure, floorSpaceFigures } from "./published-figures.ts";

export const occupancyCaution =
  "These figures are a guide and never override the hall’s posted number. The hall, its fire risk assessment, the local code and the fire service decide how many people may be in the room; a table of another country says little about this one.";

/**
 * The posted number, and beside it what published tables would give for this floor and its exits. Everybody in the
 * room counts. Exits are those that are named, else the doors that `waysOut` counts. Problem: "exit-width", for an exit
 * that is not from 0.40 to 20 m wide.
 */
export function occupancy(
  hall: Hall,
  exits?: readonly Exit[],
  units: LengthUnits = "metric",
): Result<Occupancy> {
  const problems = (exits ?? []).flatMap(exitProblems);
  if (problems.length > 0) return bad(...problems);
  const ways = exits ?? exitsOf(hall);
  const grossArea = area(hall.outline);
  const netArea = freeArea(
    hall.outline,
    hall.fixtures.map((it) => it.outline),
  );
  const bySpace = floorSpaceFigures.map((figure) => shared(figure, grossArea, netArea));
  const byExits =
    ways.length === 0 ? [] : exitFigures.map((it) => ({ ...it, ...peopleThrough(ways, it.people) }));
  const sentences = [
    postedSentence(hall),
    ...bySpace.map((it) => spaceSentence(it, it.areaUsed === "gross" ? grossArea : netArea)),
    ...(ways.length === 0 ? [noExitSentence] : byExits.map((it) => exitSentence(it, ways))),
    ...(exits === undefined && ways.length > 0 ? [doorsTaken(hall, ways, units)] : []),
  ];
  const posted = hall.postedCapacity;
  return good({
    posted,
    grossArea,
    netArea,
    bySpace,
    byExits,
    exits: ways,
    sentences,
    caution: occupancyCaution,
  });
}

/** Narrower than 0.40 m is no way out for anybody; wider than 20 m is a slip of the unit. */
const NARROWEST = 400;
const WIDEST = 20_000;

function exitProblems({ label, width }: Exit, index: number): readonly Problem[] {
  if (width >= NARROWEST && width <= WIDEST) return [];
  const name = label.trim() === "" ? `Exit ${index + 1}` : `The exit “${label.trim()}”`;
  const says = Number.isFinite(width)
    ? `${name} is ${formatLength(width, "metric")} wide.`
    : `${name} has no width.`;
  const next = "Measure how wide it is when it stands open: from 0.40 to 20 m.";
  return [problem("exit-width", `exits[${index}].width`, says, next)];
}

function shared(figure: FloorSpaceFigure, grossArea: number, netArea: number): SpaceOccupancy {
  const areaUsed = figure.basis ?? "net";
  const squareMetres = (areaUsed === "gross" ? grossArea : netArea) / 1e6;
  const people = Math.floor(squareMetres / figure.squareMetresPerPerson + 1e-9);
  return { ...figure, people, areaUsed };
}

function doorsTaken({ keepClear }: Hall, ways: readonly Exit[], units: LengthUnits): string {
  const doors = ways.map((it) => `“${it.label}” ${formatLength(it.width, units)}`).join(", ");
  const marks = keepClear.map((it) => it.door?.wayOut);
  if (marks.includes(true))
    return `The doors that are marked as ways out were taken, as wide as their leaves: ${doors}. The clear opening is less; the hall’s fire risk assessment says which doors count.`;
  const taken = marks.includes(false)
    ? "Every door that is not marked as no way out"
    : "Every door that is drawn";
  return `${taken} was taken for a way out, as wide as its leaf: ${doors}. The clear opening is less, and a door that does not go out does not count.`;
}
