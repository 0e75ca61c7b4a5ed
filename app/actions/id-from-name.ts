const LONGEST = 64;

/** “St Brannoc’s church hall” is kept as st-brannocs-church-hall; a name with no such letters as `otherwise`. */
export function idFromName(document: unknown, otherwise: string): string {
  const named = typeof document === "object" && document !== null && "name" in document;
  const name = named && typeof document.name === "string" ? document.name : "";
  const id = name
    .normalize("NFKD")
    .toLowerCase()
    .replaceAll(/[\u0300-\u036f’']/g, "")
    .replaceAll(/[^a-z0-9]+/g, "-")
    .slice(0, LONGEST)
    .replaceAll(/^-+|-+$/g, "");
  return id === "" ? otherwise : id;
}
