/** A list is begun and then asked for item by item, so that nothing has to be interrupted to stop it. */
export type StepsRequest<Job> =
  | { readonly id: number; readonly kind: "begin"; readonly job: Job }
  | { readonly id: number; readonly kind: "next" };

export type StepsReply<Item> = { readonly id: number } & (
  | { readonly kind: "begun"; readonly total: number | null; readonly notes: readonly string[] }
  | { readonly kind: "item"; readonly item: Item }
  | { readonly kind: "done" }
  | { readonly kind: "failed"; readonly says: string }
);
