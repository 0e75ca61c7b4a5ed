import { fileURLToPath } from "node:url";
import { openKeyFile } from "#adapters/seal";
import { type DataPlace, openStore, placeInWords } from "#adapters/store";
import { type Problem, problem, problemSentence } from "#core/words";
import { makeServer } from "./make-server.ts";
import { readStartOptions } from "./read-start-options.ts";
import { VERSION } from "./version.ts";

const web = fileURLToPath(new URL("../web", import.meta.url));
const now = () => new Date().toISOString();
const write = (line: string) => process.stderr.write(`${line}\n`);

await start();

/** The composition root: options, store, server, address. A problem is a sentence and exit 2. */
async function start(): Promise<void> {
  const options = readStartOptions(process.argv.slice(2), process.env, process.cwd());
  if (!options.ok) return stop(options.problems);
  const { port, place, key } = options.value;
  const sealer = openKeyFile(key);
  if (!sealer.ok) return stop(sealer.problems);
  const store = await openStore(place, now);
  if (!store.ok) return stop(store.problems);
  const parts = { store: store.value, sealer: sealer.value, now, web, version: VERSION, log: writeFault };
  const server = await makeServer(parts);
  try {
    await server.listen({ host: "127.0.0.1", port });
  } catch (error) {
    await store.value.close();
    return stop([cannotListen(error, port)]);
  }
  closeOn(["SIGINT", "SIGTERM"], async () => {
    await server.close();
    await store.value.close();
  });
  process.stdout.write(welcome(port, place));
}

function welcome(port: number, place: DataPlace): string {
  return `Hallful is ready at http://127.0.0.1:${port}/
The first page offers the invented demo or an empty practice.
Everything is kept in ${placeInWords(place)}. Stop with Ctrl+C.
`;
}

function closeOn(signals: readonly NodeJS.Signals[], close: () => Promise<void>): void {
  for (const signal of signals) {
    process.once(signal, () => {
      close().then(() => process.exit(0), writeFault);
    });
  }
}

function cannotListen(error: unknown, port: number): Problem {
  const code = error instanceof Error && "code" in error ? error.code : undefined;
  const other = port === 65_535 ? port - 1 : port + 1;
  const next = `Start with another one: npm start -- --port ${other}`;
  if (code === "EADDRINUSE") return problem("port-taken", "--port", `Port ${port} is in use.`, next);
  if (code === "EACCES") return problem("port-refused", "--port", `Port ${port} may not be used here.`, next);
  throw error;
}

function stop(problems: readonly Problem[]): void {
  for (const it of problems) write(problemSentence(it));
  process.exitCode = 2;
}

function writeFault(error: unknown): void {
  write(error instanceof Error ? (error.stack ?? error.message) : String(error));
}
