import type { PlanDocument } from "#app/ports";
import { type WeekPlan, weekPlanSchema } from "#core/week";
import { type CurrencyCode, type Problem, readDocument } from "#core/words";
import { useMemo, useState } from "react";
import type { Opened } from "../drafts/use-draft.ts";
import type { Form } from "../fields/form.tsx";
import { withGuess } from "../fields/with-guess.ts";

/** What the practice keeps as its week, read; an empty plan where it cannot be. */
export function planOf(document: PlanDocument): WeekPlan {
  const read = readDocument(weekPlanSchema, document);
  return read.ok ? read.value.value : weekPlanSchema.parse({});
}

/** A plan to be changed, and the form over it: the kept one, or one on trial that is nowhere else. */
export type OpenPlan = {
  readonly plan: WeekPlan;
  readonly change: (recipe: (before: WeekPlan) => WeekPlan) => void;
  readonly form: Form;
};

export type Trial = {
  /** the kept plan */
  readonly kept: WeekPlan;
  /** null while nothing is tried */
  readonly tried: WeekPlan | null;
  readonly begin: (recipe: (before: WeekPlan) => WeekPlan) => void;
  readonly takeBack: () => void;
  readonly keep: () => void;
};

/**
 * Opens the kept plan, or the one on trial while there is one: the same fields change either. `problems` are those of
 * the plan that is shown.
 */
export function usePlans(opened: Opened<PlanDocument>): {
  readonly trial: Trial;
  readonly change: OpenPlan["change"];
  readonly typing: Typing;
} {
  const { keeper, draft } = opened;
  const kept = useMemo(() => planOf(draft.document), [draft.document]);
  const [tried, setTried] = useState<WeekPlan | null>(null);
  const [typed, setTyped] = useState<Form["typed"]>({});
  const put = (plan: WeekPlan) => keeper.change(() => ({ ...plan, format: "hallful/week-plan@1" }));
  const end = () => {
    setTried(null);
    setTyped({});
  };
  const trial: Trial = {
    kept,
    tried,
    begin: (recipe) => setTried((before) => recipe(before ?? kept)),
    takeBack: end,
    keep: () => {
      if (tried !== null) put(tried);
      end();
    },
  };
  const change: OpenPlan["change"] = (recipe) => {
    if (tried === null) put(recipe(planOf(keeper.read().document)));
    else setTried((before) => recipe(before ?? kept));
  };
  const typing: Typing =
    tried === null
      ? { typed: draft.typed, type: keeper.type, dropTyped: keeper.dropTyped }
      : {
          typed,
          type: (path, text) => setTyped((before) => withText(before, path, text)),
          dropTyped: (start) => setTyped((before) => withoutStart(before, start)),
        };
  return { trial, change, typing };
}

type Typing = Pick<Form, "typed" | "type" | "dropTyped">;

function withText(typed: Form["typed"], path: string, text: string | null): Form["typed"] {
  const { [path]: _, ...others } = typed;
  return text === null ? others : { ...others, [path]: text };
}

function withoutStart(typed: Form["typed"], start: string): Form["typed"] {
  return Object.fromEntries(Object.entries(typed).filter(([path]) => !path.startsWith(start)));
}

/** The form over a plan. Its guesses stand by ids, "candidates.cover.sessions", so that no row shifts them. */
export function useWeekForm(
  plan: WeekPlan,
  change: OpenPlan["change"],
  { typed, type, dropTyped }: Typing,
  currency: CurrencyCode,
  problems: readonly Problem[],
): Form {
  return {
    currency,
    typed,
    type,
    dropTyped,
    problems,
    isGuess: (path) => plan.guesses.includes(path),
    setGuess: (path, guess) => change((before) => withGuess(before, path, guess)),
  };
}
