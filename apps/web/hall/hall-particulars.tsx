import type { HallDocument } from "#core/hall";
import { type Locale, word } from "#core/words";
import { OptionalNumberField } from "../fields/number-field.tsx";
import { WordsField } from "../fields/words-field.tsx";

type Props = {
  readonly document: HallDocument;
  readonly change: (part: Partial<HallDocument>) => void;
  readonly locale: Locale;
};

const PEOPLE = { least: 0, most: 100_000, whole: true };

/** Its name, where it is, and how many people may be in it. */
export function HallParticulars({ document, change, locale }: Props) {
  return (
    <div>
      <WordsField
        label="Name of the hall"
        value={document.name}
        onChange={(name) => change({ name })}
        problem={
          document.name.trim() === "" ? "The hall has no name. Give it the name that people use." : null
        }
      />
      <WordsField
        label="Address"
        value={document.address ?? ""}
        onChange={(address) => change({ address: address === "" ? undefined : address })}
      />
      <OptionalNumberField
        path="postedCapacity"
        label="The hall’s posted number"
        help="How many people may be in the room, from the notice on its wall. Empty if you have not seen one."
        unit="people"
        range={PEOPLE}
        value={document.postedCapacity}
        none={undefined}
        put={(postedCapacity) => change({ postedCapacity })}
      />
      <OptionalNumberField
        path="peopleNotOnMats"
        label="People who are not on mats"
        help="You and any helper; they count against the posted number. 1 if left empty."
        unit="people"
        range={PEOPLE}
        value={document.peopleNotOnMats}
        none={undefined}
        put={(peopleNotOnMats) => change({ peopleNotOnMats })}
      />
      <WordsField
        label="Notes"
        help={`Keys, alarm, parking, heating, who the ${word("booking clerk", locale)} and the ${word("caretaker", locale)} are`}
        long
        value={document.notes ?? ""}
        onChange={(notes) => change({ notes: notes === "" ? undefined : notes })}
      />
    </div>
  );
}
