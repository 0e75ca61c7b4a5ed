/** A hall or a class before it has a name. */
export function nameOr(name: string, otherwise: string): string {
  return name.trim() === "" ? otherwise : name;
}
