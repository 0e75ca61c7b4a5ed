import { readdirSync, readFileSync } from "node:fs";
import { type Hall, readHall } from "#core/hall";

export type BenchHall = { readonly file: string; readonly hall: Hall };

/** The invented halls of bench/halls in the order of their names; throws on one that is not a sound hall. */
export function benchHalls(folder = "bench/halls"): readonly BenchHall[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith(".json"))
    .sort()
    .map((file) => ({ file: file.slice(0, -5), hall: soundHall(`${folder}/${file}`) }));
}

function soundHall(path: string): Hall {
  const read = readHall(JSON.parse(readFileSync(path, "utf8")));
  if (!read.ok) throw new Error(`${path}: ${JSON.stringify(read.problems)}`);
  return read.value;
}
