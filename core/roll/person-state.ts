import type { ConsentKind, Contact, PersonEvent } from "./person-event.ts";

/*
 * One person as her events leave her:
 *   { contact: { name: "Ana Brook", … }, consents: { photo: { given: false, at: "2026-09-01T18:02:00Z", … } } }
 * Consents are told apart and dated; nothing here tells of health but that there is a form and whether to speak.
 */
export type Consent = { readonly given: boolean; readonly at: string; readonly wording: string };

export type PersonState = {
  readonly contact: Contact;
  readonly since: string;
  readonly consents: Readonly<Partial<Record<ConsentKind, Consent>>>;
  readonly healthForm: { readonly at: string; readonly reviewBy: string; readonly speak: boolean } | null;
  /** how often a place was given up late, and how often that was let go */
  readonly late: { readonly times: number; readonly waived: number };
  readonly mayCover: {
    readonly insuredUntil: string | null;
    readonly styles: string;
    readonly fee: number;
  } | null;
  readonly erased: boolean;
};

const NOBODY: Contact = {
  name: "",
  phone: "",
  email: "",
  emergencyName: "",
  emergencyPhone: "",
  heard: "",
};

const empty = (contact: Contact, since: string): PersonState => ({
  contact,
  since,
  consents: {},
  healthForm: null,
  late: { times: 0, waived: 0 },
  mayCover: null,
  erased: false,
});

/**
 * The person after one more event, made at an ISO instant. Throws when the first event is neither "met" nor "erased",
 * which is what is left of somebody who was erased.
 */
export function applyPerson(before: PersonState | null, event: PersonEvent, made: string): PersonState {
  if (event.kind === "met") return empty(event.contact, made);
  if (event.kind === "erased") return { ...empty(NOBODY, before?.since ?? made), erased: true };
  if (before === null) throw new Error(`a person is met first, not: ${event.kind}`);
  switch (event.kind) {
    case "contact changed":
      return { ...before, contact: event.contact };
    case "consented":
      return { ...before, consents: { ...before.consents, [event.to]: consentOf(event, made) } };
    case "health form":
      return { ...before, healthForm: { at: made, reviewBy: event.reviewBy, speak: event.speak } };
    case "health form removed":
      return { ...before, healthForm: null };
    case "gave up late":
      return { ...before, late: oneMore(before.late, event.waived) };
    case "may cover":
      return { ...before, mayCover: coverOf(event) };
  }
}

function consentOf({ given, wording }: PersonEvent & { readonly kind: "consented" }, at: string): Consent {
  return { given, at, wording };
}

function oneMore(late: PersonState["late"], waived: boolean): PersonState["late"] {
  return { times: late.times + 1, waived: late.waived + (waived ? 1 : 0) };
}

function coverOf({ insuredUntil, styles, fee }: PersonEvent & { readonly kind: "may cover" }) {
  return { insuredUntil, styles, fee };
}

/** Whether a consent stands now. What was never asked is not given. */
export function consents(person: PersonState, to: ConsentKind): boolean {
  return person.consents[to]?.given === true;
}
