import type { WeekDocument } from "#core/week";

/** The name of a place by its id, as far as the document knows it. */
export function placeNames({ places }: Pick<WeekDocument, "places">): (id: string) => string {
  const names = new Map(places.map(({ id, name }) => [id, name ?? id]));
  return (id) => names.get(id) ?? id;
}
