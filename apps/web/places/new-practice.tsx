import { type FormEvent, useState } from "react";
import type { PracticeDocument } from "#core/words";
import { ProblemList } from "../parts/problem-list.tsx";
import { PracticeFields } from "./practice-fields.tsx";
import { useBegin } from "./use-begin.ts";

/** Begins an empty practice. */
export function NewPractice() {
  const [document, setDocument] = useState(likelyPractice);
  const [unnamed, setUnnamed] = useState(false);
  const { begin, busy, problems } = useBegin();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const name = document.name.trim();
    setUnnamed(name === "");
    if (name !== "") begin("empty", { ...document, name });
  };
  return (
    <form className="stack holds-fields" onSubmit={submit} noValidate>
      <h2 id="begin">Begin an empty practice</h2>
      <div>
        <PracticeFields document={document} onChange={setDocument} unnamed={unnamed} />
      </div>
      <p className="row">
        <button type="submit" className="button button-main" disabled={busy}>
          Begin
        </button>
        <span className="small soft">You can change all of this later.</span>
      </p>
      <ProblemList problems={problems} />
    </form>
  );
}

/** What the device suggests: a teacher in Chicago gets dollars and feet, one in London pounds and metres. */
function likelyPractice(): PracticeDocument {
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const american = zone.startsWith("America/") && navigator.language.startsWith("en-US");
  return {
    name: "",
    currency: american ? "USD" : zone === "Europe/London" || zone === "UTC" ? "GBP" : "EUR",
    zone: zone === "UTC" ? "Europe/London" : zone,
    locale: american ? "en-US" : "en-GB",
    units: american ? "feet" : "metric",
  };
}
