import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import { type YearDocumentInput, type YearPlan, yearPlanSchema } from "#core/year";
import { type PracticeDocument, readDocument } from "#core/words";
import { readPlainDate, readPlainTime } from "#kernels/calendar";

type Listed<Document> = { readonly id: string; readonly document: Document };

/** The plan of a year with the practice around it; `today` is where a year without classes begins. */
export type YearQuestionInput = {
  readonly practice: Pick<PracticeDocument, "zone" | "locale">;
  readonly plan: YearPlan;
  readonly classes: readonly Listed<ClassDocument>[];
  readonly halls: readonly Listed<HallDocument>[];
  readonly today: string;
};

/** A class that cannot be in the year yet, with why. */
export type ClassLeftOut = { readonly id: string; readonly name: string; readonly why: string };

export type YearQuestion = {
  readonly document: YearDocumentInput;
  readonly leftOut: readonly ClassLeftOut[];
};

/**
 * The year document of a plan: the classes of the practice come in by themselves with the closures of their sheets,
 * their halls with what the plan says of them. What the plan says of a class or hall that is gone is passed over.
 */
export function yearQuestion(input: YearQuestionInput): YearQuestion {
  const { practice, plan } = input;
  const read = input.classes.map((it) => classOf(it));
  const classes = read.flatMap(({ found }) => (found === null ? [] : [found]));
  const known = new Set(classes.map(({ id }) => id));
  const { format: _, feed: __, halls: ___, ...decided } = plan;
  return {
    document: {
      ...decided,
      ...spanOf(input),
      zone: practice.zone,
      locale: practice.locale,
      runs: plan.runs.filter((it) => known.has(it.class)),
      changes: plan.changes.filter((it) => known.has(it.class)),
      halls: hallsOf(input, classes),
      classes,
    },
    leftOut: read.flatMap(({ out }) => (out === null ? [] : [out])),
  };
}

/** What the practice keeps as its year, read; a new one in the country of the practice where there is none. */
export function yearPlanOf(document: unknown, { locale }: Pick<PracticeDocument, "locale">): YearPlan {
  const read = readDocument(yearPlanSchema, document);
  const plan = read.ok ? read.value.value : yearPlanSchema.parse({});
  const chosen = typeof document === "object" && document !== null && "holidays" in document;
  if (read.ok && chosen) return plan;
  const region = locale === "en-US" ? "US" : "GB-ENG";
  return { ...plan, holidays: { ...plan.holidays, region } };
}

type YearClassDocument = YearDocumentInput["classes"][number];
type Read = { readonly found: YearClassDocument | null; readonly out: ClassLeftOut | null };

const NO_HALL = "no-hall-yet";

function classOf({ id, document }: Listed<ClassDocument>): Read {
  const { weekday, start, minutes, year, hall } = document;
  const name = document.name.trim() === "" ? "A class without a name" : document.name;
  if (!isUsable(document)) {
    const why = "its day, its time or its dates cannot be used yet: look at its class sheet.";
    return { found: null, out: { id, name, why } };
  }
  const found: YearClassDocument = {
    id,
    name,
    hall: hall ?? NO_HALL,
    start,
    minutes: { before: minutes.setUp, teach: minutes.class, after: minutes.packDown },
    weekday,
    from: year.from,
    until: year.until,
    closed: { days: year.closures.map((it) => ({ from: it.from, until: it.until, why: it.why })) },
  };
  return { found, out: null };
}

/** Sound as far as a year needs it; the class sheet tells the rest. */
function isUsable({ weekday, start, minutes, year }: ClassDocument): boolean {
  const { setUp, class: teach, packDown } = minutes;
  const spans = [year, ...year.closures];
  return (
    Number.isInteger(weekday) &&
    weekday >= 1 &&
    weekday <= 7 &&
    readPlainTime(start) !== undefined &&
    [setUp, teach, packDown].every((it) => Number.isInteger(it) && it >= 0) &&
    teach > 0 &&
    setUp + teach + packDown <= 1440 &&
    spans.every(({ from, until }) => isDate(from) && isDate(until) && from <= until)
  );
}

function isDate(text: string): boolean {
  return readPlainDate(text) !== undefined;
}

const MOST_DAYS = 730;

/** From the first day of any class to the last, unless she says otherwise; a year from today without classes. */
function spanOf({ plan, classes, today }: YearQuestionInput): {
  readonly from: string;
  readonly until: string;
} {
  const usable = classes.filter(({ document }) => isUsable(document)).map(({ document }) => document.year);
  const from = plan.from ?? usable.map((it) => it.from).toSorted()[0] ?? today;
  const last =
    plan.until ??
    usable
      .map((it) => it.until)
      .toSorted()
      .at(-1);
  const first = readPlainDate(from);
  if (first === undefined) return { from, until: last ?? from };
  const most = first.add({ days: MOST_DAYS }).toString();
  const until = last ?? first.add({ years: 1 }).subtract({ days: 1 }).toString();
  // classes may lie further apart than a year can be planned; what she states herself is told when it is too long
  return { from, until: plan.until === undefined && until > most ? most : until };
}

function hallsOf({ plan, halls }: YearQuestionInput, classes: readonly YearClassDocument[]) {
  const needed = new Set(classes.map(({ hall }) => hall));
  const homeless = needed.has(NO_HALL) ? [{ id: NO_HALL, name: "no hall yet" }] : [];
  // a hall may be gone that a class still names
  const gone = [...needed].filter((id) => id !== NO_HALL && halls.every((it) => it.id !== id));
  return [
    ...halls.map(({ id, document }) => ({
      ...plan.halls.find((it) => it.id === id),
      id,
      name: document.name.trim() === "" ? "A hall without a name" : document.name,
    })),
    ...gone.map((id) => ({ id, name: "a hall that is gone" })),
    ...homeless,
  ];
}
