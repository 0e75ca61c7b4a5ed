import type { PracticeStartDocuments } from "#app/actions";
import type { PracticeStart } from "#app/ports";
import type { PracticeDocument } from "#core/words";
import type { PastAction } from "#app/record";
import { cedarFork, marlsford, marlsfordHistory } from "#demo";

/** What a practice of each kind starts with; a document that was sent replaces the practice's own. */
export function startDocuments(start: PracticeStart, document: unknown): PracticeStartDocuments {
  const documents = documentsOf(start);
  return document === undefined ? documents : { ...documents, practice: document };
}

/** What was done in a demo before it is opened, in the order of time. */
export function startHistory(start: PracticeStart): readonly PastAction[] {
  return start === "demo-marlsford" ? marlsfordHistory() : [];
}

function documentsOf(start: PracticeStart): PracticeStartDocuments {
  switch (start) {
    case "empty":
      return { practice: emptyPractice, halls: [], classes: [], happened: [], plans: [] };
    case "demo-marlsford":
      return marlsford;
    case "demo-cedar-fork":
      return cedarFork;
  }
}

/** Only what nobody asked for: the screen sends the currency and the zone of the machine. */
const emptyPractice: PracticeDocument = {
  name: "My practice",
  currency: "GBP",
  zone: "Europe/London",
  locale: "en-GB",
  units: "metric",
};
