import { existsSync } from "node:fs";
import { join, sep } from "node:path";
import { problem } from "#core/words";
import staticFiles from "@fastify/static";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { answerProblems } from "./answer-problems.ts";

const YEAR_SECONDS = 365 * 24 * 60 * 60;

/**
 * The screens. Files under assets carry a digest in their names and never change; everything else is asked
 * for anew each time. A path that is no file and not under /api is a place within the screens.
 */
export async function webFiles(server: FastifyInstance, folder: string): Promise<void> {
  const built = existsSync(join(folder, "index.html"));
  if (built) {
    await server.register(staticFiles, {
      root: folder,
      cacheControl: false,
      setHeaders: (reply, path) => {
        reply.setHeader("cache-control", cacheRule(path));
      },
    });
  }
  server.setNotFoundHandler((request, reply) => {
    if (!asksForPlace(request)) return answerProblems(reply, [noSuchRoute(request)]);
    return built ? reply.sendFile("index.html") : notBuilt(reply);
  });
}

function cacheRule(path: string): string {
  const lasting = path.includes(`${sep}assets${sep}`);
  return lasting ? `public, max-age=${YEAR_SECONDS}, immutable` : "no-cache";
}

function asksForPlace(request: FastifyRequest): boolean {
  const path = request.url.split("?")[0] ?? "";
  if (request.method !== "GET" || path.startsWith("/api")) return false;
  return (request.headers.accept ?? "").includes("text/html");
}

function noSuchRoute(request: FastifyRequest) {
  const says = `There is nothing to ${request.method} at ${request.url.slice(0, 200)}.`;
  return problem("no-such-route", "", says, "See /api/openapi.json for what there is.");
}

function notBuilt(reply: FastifyReply) {
  return reply
    .code(503)
    .type("text/plain; charset=utf-8")
    .send("The screens are not built yet. Stop Hallful, run npm run build, and start it again.\n");
}
