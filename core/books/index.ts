export { type Account, type CostHeading, costHeadings, type Heading, type Means } from "./posting/account.ts";
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
export { freeOf, moneyKept, type PassPromise, type PassState, type PassUse } from "./pass/pass-state.ts";
export { placeGivenBack, type PlaceMoney, placePaid, placeTaught } from "./place/place-entries.ts";
export { type ClosedSession, movedByClosure } from "./pass/moved-by-closure.ts";
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
export { termsInWords } from "./pass/terms-in-words.ts";
export { type UseByWarning, useByWarning } from "./pass/use-by-warning.ts";
export { shareOf } from "./pass/share-of.ts";
export { type Cost, costDue, costLetGo, costPaid, duePaid } from "./money/cost-entries.ts";
export { cashFound, moneyMoved, ownPutIn, ownTakenOut } from "./money/till-entries.ts";
export { type Work, workDone, workPaid } from "./money/work-entries.ts";
export { type BookLine, bookLines, type Side, sideOf } from "./view/book-line.ts";
export { type CashBox, type CashCount, cashBox, cashCount } from "./view/cash-count.ts";
export { type CashRow, type CashView, cashView } from "./view/cash-view.ts";
export { type EarnedMonth, type EarnedRow, type EarnedView, earnedView } from "./view/earned-view.ts";
export { type OwedLine, type OwedView, owedView } from "./view/owed-view.ts";
export { type Takings, type TakingsRow, takingsOf } from "./view/takings.ts";
export { type YearEnd, yearEnd } from "./view/year-end.ts";
export { bookRows, yearEndRows } from "./view/year-end-rows.ts";
