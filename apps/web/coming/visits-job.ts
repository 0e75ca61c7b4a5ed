import type { ComingAnswer, ComingAnswerQuestion, StaysAnswer, StaysAnswerQuestion } from "#core/outlook";
import type { DateStyle, VisitColumn } from "#core/table";
import type { Problem } from "#core/words";
import type { RowLeft } from "../import/sessions-file.ts";
import type { TableAsk, TableSeen } from "../import/table-ask.ts";

/** What of a question is not in the file. */
export type ComingChoices = Omit<ComingAnswerQuestion, "visits">;

/** What people renew by, and after how many such periods without a visit somebody is taken for gone. */
export type Renewal = Pick<StaysAnswerQuestion, "period" | "goneAfter">;

export type RenewalsAnswer =
  | { readonly kind: "ready"; readonly answer: StaysAnswer }
  | { readonly kind: "not worked out"; readonly problems: readonly Problem[] };

export type VisitsJob = {
  readonly bytes: Uint8Array;
  readonly ask: TableAsk<VisitColumn>;
  readonly choices: ComingChoices;
  readonly renewal: Renewal;
};

/** What is being done, in the order in which it is done. */
export type VisitsStage =
  | { readonly doing: "reading" }
  | { readonly doing: "sorting"; readonly rows: number }
  | { readonly doing: "working out"; readonly visits: number };

export type VisitsAnswer =
  | { readonly kind: "no table"; readonly problems: readonly Problem[] }
  | { readonly kind: "asks"; readonly seen: TableSeen<VisitColumn>; readonly problems: readonly Problem[] }
  | ({ readonly kind: "not worked out"; readonly problems: readonly Problem[] } & VisitsReadWords)
  | ({
      readonly kind: "ready";
      readonly answer: ComingAnswer;
      readonly renewals: RenewalsAnswer;
    } & VisitsReadWords);

/** How the file was read. */
export type VisitsReadWords = {
  readonly seen: TableSeen<VisitColumn>;
  readonly visits: number;
  readonly left: readonly RowLeft[];
  readonly dates: DateStyle;
  readonly writtenTwoWays: readonly string[];
};
