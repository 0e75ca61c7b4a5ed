import type { Hall, ArrangedMatPlan } from "#core/hall";

export type FitRequest = { readonly id: number; readonly hall: Hall };

export type FitAnswer =
  | { readonly id: number; readonly ok: true; readonly plan: ArrangedMatPlan; readonly milliseconds: number }
  | { readonly id: number; readonly ok: false; readonly says: string };
