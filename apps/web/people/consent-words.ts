import type { ConsentKind } from "#core/roll";
import { type PracticeDocument, word } from "#core/words";

/** What is asked, in the words that are agreed to and kept with the answer. None of them names a condition. */
export function consentWords(
  to: ConsentKind,
  { name: practice, locale }: Pick<PracticeDocument, "name" | "locale">,
): string {
  switch (to) {
    case "news":
      return `${practice} may send me news, like a new term or a day of classes. Word about ${word("place", locale)}s that I have taken comes anyway. I can end this at any time, and every piece of news says how.`;
    case "photo":
      return `Pictures in which I can be recognised may be used to show what the classes of ${practice} are like, on paper and on the web. I can say no to any one picture, and take this back at any time; what is on the web then comes down.`;
    case "hands-on":
      return `In class I may be steadied or set right by hand. I am asked each time, and can say no at any moment without a reason.`;
    case "health":
      return `${practice} may keep a short note of what must be known about my health in class. It is sealed, is read by my teacher only, and is in no message, calendar or printed register. I can take this back at any time, and the note is then deleted.`;
  }
}

export const consentTitles: Readonly<Record<ConsentKind, string>> = {
  news: "News",
  photo: "Pictures",
  "hands-on": "Hands on",
  health: "A note about health",
};
