import { type Problem, problem } from "#core/words";
import type { FastifyInstance, FastifyRequest } from "fastify";
import { answerProblems } from "./answer-problems.ts";

const LOOPBACK = new Set(["localhost", "127.0.0.1", "[::1]"]);
const READING = new Set(["GET", "HEAD"]);

/**
 * Only pages that this server gave out may use it. A page of another site can make her browser send
 * requests here, under its own name (Origin) or, after turning its name towards this machine, with its
 * name as Host; both are refused.
 */
export function guardLoopback(server: FastifyInstance): void {
  server.addHook("onRequest", async (request, reply) => {
    const refused = refusal(request);
    if (refused !== undefined) return answerProblems(reply, [refused]);
    return undefined;
  });
}

function refusal(request: FastifyRequest): Problem | undefined {
  const host = request.headers.host ?? "";
  if (!isLoopback(host)) {
    const says = "This Hallful answers only under this machine’s own name.";
    return problem("foreign-host", "Host", says, "Open it by the address that it printed when it started.");
  }
  if (READING.has(request.method)) return undefined;
  const origin = request.headers.origin;
  const site = request.headers["sec-fetch-site"];
  const foreignOrigin = origin !== undefined && origin !== `http://${host}`;
  const foreignSite = site !== undefined && site !== "same-origin" && site !== "none";
  if (!foreignOrigin && !foreignSite) return undefined;
  const says = "A page of another site asked Hallful to change something.";
  return problem("foreign-page", "Origin", says, "Nothing was changed. Close that page.");
}

/** "127.0.0.1:4610" and "localhost" are; "127.0.0.1.example" is not. */
function isLoopback(host: string): boolean {
  return LOOPBACK.has(host.replace(/:\d{1,5}$/, "").toLowerCase());
}
