export { type ChargedSlot, chargedSlot } from "./charged-slot.ts";
export type { SlotMinutes } from "./charged-slot-types.ts";
export type { DoorSwing, Fixture, Hall, KeepClear, Mat, MatGaps } from "./hall.ts";
export { type HallDocument, type HallDocumentInput, hallDocumentSchema } from "./hall-document.ts";
export type { HireBand, HireHeating, HirePrice, HireRate, HireTerms } from "./hire-terms.ts";
export { type HireTermsDocument, hireTermsSchema } from "./hire-terms-document.ts";
export type { Capacity, CapacityLimit, MatPlan, PlacedMat, SetOut } from "./mat-plan-types.ts";
export { readHireTerms } from "./read-hire-terms.ts";
