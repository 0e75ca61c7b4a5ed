import { healthContract } from "#app/ports";
import type { ServerWithContracts } from "./server-with-contracts.ts";

export function healthRoute(server: ServerWithContracts, version: string): void {
  server.get(
    "/api/health",
    { schema: { summary: "Whether Hallful is ready", response: { 200: healthContract } } },
    () => ({ status: "ready" as const, version }),
  );
}
