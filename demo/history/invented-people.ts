/** Names that nobody has: first and last ones are put together in turn, so that sixty people are sixty names. */
const FIRST = [
  "Ada",
  "Bram",
  "Cerys",
  "Dov",
  "Edda",
  "Farah",
  "Gwil",
  "Hana",
  "Ines",
  "Jory",
  "Kezia",
  "Lorn",
  "Mabli",
  "Nico",
  "Orla",
  "Piet",
  "Quill",
  "Rhosyn",
  "Sefa",
  "Tamsin",
  "Una",
  "Vidar",
  "Wenna",
  "Yara",
] as const;

const LAST = [
  "Ashdown-Pell",
  "Birchall-Wray",
  "Corrow",
  "Dunmoor",
  "Ellery-Voss",
  "Fennimarsh",
  "Garrowby",
  "Hexley",
  "Inkpenn",
  "Jessamy",
  "Kettlewick",
  "Larkmere",
  "Mossgrave",
] as const;

export type InventedPerson = { readonly id: string; readonly name: string; readonly phone: string };

/** The number-th person, called by no name in her id, which outlives her name; phone numbers are of the block kept for stories (01632 960000 to 960999). */
export function inventedPerson(number: number): InventedPerson {
  const first = FIRST[number % FIRST.length] ?? "Ada";
  const last = LAST[(number * 5 + Math.floor(number / FIRST.length)) % LAST.length] ?? "Corrow";
  const name = `${first} ${last}`;
  const phone = `01632 960${String(100 + number).padStart(3, "0")}`;
  return { id: `person-${number}`, name, phone };
}
