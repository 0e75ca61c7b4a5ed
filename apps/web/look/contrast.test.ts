import { expect, test } from "vitest";
import css from "./tokens.css?raw";

/** "--ink: light-dark(#211d16, #f1eadb)" as its two colours. */
function colours(name: string): readonly [string, string] {
  const found = new RegExp(`--${name}: light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\)`).exec(css);
  if (found?.[1] === undefined || found[2] === undefined) throw new Error(`no such colour: ${name}`);
  return [found[1], found[2]];
}

/** WCAG 2.2, relative luminance. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.040_45 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** WCAG 2.2, contrast ratio. */
function contrast(one: string, other: string): number {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

const papers = ["paper", "paper-deep", "paper-field"];

function least(ink: string, paper: string): number {
  const [light, dark] = colours(ink);
  const [lightPaper, darkPaper] = colours(paper);
  return Math.min(contrast(light, lightPaper), contrast(dark, darkPaper));
}

test("black on white is 21 to 1", () => {
  // (1 + 0.05) ÷ (0 + 0.05)
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 5);
});

test.each(papers)("text of every ink on %s has 4.5 to 1, light and dark", (paper) => {
  for (const ink of ["ink", "ink-soft", "accent"]) expect(least(ink, paper)).toBeGreaterThanOrEqual(4.5);
});

test.each(papers)("the edge of what can be pressed has 3 to 1 on %s, light and dark", (paper) => {
  expect(least("rule-strong", paper)).toBeGreaterThanOrEqual(3);
});

test("the words on a main button have 4.5 to 1", () => {
  expect(least("on-accent", "accent")).toBeGreaterThanOrEqual(4.5);
});

test("the words on a mat and on a fixture have 4.5 to 1", () => {
  expect(least("ink", "plan-mat")).toBeGreaterThanOrEqual(4.5);
  expect(least("ink", "plan-fixture")).toBeGreaterThanOrEqual(4.5);
});
