import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { type DataPlace, dataPlace } from "#adapters/store";
import { bad, good, type Problem, problem, type Result } from "#core/words";

export type StartOptions = {
  readonly port: number;
  readonly place: DataPlace;
  /** the file with the key that notes about health are sealed under; beside the data unless told */
  readonly key: string;
};

const DEFAULT_PORT = 4610;

type Environment = Readonly<Record<string, string | undefined>>;

/** Options come before the environment. Problems: "option-unknown", "port-unreadable", "data-unclear". */
export function readStartOptions(
  words: readonly string[],
  environment: Environment,
  folder: string,
): Result<StartOptions> {
  const given = parsed(words);
  if (!given.ok) return given;
  const port = readPort(given.value.port ?? environment["HALLFUL_PORT"] ?? String(DEFAULT_PORT));
  if (!port.ok) return port;
  const place = dataPlace(given.value.data, environment, folder);
  if (!place.ok) return place;
  const key = given.value.key ?? environment["HALLFUL_KEY"] ?? keyBeside(place.value);
  return good({ port: port.value, place: place.value, key: resolve(folder, key) });
}

/** The key lies beside the data file and is in no backup of it; a database elsewhere leaves it in the folder. */
function keyBeside(place: DataPlace): string {
  return place.kind === "file" ? `${place.file}.key` : "data/hallful.key";
}

type Given = {
  readonly port?: string | undefined;
  readonly data?: string | undefined;
  readonly key?: string | undefined;
};

function parsed(words: readonly string[]): Result<Given> {
  try {
    const options = { port: { type: "string" }, data: { type: "string" }, key: { type: "string" } } as const;
    return good(parseArgs({ args: [...words], options }).values);
  } catch (error) {
    return bad(unknownOption(error instanceof Error ? error.message : ""));
  }
}

function unknownOption(message: string): Problem {
  const says = message.split(". ")[0] ?? message;
  return problem(
    "option-unknown",
    "",
    `${says}.`,
    "Starting takes --port NUMBER, --data FILE and --key FILE.",
  );
}

function readPort(text: string): Result<number> {
  const port = Number(text);
  if (/^\d{1,5}$/.test(text) && port >= 1 && port <= 65_535) return good(port);
  const next = "Give a number from 1024 to 65535, like --port 4611.";
  return bad(problem("port-unreadable", "--port", `“${text.slice(0, 40)}” is not a port.`, next));
}
