import { describe, expect, it } from "vitest";
import { arrowStep } from "./arrow-step.ts";

describe("arrowStep", () => {
  it("moves by a centimetre, ten with Shift and a metre with Alt, up being up on the floor", () => {
    expect(press("ArrowUp")).toEqual([0, 10]);
    expect(press("ArrowLeft", { shiftKey: true })).toEqual([-100, 0]);
    expect(press("ArrowDown", { altKey: true })).toEqual([0, -1000]);
  });

  it("leaves other keys alone", () => {
    expect(press("Tab")).toBeNull();
  });
});

function press(key: string, held: { shiftKey?: boolean; altKey?: boolean } = {}) {
  return arrowStep({ key, shiftKey: false, altKey: false, ...held });
}
