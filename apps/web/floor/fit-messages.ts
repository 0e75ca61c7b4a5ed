import type { Hall, MatPlan } from "#core/hall";

export type FitRequest = { readonly id: number; readonly hall: Hall };

export type FitAnswer =
  | { readonly id: number; readonly ok: true; readonly plan: MatPlan; readonly milliseconds: number }
  | { readonly id: number; readonly ok: false; readonly says: string };
