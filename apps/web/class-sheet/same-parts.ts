import type { ClassDocument } from "#core/class";
import type { ClassPart } from "./class-part.ts";

/** Whether a part of the sheet may stay as it is drawn: these parts of the class and everything else are the same. */
export function sameParts<Props extends ClassPart>(
  ...parts: readonly (keyof ClassDocument)[]
): (before: Props, after: Props) => boolean {
  return (before, after) => {
    const others: readonly [string, unknown][] = Object.entries(before);
    const next = new Map<string, unknown>(Object.entries(after));
    return (
      others.length === next.size &&
      others.every(([name, value]) => name === "document" || Object.is(value, next.get(name))) &&
      parts.every((part) => Object.is(before.document[part], after.document[part]))
    );
  };
}
