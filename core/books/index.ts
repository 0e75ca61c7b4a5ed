export type { Account, CostHeading, Heading, Means } from "./posting/account.ts";
export { type Balance, balanceOf, balances } from "./posting/balances.ts";
export { type About, classesOf, type Entry, entry, type Posting } from "./posting/entry.ts";
export { isBalanced } from "./posting/is-balanced.ts";
export { undone } from "./posting/undone.ts";
export { applyPassEvent } from "./pass/apply-pass-event.ts";
export { passAfter } from "./pass/pass-after.ts";
export { passEntries } from "./pass/pass-entries.ts";
export type {
  PassEvent,
  PassExpired,
  PassExtended,
  PassPaid,
  PassFreed,
  PassPaused,
  PassPromised,
  PassRefunded,
  PassResumed,
  PassReturned,
  PassSold,
  PassSwapped,
  PassTerms,
  PassTransferred,
  PassUsed,
} from "./pass/pass-event.ts";
export { freeOf, type PassPromise, type PassState, type PassUse } from "./pass/pass-state.ts";
export { placeGivenBack, type PlaceMoney, placePaid, placeTaught } from "./place/place-entries.ts";
export { passProblem } from "./pass/pass-problem.ts";
export { type RefundFound, refundOf, type RefundWay } from "./pass/refund-of.ts";
export {
  lastOfEachWeek,
  moveUseBy,
  type Pause,
  type UseBy,
  useByAfter,
  useByAfterPause,
} from "./pass/use-by.ts";
export { type UseByWarning, useByWarning } from "./pass/use-by-warning.ts";
export { shareOf } from "./pass/share-of.ts";
