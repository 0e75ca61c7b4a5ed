import type { Contact } from "#core/roll";

/** A contact without the spaces before and after what was typed. */
export function trimmed(contact: Contact): Contact {
  const { name, phone, email, emergencyName, emergencyPhone, heard } = contact;
  return {
    name: name.trim(),
    phone: phone.trim(),
    email: email.trim(),
    emergencyName: emergencyName.trim(),
    emergencyPhone: emergencyPhone.trim(),
    heard: heard.trim(),
  };
}
