import type { PersonHere } from "./record-reads.ts";

/** Those whose name, phone or email has every word that was typed, whatever the accents and the spaces in numbers. */
export function found(people: readonly PersonHere[], search: string): readonly PersonHere[] {
  const words = plain(search)
    .split(/\s+/)
    .filter((it) => it !== "");
  const digits = search.replace(/\D/g, "");
  return people.filter(({ person: { contact } }) => {
    const text = plain(`${contact.name} ${contact.email}`);
    const isNumber = digits.length >= 3 && contact.phone.replace(/\D/g, "").includes(digits);
    return isNumber || words.every((word) => text.includes(word));
  });
}

function plain(text: string): string {
  return text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
}
