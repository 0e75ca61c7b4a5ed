import { cornerName } from "#core/hall";
import type { Tape } from "./measuring.ts";

/** "B–C"; the last wall comes back to A once it was said to be the last. */
export function wallNameIn({ walls, done }: Pick<Tape, "walls" | "done">, index: number): string {
  const end = done && index === walls.length - 1 ? 0 : index + 1;
  return `${cornerName(index)}–${cornerName(end)}`;
}
