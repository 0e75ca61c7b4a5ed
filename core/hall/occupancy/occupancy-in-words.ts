import type { Hall } from "../hall.ts";
import type { Exit } from "./exits-of.ts";
import type { ExitOccupancy, SpaceOccupancy } from "./occupancy-types.ts";
import type { FigureSource } from "./published-figures.ts";

export const noExitSentence = "No way out is drawn and no exit named, so nothing is said by exit width.";

/** The number that decides, or that it has to be asked for. */
export function postedSentence({ postedCapacity, peopleNotOnMats }: Hall): string {
  if (postedCapacity === undefined)
    return "The hall’s posted number is not known: ask for it before you say how many can come.";
  const onMats = Math.max(0, postedCapacity - peopleNotOnMats);
  return `The hall’s own limit is ${counted(postedCapacity)}, everybody in the room counted; it leaves ${counted(onMats)} on mats.`;
}

export function spaceSentence(it: SpaceOccupancy, area: number): string {
  const floor = `${(area / 1e6).toFixed(1)} m² ${it.areaUsed === "gross" ? "within the walls" : "clear of what stands on it"}`;
  const unsaid = it.basis === null ? ", the smaller area, as the table was not looked up" : "";
  return `As a guide by floor space, ${it.use}: ${counted(it.people)}, ${it.squareMetresPerPerson} m² each of ${floor}${unsaid} (${sourceInWords(it.source)}).`;
}

export function exitSentence(it: ExitOccupancy, exits: readonly Exit[]): string {
  const [first] = exits.toSorted((a, b) => b.width - a.width);
  const through =
    it.withoutWidest === null
      ? `${counted(it.all)} through the one exit`
      : `${counted(it.withoutWidest)} with the widest, “${first?.label}”, out of use; ${it.all} through all ${exits.length}`;
  return `As a guide by exit width: ${through}; ${it.rule} (${sourceInWords(it.source)}).`;
}

/** "Approved Document B, volume 2 (England), 2019, table D1; from memory" */
export function sourceInWords({ title, country, edition, table, mark }: FigureSource): string {
  return `${title} (${country}), ${edition}, ${table}; ${mark}`;
}

function counted(people: number): string {
  return `${people} ${people === 1 ? "person" : "people"}`;
}
