import { Link } from "@tanstack/react-router";
import { useState } from "react";
import type { AccidentFacts } from "#core/roll";
import { newId } from "../api/new-id.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { DateField } from "../fields/date-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { dayClock, startsAt } from "../tonight/session-times.ts";
import type { WrongHere } from "./wrong-here.ts";

const bands: readonly AccidentFacts["ageBand"][] = [
  "not known",
  "under 16",
  "16 to 17",
  "18 to 64",
  "65 and over",
];

/** What is asked, in the order in which it is known: first the person, then what happened, then who was told. */
const questions = [
  ["person", "Who was hurt", "Name as it was given"],
  ["contact", "How to reach them", ""],
  ["place", "Where", "The hall, and where in it"],
  ["activity", "What was being done, and how it was told", ""],
  ["happened", "What happened", "Facts only; no blame, and nothing admitted"],
  ["injury", "What was hurt", ""],
  ["firstAid", "First aid that was given", ""],
  ["by", "By whom", ""],
  ["witnesses", "Who saw it", ""],
  ["premises", "What the hall or the kit had to do with it", "Empty where nothing"],
  ["told", "Who was told", "Hall, insurer, emergency contact"],
] as const;

/** Somebody was hurt: help first, then the facts, which are locked once they are written. */
export function AccidentPart({ here }: { readonly here: WrongHere }) {
  const [id, setId] = useState(newId);
  const [facts, setFacts] = useState(() => startOf(here));
  const [when, setWhen] = useState(() => dayClock(here.now, here.session.zone));
  const at = startsAt(when.day, when.clock, here.session.zone);
  const ahead = at === null || Date.parse(at) > Date.parse(here.now) + 60_000;
  const put = (part: Partial<AccidentFacts>) => setFacts((before) => ({ ...before, ...part }));
  const missing = [facts.person, facts.happened].some((it) => it.trim() === "");
  const write = () => {
    if (at === null) return;
    const all = { ...facts, at };
    const done = here.run({ kind: "write accident", accident: id, facts: all }, "Write down an accident");
    if (!done) return;
    // an empty form, so that a second tap cannot lock the same accident twice
    setId(newId());
    setFacts(startOf(here));
  };
  return (
    <div className="stack">
      <h2>Somebody was hurt</h2>
      <p className="caution">
        Help first: ring for an ambulance where in doubt. Chest pain, faintness, a blow to the head or the
        neck are never for a teacher to judge. Then write down the facts, today.
      </p>
      <div className="fields">
        <DateField
          label="Day on which it happened"
          value={when.day}
          put={(day) => setWhen({ ...when, day })}
          problem={ahead ? "That is still to come. Write when it happened." : null}
        />
        <DateField
          label="About what time"
          type="time"
          value={when.clock}
          put={(clock) => setWhen({ ...when, clock })}
        />
        {questions.map(([name, label, help]) => (
          <WordsField
            key={name}
            label={label}
            help={help}
            long={name === "happened" || name === "activity"}
            value={facts[name]}
            onChange={(value) => put({ [name]: value })}
          />
        ))}
        <ChoiceField
          label="Age"
          value={facts.ageBand}
          choices={bands.map((value) => ({ value, label: value }))}
          onChange={(value) => put({ ageBand: bands.find((it) => it === value) ?? "not known" })}
        />
      </div>
      <TickField
        label="An ambulance came"
        checked={facts.ambulance}
        put={(ambulance) => put({ ambulance })}
      />
      <p className="small">
        It is kept apart from the register and from everybody’s own data, and stays when a name is erased, as
        long as the insurer and the law ask. Whether it has to be reported to an authority is theirs to say.
      </p>
      <p>
        <button
          type="button"
          className="button button-main reach"
          disabled={missing || ahead}
          onClick={write}
        >
          Write it down and lock it
        </button>
        {missing ? <span className="small soft"> Who was hurt and what happened are needed.</span> : null}
      </p>
      <p>
        <Link
          to="/practice/$practice/accidents"
          params={{ practice: here.practiceId }}
          className="reach-link"
        >
          The accident book
        </Link>
      </p>
    </div>
  );
}

function startOf({ id, hall, now }: WrongHere): AccidentFacts {
  return {
    session: id,
    person: "",
    contact: "",
    ageBand: "not known",
    at: now,
    place: hall?.name ?? "",
    activity: "",
    happened: "",
    injury: "",
    firstAid: "",
    by: "",
    ambulance: false,
    witnesses: "",
    premises: "",
    told: "",
  };
}
