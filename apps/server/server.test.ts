import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { openSqliteStore } from "#adapters/store";
import { practiceWholeContract, problemsContract, type Store } from "#app/ports";
import { problem } from "#core/words";
import { marlsford } from "#demo";
import { temporaryFolder } from "#testing";
import { describe, expect, it, onTestFinished } from "vitest";
import { statusOf } from "./answer-problems.ts";
import { makeServer } from "./make-server.ts";

const barn = marlsford.halls[0]?.document;
const tuesday = marlsford.classes[0]?.document;

describe("the practices", () => {
  it("are none to begin with, and one after the demo was opened", async () => {
    const { get, post } = await server();
    expect((await get("/api/practices")).json()).toEqual({ practices: [] });
    const opened = await post("/api/practices", {
      action: "action-0001",
      id: "oriel",
      start: "demo-marlsford",
    });
    expect(opened.statusCode).toBe(200);
    const whole = practiceWholeContract.parse(opened.json());
    expect(whole.halls.map((it) => it.id).sort()).toEqual(marlsford.halls.map((it) => it.id).sort());
    expect(whole.classes).toHaveLength(4);
    expect((await get("/api/practices/oriel")).json()).toEqual(opened.json());
    expect((await get("/api/practices")).json()).toEqual({
      practices: [{ id: "oriel", version: 1, document: marlsford.practice }],
    });
  });

  it("may start empty, with the name, currency and zone that she gives", async () => {
    const { post } = await server();
    const document = { ...marlsford.practice, name: "Wren Abbot", currency: "EUR", zone: "Europe/Dublin" };
    const opened = await post("/api/practices", {
      action: "action-0001",
      id: "wren",
      start: "empty",
      document,
    });
    expect(opened.json()).toEqual({
      practice: { id: "wren", version: 1, document },
      halls: [],
      classes: [],
    });
  });

  it("are opened once, however often the same action comes", async () => {
    const { post } = await server();
    const ask = { action: "action-0001", id: "oriel", start: "demo-marlsford" };
    const first = await post("/api/practices", ask);
    const second = await post("/api/practices", ask);
    expect(second.json()).toEqual(first.json());
    const other = await post("/api/practices", { ...ask, action: "action-0002" });
    expect([other.statusCode, codes(other)]).toEqual([409, ["changed-elsewhere"]]);
  });

  it("keep no currency or zone that does not exist", async () => {
    const { post } = await server();
    const document = { ...marlsford.practice, name: " ", currency: "GBX", zone: "Europe/Marlsford" };
    const refused = await post("/api/practices", {
      action: "action-0001",
      id: "wren",
      start: "empty",
      document,
    });
    expect(refused.statusCode).toBe(422);
    expect(codes(refused)).toEqual(["name-missing", "currency-unknown", "zone-unknown"]);
  });

  it("are changed from the version that was seen", async () => {
    const { put } = await demo();
    const document = { ...marlsford.practice, name: "Oriel T." };
    const saved = await put("/api/practices/oriel", { action: "action-0002", from: 1, document });
    expect(saved.json()).toEqual({ id: "oriel", version: 2, document, unused: [] });
    const late = await put("/api/practices/oriel", { action: "action-0003", from: 1, document });
    expect([late.statusCode, codes(late)]).toEqual([409, ["changed-elsewhere"]]);
  });
});

describe("a hall and a class", () => {
  it("are saved, read back and saved again", async () => {
    const { put, get } = await demo();
    const url = "/api/practices/oriel/halls/loft";
    const saved = await put(url, { action: "action-0002", from: 0, document: { ...barn, name: "Loft" } });
    expect(saved.json()).toEqual({ id: "loft", version: 1, document: { ...barn, name: "Loft" }, unused: [] });
    const again = await put(url, { action: "action-0003", from: 1, document: { ...barn, name: "The Loft" } });
    expect(again.json()).toMatchObject({ version: 2 });
    const whole = practiceWholeContract.parse((await get("/api/practices/oriel")).json());
    expect(whole.halls.find((it) => it.id === "loft")?.document.name).toBe("The Loft");
    const sheet = "/api/practices/oriel/classes/tuesday";
    const kept = await put(sheet, { action: "action-0004", from: 0, document: { ...tuesday, heads: 9.5 } });
    expect(kept.json()).toMatchObject({ id: "tuesday", version: 1, document: { heads: 9.5 } });
  });

  it("tell of keys that nothing reads", async () => {
    const { put } = await demo();
    const document = { ...barn, gapps: { side: 1 } };
    const saved = await put("/api/practices/oriel/halls/loft", { action: "action-0002", from: 0, document });
    expect(saved.json()).toMatchObject({ unused: ["gapps"] });
  });

  it("are not kept when they are not sound, and every problem is told", async () => {
    const { put, get } = await demo();
    const gaps = { side: -1, end: 0.3, wall: 0.3 };
    const document = { ...barn, name: "", gaps, hire: { perHour: "14.00", perSession: "30.00" } };
    const refused = await put("/api/practices/oriel/halls/loft", {
      action: "action-0002",
      from: 0,
      document,
    });
    expect(refused.statusCode).toBe(422);
    expect(codes(refused)).toEqual(["hall-name-empty", "gap-negative", "hire-price-both"]);
    const mix = { single: 0.5 };
    const sheet = await put("/api/practices/oriel/classes/tuesday", {
      action: "action-0003",
      from: 0,
      document: { ...tuesday, mix },
    });
    expect([sheet.statusCode, codes(sheet)]).toEqual([422, ["mix-not-one"]]);
    const whole = practiceWholeContract.parse((await get("/api/practices/oriel")).json());
    expect([whole.halls.length, whole.classes.length]).toEqual([3, 4]);
  });

  it("are in the money of the practice, which yen without decimals shows", async () => {
    const { post, put } = await server();
    const document = { ...marlsford.practice, currency: "JPY", zone: "Asia/Tokyo" };
    await post("/api/practices", { action: "action-0001", id: "wren", start: "empty", document });
    const { currency, ...rest } = { ...barn };
    const hall = { ...rest, hire: { perHour: "14.50" } };
    const refused = await put("/api/practices/wren/halls/barn", {
      action: "action-0002",
      from: 0,
      document: hall,
    });
    expect(codes(refused)).toEqual(["money-too-fine"]);
    const own = await put("/api/practices/wren/halls/barn", {
      action: "action-0003",
      from: 0,
      document: { ...hall, currency },
    });
    expect(own.statusCode).toBe(200);
  });

  it("are removed, but not a hall that a class uses", async () => {
    const { del, get } = await demo();
    const hall = "/api/practices/oriel/halls/tithe-barn-hall";
    const used = await del(hall, { action: "action-0002", from: 1 });
    expect([used.statusCode, codes(used)]).toEqual([409, ["hall-in-use"]]);
    expect(
      (await del("/api/practices/oriel/classes/tuesday-evening", { action: "action-0003", from: 1 })).json(),
    ).toEqual({ removed: "tuesday-evening" });
    expect((await del(hall, { action: "action-0004", from: 1 })).json()).toEqual({
      removed: "tithe-barn-hall",
    });
    expect((await del(hall, { action: "action-0004", from: 1 })).json()).toEqual({
      removed: "tithe-barn-hall",
    });
    const gone = await del(hall, { action: "action-0005", from: 1 });
    expect([gone.statusCode, codes(gone)]).toEqual([404, ["not-found"]]);
    const whole = practiceWholeContract.parse((await get("/api/practices/oriel")).json());
    expect([whole.halls.length, whole.classes.length]).toEqual([2, 3]);
  });

  it("of a practice that is not there are told as not found", async () => {
    const { get, put } = await server();
    expect((await get("/api/practices/nobody")).statusCode).toBe(404);
    const saved = await put("/api/practices/nobody/halls/loft", {
      action: "action-0001",
      from: 0,
      document: barn,
    });
    expect([saved.statusCode, codes(saved)]).toEqual([404, ["not-found"]]);
  });

  it("need ids that can stand in an address", async () => {
    const { put } = await demo();
    const saved = await put("/api/practices/oriel/halls/The%20Loft", {
      action: "a",
      from: 0,
      document: barn,
    });
    expect([saved.statusCode, codes(saved)]).toEqual([422, ["action-unreadable", "id-unreadable"]]);
  });
});

describe("a request that cannot be used is told as problems:", () => {
  const url = "/api/practices/oriel/halls/loft";

  it("without what it needs", async () => {
    const { put } = await demo();
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
    const { app } = await demo();
    const headers = { "content-type": "application/json" };
    const answer = await app.inject({ method: "PUT", url, headers, payload });
    expect([answer.statusCode, codes(answer)[0]]).toEqual([status, code]);
  });

  it("plain text, which any page may send without asking", async () => {
    const { app } = await demo();
    const payload = '{"action":"action-0002","from":0,"document":{}}';
    const answer = await app.inject({
      method: "PUT",
      url,
      headers: { "content-type": "text/plain" },
      payload,
    });
    expect([answer.statusCode, codes(answer)]).toEqual([415, ["request-not-json"]]);
  });

  it("to where there is nothing", async () => {
    const { get, post } = await demo();
    const missing = await get("/api/pigeons", { accept: "text/html" });
    expect([missing.statusCode, codes(missing)]).toEqual([404, ["no-such-route"]]);
    expect((await post("/halls", {})).statusCode).toBe(404);
  });

  it("a fault of ours is written down and told without its insides", async () => {
    const faults: unknown[] = [];
    const broken: Store = {
      ...(await openedStore()),
      practices: () => Promise.reject(new Error("inside /home/oriel")),
    };
    const { get } = await server({ store: broken, log: (fault) => faults.push(fault) });
    const answer = await get("/api/practices");
    expect([answer.statusCode, codes(answer)]).toEqual([500, ["unexpected"]]);
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
      const { app } = await demo();
      const answer = await app.inject({ method: "GET", url: "/api/practices", headers: { host } });
      expect([answer.statusCode, codes(answer)]).toEqual([403, ["foreign-host"]]);
    },
  );

  it.each(["localhost:4610", "127.0.0.1:4610", "[::1]:4610", "LOCALHOST"])(
    "under the name %j",
    async (host) => {
      const { app } = await demo();
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
    const { app, get } = await demo();
    const payload = { action: "action-0009", id: "new", start: "empty" };
    const host = "localhost:4610";
    const answer = await app.inject({
      method: "POST",
      url: "/api/practices",
      headers: { host, ...headers },
      payload,
    });
    expect([answer.statusCode, codes(answer)]).toEqual([403, ["foreign-page"]]);
    expect((await get("/api/practices/new")).statusCode).toBe(404);
  });
});

describe("the screens", () => {
  it("come with a policy that lets nothing in from outside and no script in the page", async () => {
    const { get } = await server({ web: webFolder() });
    const page = await get("/", { accept: "text/html" });
    const policy = String(page.headers["content-security-policy"]);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    expect(page.headers["x-content-type-options"]).toBe("nosniff");
    expect(page.headers["strict-transport-security"]).toBeUndefined();
  });

  it("are asked for anew each time, but files with a digest in their names never again", async () => {
    const { get } = await server({ web: webFolder() });
    expect((await get("/")).headers["cache-control"]).toBe("no-cache");
    expect((await get("/offline.js")).headers["cache-control"]).toBe("no-cache");
    const script = await get("/assets/main-1a2b3c.js");
    expect(script.headers["cache-control"]).toBe("public, max-age=31536000, immutable");
    expect(script.headers["content-type"]).toContain("javascript");
  });

  it("answer every place within them with the one page, and a missing file with 404", async () => {
    const { get } = await server({ web: webFolder() });
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
      const { get } = await server({ web });
      const answer = await get(url);
      expect(answer.statusCode).toBeGreaterThanOrEqual(400);
      expect(answer.body).not.toBe("secret");
    },
  );

  it("say how to build them when they are not there", async () => {
    const { get } = await server();
    const page = await get("/", { accept: "text/html" });
    expect([page.statusCode, page.body]).toEqual([503, expect.stringContaining("npm run build")]);
  });
});

describe("the description of the server", () => {
  it("tells of every route, and each of its references leads somewhere", async () => {
    const { get } = await server();
    const answer = await get("/api/openapi.json");
    const description = answer.json();
    expect(description.openapi).toBe("3.1.0");
    expect(Object.keys(description.paths).sort()).toEqual([
      "/api/health",
      "/api/practices",
      "/api/practices/{practice}",
      "/api/practices/{practice}/classes/{id}",
      "/api/practices/{practice}/halls/{id}",
    ]);
    const references = [...answer.body.matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g)].map(
      (it) => it[1],
    );
    expect(new Set(references)).toEqual(new Set(["Class", "Hall", "Practice"]));
    expect(Object.keys(description.components.schemas).sort()).toEqual(["Class", "Hall", "Practice"]);
    expect(description.components.schemas.Hall.properties.outline.type).toBe("array");
  });

  it("is ready with its version", async () => {
    const { get } = await server();
    expect((await get("/api/health")).json()).toEqual({ status: "ready", version: "1.2.3" });
  });
});

function status(code: string): number {
  return statusOf([problem(code, "", "", "")]);
}

type Parts = Partial<Parameters<typeof makeServer>[0]>;

async function server(parts: Parts = {}) {
  const store = parts.store ?? (await openedStore());
  const web = join(temporaryFolder(), "nothing-built");
  const app = await makeServer({
    store,
    web,
    version: "1.2.3",
    log: (fault) => expect.fail(String(fault)),
    ...parts,
  });
  onTestFinished(() => app.close());
  return {
    app,
    get: (url: string, headers: Record<string, string> = {}) => app.inject({ method: "GET", url, headers }),
    post: (url: string, payload: object) => app.inject({ method: "POST", url, payload }),
    put: (url: string, payload: object) => app.inject({ method: "PUT", url, payload }),
    del: (url: string, payload: object) => app.inject({ method: "DELETE", url, payload }),
  };
}

async function demo() {
  const made = await server();
  await made.post("/api/practices", { action: "action-0001", id: "oriel", start: "demo-marlsford" });
  return made;
}

async function openedStore(): Promise<Store> {
  const file = join(temporaryFolder(), "practice.sqlite");
  const store = await openSqliteStore({ file, now: () => "2026-11-25T09:45:00.000Z" });
  if (!store.ok) throw new Error(JSON.stringify(store.problems));
  onTestFinished(() => store.value.close());
  return store.value;
}

function webFolder(): string {
  const web = join(temporaryFolder(), "web");
  mkdirSync(join(web, "assets"), { recursive: true });
  writeFileSync(join(web, "index.html"), "<p>Hallful");
  writeFileSync(join(web, "offline.js"), "0");
  writeFileSync(join(web, "assets", "main-1a2b3c.js"), "0");
  return web;
}

function codes(answer: { json: () => unknown }): readonly string[] {
  return problemsContract.parse(answer.json()).problems.map((it) => it.code);
}
