/** Keys and positions from the top of a document: ["outline", 3, 0] is written "outline[3][0]". */
export type DocumentPath = readonly PropertyKey[];

/** The path as the `place` of a problem; "" for the whole document. */
export function placeOf(path: DocumentPath): string {
  return path.reduce<string>((place, step) => {
    if (typeof step === "number") return `${place}[${step}]`;
    return place === "" ? String(step) : `${place}.${String(step)}`;
  }, "");
}

/** What stands at the path; undefined where nothing does. */
export function valueAt(document: unknown, path: DocumentPath): unknown {
  let found = document;
  for (const step of path) {
    if (typeof found !== "object" || found === null) return undefined;
    found = Object.hasOwn(found, step) ? Reflect.get(found, step) : undefined;
  }
  return found;
}
