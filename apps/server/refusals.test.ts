import { problemsContract } from "#app/ports";
import { problem } from "#core/words";
import { describe, expect, it } from "vitest";
import { statusOf } from "./answer-problems.ts";
import { codesOf, trialDemo, trialServer, trialStore } from "./trial-server.ts";

describe("a request that cannot be used is told as problems:", () => {
  const url = "/api/practices/oriel/halls/loft";

  it("without what it needs", async () => {
    const { put } = await trialDemo();
    const refused = await put(url, { from: -1 });
    expect(refused.statusCode).toBe(422);
    expect(problemsContract.parse(refused.json()).problems.map((it) => [it.code, it.place])).toEqual([
      ["document-missing", "action"],
      ["document-unreadable", "from"],
      ["document-missing", "document"],
    ]);
  });

  it.each([
    ["JSON cut off", '{"action": "act', 400, "request-unreadable"],
    ["nothing", "", 400, "request-unreadable"],
    ["a key that reaches for the prototype", '{"__proto__": {"from": 0}}', 400, "request-unreadable"],
    ["over a million letters", `{"action": "${"a".repeat(1_100_000)}"}`, 413, "request-too-large"],
    [
      "ten thousand brackets",
      `{"document":${"[".repeat(10_000)}${"]".repeat(10_000)}}`,
      422,
      "document-missing",
    ],
  ])("%s", async (_name, payload, status, code) => {
    const { app } = await trialDemo();
    const headers = { "content-type": "application/json" };
    const answer = await app.inject({ method: "PUT", url, headers, payload });
    expect([answer.statusCode, codesOf(answer)[0]]).toEqual([status, code]);
  });

  it("plain text, which any page may send without asking", async () => {
    const { app } = await trialDemo();
    const payload = '{"action":"action-0002","from":0,"document":{}}';
    const answer = await app.inject({
      method: "PUT",
      url,
      headers: { "content-type": "text/plain" },
      payload,
    });
    expect([answer.statusCode, codesOf(answer)]).toEqual([415, ["request-not-json"]]);
  });

  it("to where there is nothing", async () => {
    const { get, post } = await trialDemo();
    const missing = await get("/api/pigeons", { accept: "text/html" });
    expect([missing.statusCode, codesOf(missing)]).toEqual([404, ["no-such-route"]]);
    expect((await post("/halls", {})).statusCode).toBe(404);
  });

  it("a fault of ours is written down and told without its insides", async () => {
    const faults: unknown[] = [];
    const broken = {
      ...(await trialStore()),
      practices: () => Promise.reject(new Error("inside the store")),
    };
    const { get } = await trialServer({ store: broken, log: (fault) => faults.push(fault) });
    const answer = await get("/api/practices");
    expect([answer.statusCode, codesOf(answer)]).toEqual([500, ["unexpected"]]);
    expect(answer.body).not.toContain("inside");
    expect(faults).toHaveLength(1);
  });

  it("each problem of the store has a status of its own kind", () => {
    expect(status("not-found")).toBe(404);
    expect(status("changed-elsewhere")).toBe(409);
    expect(status("disk-full")).toBe(507);
    expect(status("store-busy")).toBe(423);
    expect(status("mix-not-one")).toBe(422);
  });
});

describe("only this machine's own pages may ask", () => {
  it.each(["evil.example", "127.0.0.1.evil.example", "localhost.evil.example:4610", "192.168.1.7:4610"])(
    "not under the name %j",
    async (host) => {
      const { app } = await trialDemo();
      const answer = await app.inject({ method: "GET", url: "/api/practices", headers: { host } });
      expect([answer.statusCode, codesOf(answer)]).toEqual([403, ["foreign-host"]]);
    },
  );

  it.each(["localhost:4610", "127.0.0.1:4610", "[::1]:4610", "LOCALHOST"])(
    "under the name %j",
    async (host) => {
      const { app } = await trialDemo();
      const headers = { host, origin: `http://${host}`, "sec-fetch-site": "same-origin" };
      const payload = { action: "action-0009", id: "new", start: "empty" };
      expect((await app.inject({ method: "POST", url: "/api/practices", headers, payload })).statusCode).toBe(
        200,
      );
    },
  );

  it.each([
    { origin: "http://evil.example" },
    { origin: "null" },
    { origin: "http://localhost:9999" },
    { "sec-fetch-site": "cross-site" },
    { "sec-fetch-site": "same-site" },
  ])("and change nothing for a page with %j", async (headers) => {
    const { app, get } = await trialDemo();
    const payload = { action: "action-0009", id: "new", start: "empty" };
    const host = "localhost:4610";
    const answer = await app.inject({
      method: "POST",
      url: "/api/practices",
      headers: { host, ...headers },
      payload,
    });
    expect([answer.statusCode, codesOf(answer)]).toEqual([403, ["foreign-page"]]);
    expect((await get("/api/practices/new")).statusCode).toBe(404);
  });
});

function status(code: string): number {
  return statusOf([problem(code, "", "", "")]);
}
