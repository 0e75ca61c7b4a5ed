/** A value that carries its unit or its kind in the type and nothing at run time. */
export type Brand<Value extends string | number, Name extends string> = Value & { readonly __is: Name };

/** The one place where a bare value gets its brand; callers check it first. */
// oxlint-disable-next-line typescript/no-unnecessary-type-parameters -- the caller names the brand
export function branded<Branded extends string | number>(value: string | number): Branded {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- a brand exists only in types
  return value as Branded;
}
