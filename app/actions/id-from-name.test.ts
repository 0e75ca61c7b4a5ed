import { assert, property, string } from "fast-check";
import { describe, expect, it } from "vitest";
import { idFromName } from "./id-from-name.ts";
import { readIds } from "./read-ids.ts";

describe("the id made from a name", () => {
  it.each([
    ["Tithe Barn Hall", "tithe-barn-hall"],
    ["St Brannoc’s church hall", "st-brannocs-church-hall"],
    ["  Über den Dächern, 2. Stock ", "uber-den-dachern-2-stock"],
    ["ゆか", "hall"],
    ["", "hall"],
  ])("%j is kept as %s", (name, id) => {
    expect(idFromName({ name }, "hall")).toBe(id);
  });

  it.each([undefined, null, 7, "Barn", [], {}, { name: 7 }])(
    "of %j, which has no name, is the usual one",
    (it) => {
      expect(idFromName(it, "class")).toBe("class");
    },
  );

  it("is always one that can be kept", () => {
    assert(
      property(string({ unit: "grapheme", maxLength: 200 }), (name) => {
        const ids = { action: "action-1", practice: "oriel", id: idFromName({ name }, "hall") };
        expect(readIds(ids)).toEqual({ ok: true, value: null });
      }),
    );
  });
});
