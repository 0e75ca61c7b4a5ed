import { pdfPapers } from "#adapters/papers";
import type { RecordStore, Sealer, Store } from "#app/ports";
import { turns } from "#app/record";
import swagger from "@fastify/swagger";
import Fastify from "fastify";
import { jsonSchemaTransform, serializerCompiler, type ZodTypeProvider } from "fastify-type-provider-zod";
import { problemsInsteadOfErrors } from "./answer-problems.ts";
import { documentSchemas } from "./document-schemas.ts";
import { contentPolicy } from "./content-policy.ts";
import { guardLoopback } from "./guard-loopback.ts";
import { readRequest } from "./read-request.ts";
import { calendarRoute } from "./routes/calendar.ts";
import { classRoutes } from "./routes/classes.ts";
import { hallRoutes } from "./routes/halls.ts";
import { healthRoute } from "./routes/health.ts";
import { paperRoutes } from "./routes/papers.ts";
import { planRoutes } from "./routes/plans.ts";
import { practiceRoutes } from "./routes/practices.ts";
import { recordRoutes } from "./routes/record.ts";
import type { ServerWithContracts } from "./routes/server-with-contracts.ts";
import { webFiles } from "./static-files.ts";

export type ServerParts = {
  readonly store: Store & { readonly record: RecordStore };
  readonly sealer: Sealer;
  /** ISO 8601 instant, UTC */
  readonly now: () => string;
  /** the folder of the built screens */
  readonly web: string;
  readonly version: string;
  /** where a fault of ours is written down */
  readonly log: (error: unknown) => void;
};

/** The server, put together and not listening yet. */
export async function makeServer(parts: ServerParts): Promise<ServerWithContracts> {
  const server = Fastify().withTypeProvider<ZodTypeProvider>();
  server.setValidatorCompiler(readRequest);
  server.setSerializerCompiler(serializerCompiler);
  server.removeContentTypeParser("text/plain");
  problemsInsteadOfErrors(server, parts.log);
  guardLoopback(server);
  await contentPolicy(server);
  await server.register(swagger, {
    openapi: {
      openapi: "3.1.0",
      info: { title: "Hallful", version: parts.version },
      components: { schemas: documentSchemas() },
    },
    transform: jsonSchemaTransform,
  });
  healthRoute(server, parts.version);
  const recorder = { store: parts.store.record, inTurn: turns(), seal: parts.sealer.seal };
  practiceRoutes(server, parts.store, recorder);
  hallRoutes(server, parts.store);
  classRoutes(server, parts.store);
  planRoutes(server, parts.store);
  calendarRoute(server, parts.store, parts.now);
  recordRoutes(server, { recorder: { ...recorder, now: parts.now }, sealer: parts.sealer });
  paperRoutes(server, parts.store, pdfPapers());
  server.get("/api/openapi.json", { schema: { hide: true } }, () => server.swagger());
  await webFiles(server, parts.web);
  return server;
}
