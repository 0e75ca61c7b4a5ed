import type { ClassDocument } from "#core/class";
import type { Listed } from "../drafts/use-practice.ts";
import { today } from "../words/dates.ts";
import type { ComingChoices, Renewal } from "./visits-job.ts";

/** What she chose beside the file. */
export type ComingForm = {
  /** whose closures count; null: none */
  readonly classId: string | null;
  readonly emptyWeeksClosed: boolean;
  readonly until: "last visit" | "today";
  readonly notSeenFor: number;
  readonly ahead: number;
  readonly newSince: string | null;
  readonly model: "bg-bb" | "bg-nbd";
  readonly renewal: Renewal;
};

/** A practice with one class has no other closures to choose. */
export function firstChoices(classes: readonly Listed<ClassDocument>[]): ComingForm {
  return {
    classId: classes.length === 1 ? (classes[0]?.id ?? null) : null,
    emptyWeeksClosed: false,
    until: "last visit",
    notSeenFor: 4,
    ahead: 12,
    newSince: null,
    model: "bg-bb",
    renewal: { period: "month", goneAfter: 1 },
  };
}

export function comingChoices(form: ComingForm, classes: readonly Listed<ClassDocument>[]): ComingChoices {
  const { classId, until, newSince, emptyWeeksClosed, notSeenFor, ahead, model } = form;
  const chosen = classes.find(({ id }) => id === classId);
  return {
    closed: chosen?.document.year.closures.map(({ from, until: last }) => ({ from, until: last })) ?? [],
    emptyWeeksClosed,
    notSeenFor,
    ahead,
    model,
    ...(until === "today" ? { until: today() } : {}),
    ...(newSince === null ? {} : { newSince }),
  };
}
