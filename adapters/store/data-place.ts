import { resolve } from "node:path";
import { bad, good, problem, type Result } from "#core/words";
import { addressInWords } from "./postgres/address-in-words.ts";

/** Where everything is kept: one file on this computer, or a PostgreSQL database. */
export type DataPlace =
  | { readonly kind: "file"; readonly file: string }
  | { readonly kind: "database"; readonly url: string };

/** Where a practice is kept unless somebody says otherwise: a folder that git does not look at. */
const USUAL = "data/hallful.sqlite";

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * The option comes before the environment, and that before the usual place; names of files are relative to the
 * folder. An environment that names two places is not guessed about. Problem: "data-unclear".
 */
export function dataPlace(
  option: string | undefined,
  environment: Environment,
  folder: string,
): Result<DataPlace> {
  const { HALLFUL_DATA: named, DATABASE_URL: url } = environment;
  if (option !== undefined) return good({ kind: "file", file: resolve(folder, option) });
  if (named !== undefined && url !== undefined) return bad(unclear());
  if (url !== undefined) return good({ kind: "database", url });
  return good({ kind: "file", file: resolve(folder, named ?? USUAL) });
}

/** As it may be told: a database without its user and password. */
export function placeInWords(place: DataPlace): string {
  if (place.kind === "file") return place.file;
  const words = addressInWords(place.url);
  return words.ok ? words.value : "a database";
}

function unclear() {
  const says = "HALLFUL_DATA names a data file and DATABASE_URL a database.";
  const next = "Take one of them out of the environment, or name the file with --data.";
  return problem("data-unclear", "environment", says, next);
}
