import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { temporaryFolder } from "#testing";
import { describe, expect, it } from "vitest";
import { trialServer } from "./trial-server.ts";

describe("the screens", () => {
  it("come with a policy that lets nothing in from outside and no script in the page", async () => {
    const { get } = await trialServer({ web: webFolder() });
    const page = await get("/", { accept: "text/html" });
    const policy = String(page.headers["content-security-policy"]);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
    // the solver is wasm; nothing else that is called unsafe is allowed
    expect(policy.replace("'wasm-unsafe-eval'", "")).not.toMatch(/unsafe|\*|https?:/);
    // a photographed plan is shown from the page's own memory, and nothing may be sent but to this server
    expect(policy).toContain("img-src 'self' data: blob:");
    expect(policy).toContain("connect-src 'self'");
    expect(page.headers["x-content-type-options"]).toBe("nosniff");
    expect(page.headers["strict-transport-security"]).toBeUndefined();
  });

  it("are asked for anew each time, but files with a digest in their names never again", async () => {
    const { get } = await trialServer({ web: webFolder() });
    expect((await get("/")).headers["cache-control"]).toBe("no-cache");
    expect((await get("/offline.js")).headers["cache-control"]).toBe("no-cache");
    const script = await get("/assets/main-1a2b3c.js");
    expect(script.headers["cache-control"]).toBe("public, max-age=31536000, immutable");
    expect(script.headers["content-type"]).toContain("javascript");
  });

  it("answer every place within them with the one page, and a missing file with 404", async () => {
    const { get } = await trialServer({ web: webFolder() });
    const place = await get("/oriel/classes/tuesday", { accept: "text/html,*/*" });
    expect([place.statusCode, place.body, place.headers["cache-control"]]).toEqual([
      200,
      "<p>Hallful",
      "no-cache",
    ]);
    expect((await get("/assets/gone-9z.js", { accept: "*/*" })).statusCode).toBe(404);
  });

  it.each(["/../secret.txt", "/..%2fsecret.txt", "/assets/..%2f..%2fsecret.txt", "/.%2e/secret.txt"])(
    "do not lead out of their folder by %s",
    async (url) => {
      const web = webFolder();
      writeFileSync(join(web, "..", "secret.txt"), "secret");
      const { get } = await trialServer({ web });
      const answer = await get(url);
      expect(answer.statusCode).toBeGreaterThanOrEqual(400);
      expect(answer.body).not.toBe("secret");
    },
  );

  it("say how to build them when they are not there", async () => {
    const { get } = await trialServer();
    const page = await get("/", { accept: "text/html" });
    expect([page.statusCode, page.body]).toEqual([503, expect.stringContaining("npm run build")]);
  });
});

describe("the description of the server", () => {
  it("tells of every route, and each of its references leads somewhere", async () => {
    const { get } = await trialServer();
    const answer = await get("/api/openapi.json");
    const description = answer.json();
    expect(description.openapi).toBe("3.1.0");
    expect(Object.keys(description.paths).sort()).toEqual([
      "/api/health",
      "/api/practices",
      "/api/practices/{practice}",
      "/api/practices/{practice}/classes/{id}",
      "/api/practices/{practice}/classes/{id}/happened",
      "/api/practices/{practice}/halls/{id}",
      "/api/practices/{practice}/halls/{id}/hall-sheet.pdf",
      "/api/practices/{practice}/plans/{id}",
      "/api/practices/{practice}/record",
      "/api/practices/{practice}/record/accidents",
      "/api/practices/{practice}/record/balances",
      "/api/practices/{practice}/record/evenings",
      "/api/practices/{practice}/record/passes",
      "/api/practices/{practice}/record/people",
      "/api/practices/{practice}/record/people/seen",
      "/api/practices/{practice}/record/people/{person}/export",
      "/api/practices/{practice}/record/people/{person}/note",
      "/api/practices/{practice}/record/postings",
      "/calendar/{file}",
    ]);
    const references = [...answer.body.matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g)].map(
      (it) => it[1],
    );
    expect(new Set(references)).toEqual(new Set(["Class", "Hall", "Happened", "Practice"]));
    expect(Object.keys(description.components.schemas).sort()).toEqual([
      "Class",
      "Hall",
      "Happened",
      "Practice",
    ]);
    expect(description.components.schemas.Hall.properties.outline.type).toBe("array");
  });

  it("is ready with its version", async () => {
    const { get } = await trialServer();
    expect((await get("/api/health")).json()).toEqual({ status: "ready", version: "1.2.3" });
  });
});

function webFolder(): string {
  const web = join(temporaryFolder(), "web");
  mkdirSync(join(web, "assets"), { recursive: true });
  writeFileSync(join(web, "index.html"), "<p>Hallful");
  writeFileSync(join(web, "offline.js"), "0");
  writeFileSync(join(web, "assets", "main-1a2b3c.js"), "0");
  return web;
}
