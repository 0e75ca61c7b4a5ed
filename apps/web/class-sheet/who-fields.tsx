import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { useFormField } from "../fields/form.tsx";
import { GuessAt } from "../fields/guess-at.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { weekdayName } from "../words/dates.ts";
import type { ClassPart } from "./class-part.ts";

const WEEKDAYS = [1, 2, 3, 4, 5, 6, 7].map((day) => ({ value: String(day), label: weekdayName(day) }));

/** What the class is called, who it is for and when it meets. */
export function WhoFields({ document, change }: ClassPart) {
  const weekday = useFormField("weekday");
  const start = useFormField("start");
  return (
    <div>
      <WordsField label="Name of the class" value={document.name} onChange={(name) => change({ name })} />
      <WordsField
        label="Who it is for"
        help="What they can do, what they come for, what to tell you first, what to bring"
        long
        value={document.whoFor}
        onChange={(whoFor) => change({ whoFor })}
      />
      <ChoiceField
        label="Day"
        value={String(document.weekday)}
        choices={WEEKDAYS}
        onChange={(day) => {
          change({ weekday: Number(day) });
          weekday.setGuess(false);
        }}
        after={<GuessAt path="weekday" label="Day" />}
      />
      <DateField
        type="time"
        label="Begins at"
        value={document.start}
        put={(time) => {
          change({ start: time });
          start.setGuess(false);
        }}
        after={<GuessAt path="start" label="Begins at" />}
      />
    </div>
  );
}
