import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { MoneyWriter } from "#core/price";
import type { WeekDocument, WeekPlan } from "#core/week";
import { isCurrency, moneyText, type PracticeDocument, type Problem } from "#core/words";
import { Fraction } from "fraction.js";
import { timeWords, weekdayWord } from "./date-words.ts";
import { ownCandidate, type OwnFigures } from "./own-candidate.ts";

type Listed<Document> = { readonly id: string; readonly document: Document };

/** The plan of a week with the practice around it. */
export type WeekQuestionInput = {
  readonly practice: Pick<PracticeDocument, "currency" | "zone" | "locale">;
  readonly plan: WeekPlan;
  readonly classes: readonly Listed<ClassDocument>[];
  readonly halls: readonly Listed<HallDocument>[];
  readonly money: MoneyWriter;
};

/** A class of the practice as the week sees it. */
export type OwnClassRow = {
  readonly id: string;
  readonly name: string;
  /** "Tuesdays at 19:00 in Tithe Barn Hall, £58.20 a session before travel, 39 sessions a year" */
  readonly says: string;
  /** why it cannot be in a week yet; null where it can */
  readonly why: string | null;
  /** decimal string; null where the class sheet does not tell */
  readonly contribution: string | null;
  readonly sessions: number | null;
  readonly guesses: number;
};

export type WeekQuestion = {
  readonly document: WeekDocument;
  readonly own: readonly OwnClassRow[];
};

/**
 * The week document of a plan: the classes of the practice come in by themselves, after the candidates of the plan, and
 * their halls as places. What a class sheet does not tell yet keeps that class out, with the reason.
 */
export function weekQuestion(input: WeekQuestionInput): WeekQuestion {
  const { practice, plan } = input;
  const rows = input.classes.map((it) => ownRow(input, it));
  const own = rows.flatMap(({ candidate }) => (candidate === null ? [] : [candidate]));
  const { own: _, format: __, target, ...rest } = plan;
  const others = plan.candidates.flatMap(({ out, ...one }) =>
    out ? [] : [{ ...one, name: named(one.name, NAMELESS_CLASS) }],
  );
  const candidates = [...others, ...own];
  const document: WeekDocument = {
    ...rest,
    ...(target === undefined ? {} : { target }),
    currency: practice.currency,
    wishes: plan.wishes.filter((wish) => isAbout(input, wish, candidates)),
    zone: practice.zone,
    places: placesOf(input, candidates),
    candidates,
  };
  return { document, own: rows.map(({ row }) => row) };
}

const NAMELESS_CLASS = "A class without a name";

function named(name: string | undefined, otherwise: string): string {
  return name === undefined || name.trim() === "" ? otherwise : name;
}

type Candidate = WeekDocument["candidates"][number];

function ownRow(input: WeekQuestionInput, { id, document }: Listed<ClassDocument>) {
  const { practice, plan, halls } = input;
  const said = plan.own.find((it) => it.class === id);
  const hall = halls.find((it) => it.id === document.hall) ?? null;
  const { currency } = practice;
  const found = isCurrency(currency) ? ownCandidate(document, hall?.document ?? null, currency) : null;
  const figures = found?.kind === "ready" ? found : null;
  const sheet = figures === null || !isCurrency(currency) ? null : moneyText(figures.contribution, currency);
  const contribution = said?.contribution ?? sheet;
  const sessions = said?.sessions ?? figures?.sessions ?? null;
  const name = named(document.name, NAMELESS_CLASS);
  const why = whyNot(found, hall === null, contribution === null || sessions === null);
  const row: OwnClassRow = {
    id,
    name,
    says: saysOf(input, document, hall?.document.name ?? null, figures),
    why,
    contribution: sheet,
    sessions: figures?.sessions ?? null,
    guesses: figures?.guesses ?? 0,
  };
  if (why !== null || said?.out === true || hall === null || contribution === null || sessions === null)
    return { row, candidate: null };
  const { setUp, class: teach, packDown, preparation, admin } = document.minutes;
  const candidate: Candidate = {
    id,
    name,
    kind: "own",
    place: hall.id,
    weekday: document.weekday,
    start: document.start,
    minutes: { before: setUp, teach, after: packDown, preparation: preparation + admin },
    contribution,
    sessions,
    fixed: said?.fixed ?? false,
  };
  return { row, candidate };
}

/** Without a hall there is no place; without figures she can still state them here. */
function whyNot(
  found: ReturnType<typeof ownCandidate> | null,
  homeless: boolean,
  bare: boolean,
): string | null {
  if (!homeless && !bare) return null;
  if (homeless) return "No hall is chosen for it yet: choose one on its class sheet.";
  if (found?.kind === "missing") return `${found.says} ${found.next}`;
  const first = found?.kind === "unsound" ? found.problems[0] : undefined;
  return first === undefined ? "What a session leaves is not known yet." : `${first.says} ${first.next}`;
}

function saysOf(
  { practice, money }: WeekQuestionInput,
  { weekday, start }: ClassDocument,
  hall: string | null,
  figures: OwnFigures | null,
): string {
  const day =
    Number.isInteger(weekday) && weekday >= 1 && weekday <= 7 ? `${weekdayWord(weekday)}s` : "Weekly";
  const when = `${day} at ${timeWords(start, practice.locale)}${hall === null ? "" : ` in ${hall}`}`;
  if (figures === null) return when;
  const { contribution, sessions } = figures;
  const count = sessions === 1 ? "1 session" : `${sessions} sessions`;
  return `${when}, ${money(new Fraction(contribution))} a session before travel, ${count} a year`;
}

/** A class that is left out, or cannot be in a week yet, needs no wish against it; one that is gone is told. */
function isAbout(
  { plan, classes }: WeekQuestionInput,
  wish: WeekPlan["wishes"][number],
  candidates: readonly Candidate[],
): boolean {
  if (wish.kind !== "rather-not" || candidates.some(({ id }) => id === wish.candidate)) return true;
  return [...plan.candidates, ...classes].every(({ id }) => id !== wish.candidate);
}

/** Those of the plan, a hall among them under its own name, then the halls that a candidate needs besides. */
function placesOf({ plan, halls }: WeekQuestionInput, candidates: readonly Candidate[]) {
  const nameOf = (id: string) => {
    const name = halls.find((it) => it.id === id)?.document.name;
    return name === undefined || name.trim() === "" ? undefined : name;
  };
  const known = new Set(plan.places.map(({ id }) => id));
  const home = known.has(plan.home) ? [] : [{ id: plan.home, name: "Home" }];
  const own = plan.places.map((place) => {
    const name =
      nameOf(place.id) ?? named(place.name, place.id === plan.home ? "Home" : "A place without a name");
    return { ...place, name };
  });
  const needed = new Set(candidates.map(({ place }) => place));
  const more = halls
    .filter(({ id }) => needed.has(id) && !known.has(id))
    .map(({ id }) => ({ id, name: nameOf(id) ?? "A hall without a name" }));
  return [...own, ...home, ...more];
}

/** Problems of the week document by ids instead of positions: "own.tuesday-evening.start", "places.mill.at". */
export function atPlan(
  problems: readonly Problem[],
  plan: WeekPlan,
  { candidates, places, travel, wishes }: WeekDocument,
): readonly Problem[] {
  const theirs = new Set(plan.candidates.map(({ id }) => id));
  const byId = (list: string, at: number): string | undefined => {
    if (list === "places") return places[at] && `places.${places[at].id}`;
    if (list === "wishes") return wishes[at] && `wishes[${plan.wishes.indexOf(wishes[at])}]`;
    if (list === "travel") return travel[at] && `travel.${travel[at].from}.${travel[at].to}`;
    const found = candidates[at];
    return found && `${theirs.has(found.id) ? "candidates" : "own"}.${found.id}`;
  };
  return problems.map((problem) => {
    const [, list = "", at = "", rest = ""] =
      /^(candidates|places|travel|wishes)\[(\d+)\](.*)$/.exec(problem.place) ?? [];
    const start = list === "" ? undefined : byId(list, Number(at));
    return start === undefined ? problem : { ...problem, place: `${start}${rest}` };
  });
}
