import { readdirSync, readFileSync } from "node:fs";

export type BenchHallDocument = { readonly file: string; readonly document: unknown };

/** The documents of bench/halls as they are written, in the order of their names. */
export function benchHallDocuments(folder = "bench/halls"): readonly BenchHallDocument[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith(".json"))
    .sort()
    .map((file) => ({
      file: file.slice(0, -5),
      document: JSON.parse(readFileSync(`${folder}/${file}`, "utf8")) as unknown,
    }));
}
