import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { openSqliteStore } from "#adapters/store";
import { type Problem, problem, problemSentence } from "#core/words";
import { makeServer } from "./make-server.ts";
import { readStartOptions } from "./read-start-options.ts";
import { VERSION } from "./version.ts";

const web = fileURLToPath(new URL("../web", import.meta.url));
const write = (line: string) => process.stderr.write(`${line}\n`);

await start();

/** The composition root: options, store, server, address. A problem is a sentence and exit 2. */
async function start(): Promise<void> {
  const options = readStartOptions(process.argv.slice(2), process.env);
  if (!options.ok) return stop(options.problems);
  const { port, data } = options.value;
  const store = await openSqliteStore({ file: resolve(data), now: () => new Date().toISOString() });
  if (!store.ok) return stop(store.problems);
  const server = await makeServer({ store: store.value, web, version: VERSION, log: writeFault });
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
  process.stdout.write(welcome(port, data));
}

function welcome(port: number, data: string): string {
  return `Hallful is ready at http://127.0.0.1:${port}/
The first page offers the invented demo or an empty practice.
Everything is kept in ${data}. Stop with Ctrl+C.
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
