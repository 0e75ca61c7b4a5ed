import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type LateAsked, lateCharge } from "./late-charge.ts";

const late: LateAsked = {
  what: "given-up",
  late: true,
  heldBy: "pass",
  before: 1,
  firstWaived: true,
  filled: false,
  chargedBefore: false,
};

test("NOTICE-10 late for the second time takes a class off the pass", () => {
  expect(lateCharge(late)).toEqual({
    charged: true,
    why: "late",
    waived: false,
    sentence: "One class is taken off the pass.",
  });
  expect(lateCharge({ ...late, heldBy: "single" }).sentence).toBe("The price of the place stays due.");
  expect(lateCharge({ ...late, heldBy: "block" }).sentence).toBe(
    "It counts as one of the sessions of the block.",
  );
});

test("NOTICE-11 the first time is waived, and only where the house rules say so", () => {
  expect(lateCharge({ ...late, before: 0 })).toMatchObject({
    charged: false,
    why: "first-waived",
    waived: true,
  });
  expect(lateCharge({ ...late, before: 0, firstWaived: false })).toMatchObject({
    charged: true,
    why: "late",
  });
  const away = lateCharge({ ...late, what: "not-come", before: 0 });
  expect(away).toMatchObject({ charged: false, waived: true });
  expect(away.sentence).toContain("so that somebody else can have it");
});

test("NOTICE-11 a place that the waiting list filled is not charged, and does not use up the first time", () => {
  expect(lateCharge({ ...late, before: 0, filled: true })).toMatchObject({
    charged: false,
    why: "place-filled",
    waived: false,
  });
});

test("NOTICE-12 nothing is charged twice, and nothing at all for a place that was free", () => {
  expect(lateCharge({ ...late, chargedBefore: true })).toMatchObject({
    charged: false,
    why: "charged-before",
  });
  expect(lateCharge({ ...late, heldBy: "guest" })).toMatchObject({
    charged: false,
    why: "nothing-to-charge",
  });
});

test("NOTICE-10 NOTICE-12 whatever is asked, in time is never charged, and not twice", () => {
  const asked: fc.Arbitrary<LateAsked> = fc.record({
    what: fc.constantFrom("given-up", "not-come"),
    late: fc.boolean(),
    heldBy: fc.constantFrom("pass", "block", "single", "concession", "free", "guest"),
    before: fc.nat(4),
    firstWaived: fc.boolean(),
    filled: fc.boolean(),
    chargedBefore: fc.boolean(),
  });
  fc.assert(
    fc.property(asked, (it) => {
      const { charged, waived, sentence } = lateCharge(it);
      if (it.chargedBefore || it.filled || (it.what === "given-up" && !it.late)) expect(charged).toBe(false);
      expect(charged && waived).toBe(false);
      expect(sentence.startsWith("Nothing")).toBe(!charged);
    }),
  );
});
