import type { ExactMinor, Minor } from "#core/words";
import type { Fraction } from "fraction.js";
import { payerKey, payerName } from "../payer-key.ts";

export type TierKind = "single" | "pass" | "course" | "concession" | "pay-what-you-can" | "free";

/** One way to pay: a 10-pass of 85.00, 8.50 a class, by which 0.3 of the people on the mats come. */
export type Tier = {
  /** the key of the mix: "single", "pass-10", "course-6", "concession", "pay-what-you-can", "free" */
  readonly key: string;
  readonly kind: TierKind;
  /** where its price stands in the document */
  readonly place: string;
  /** paid at once, and for how many classes */
  readonly price: Minor;
  readonly classes: number;
  readonly perClass: ExactMinor;
  /** the least a class can bring by it: its floor where people choose, else what a class brings */
  readonly least: ExactMinor;
  /** of the people on the mats; 0 when nobody pays so */
  readonly share: Fraction;
};

/** "10-pass", "Course of 6", "Pay what you can". */
export function tierName(key: string): string {
  if (key === "pay-what-you-can") return "Pay what you can";
  const course = courseSize(key);
  return course === null ? payerName(key) : `Course of ${course}`;
}

/** Within a sentence: "a 10-pass", "a course of 6", "pay what you can", "a single". */
export function tierInWords(key: string): string {
  if (key === "pay-what-you-can") return "pay what you can";
  const course = courseSize(key);
  if (course !== null) return `a course of ${course}`;
  return `a ${payerName(key).toLowerCase()}`;
}

/** The sessions of "course-6"; null for any other key. */
export function courseSize(key: string): number | null {
  const course = /^course-([1-9]\d{0,2})$/.exec(key);
  return course === null ? null : Number(course[1]);
}

export function isTierKey(key: string): boolean {
  return payerKey(key) !== null || courseSize(key) !== null || key === "pay-what-you-can";
}
