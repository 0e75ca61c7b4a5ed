import type { Contact } from "#core/roll";

export const heardChoices = [
  "a friend",
  "a poster or a handbill",
  "the hall",
  "the web",
  "a class elsewhere",
] as const;

export const EMPTY_CONTACT: Contact = {
  name: "",
  phone: "",
  email: "",
  emergencyName: "",
  emergencyPhone: "",
  heard: "",
};

export type ContactSlips = Readonly<Partial<Record<keyof Contact, string>>>;

/** What is wrong with a contact, in words at its field; nothing where it can be kept. */
export function contactSlips({ name, phone, email, emergencyPhone }: Contact): ContactSlips {
  const long = "This is longer than a name: give at most 200 letters.";
  return {
    ...(name.trim() === "" ? { name: "There is no name here. Write what this person is called." } : {}),
    ...(name.length > 200 ? { name: long } : {}),
    ...(isPhone(phone) ? {} : { phone: noPhone(phone) }),
    ...(isPhone(emergencyPhone) ? {} : { emergencyPhone: noPhone(emergencyPhone) }),
    ...(email.trim() === "" || /^[^\s@]+@[^\s@]+$/.test(email.trim())
      ? {}
      : { email: `“${email.trim()}” is not an address for email. Write it like ana@marlsford.example.` }),
  };
}

function isPhone(text: string): boolean {
  return text.trim() === "" || /\d.*\d.*\d/.test(text);
}

function noPhone(text: string): string {
  return `“${text.trim()}” is not a number to ring. Write its figures.`;
}
