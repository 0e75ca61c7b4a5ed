import helmet from "@fastify/helmet";
import type { FastifyInstance } from "fastify";

/**
 * What a page of ours may load: its own scripts, workers and styles, and nothing from anywhere else. The solver is
 * compiled wasm, which a browser runs only where "wasm-unsafe-eval" allows it; text as script stays forbidden.
 * No "upgrade-insecure-requests" and no HSTS, because on loopback there is only http.
 */
export async function contentPolicy(server: FastifyInstance): Promise<void> {
  await server.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
        workerSrc: ["'self'"],
        styleSrc: ["'self'"],
        imgSrc: ["'self'", "data:", "blob:"],
        fontSrc: ["'self'"],
        connectSrc: ["'self'"],
        manifestSrc: ["'self'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
      },
    },
    strictTransportSecurity: false,
    referrerPolicy: { policy: "no-referrer" },
  });
}
