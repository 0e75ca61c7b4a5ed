import { parseArgs } from "node:util";
import { dataFileName } from "#adapters/store";
import { bad, good, type Problem, problem, type Result } from "#core/words";

export type StartOptions = { readonly port: number; readonly data: string };

const DEFAULT_PORT = 4610;

type Environment = Readonly<Record<string, string | undefined>>;

/** Options come before the environment. Problems: "option-unknown", "port-unreadable". */
export function readStartOptions(words: readonly string[], environment: Environment): Result<StartOptions> {
  const given = parsed(words);
  if (!given.ok) return given;
  const port = readPort(given.value.port ?? environment["HALLFUL_PORT"] ?? String(DEFAULT_PORT));
  if (!port.ok) return port;
  return good({ port: port.value, data: dataFileName(given.value.data, environment) });
}

type Given = { readonly port?: string | undefined; readonly data?: string | undefined };

function parsed(words: readonly string[]): Result<Given> {
  try {
    const options = { port: { type: "string" }, data: { type: "string" } } as const;
    return good(parseArgs({ args: [...words], options }).values);
  } catch (error) {
    return bad(unknownOption(error instanceof Error ? error.message : ""));
  }
}

function unknownOption(message: string): Problem {
  const says = message.split(". ")[0] ?? message;
  return problem("option-unknown", "", `${says}.`, "Starting takes --port NUMBER and --data FILE.");
}

function readPort(text: string): Result<number> {
  const port = Number(text);
  if (/^\d{1,5}$/.test(text) && port >= 1 && port <= 65_535) return good(port);
  const next = "Give a number from 1024 to 65535, like --port 4611.";
  return bad(problem("port-unreadable", "--port", `“${text.slice(0, 40)}” is not a port.`, next));
}
