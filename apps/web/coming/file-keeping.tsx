import { useState } from "react";
import { forgetVisits, keepVisits, type KeptVisits } from "./kept-visits.ts";

type Props = {
  readonly practice: string;
  readonly visits: KeptVisits;
  readonly kept: boolean;
  readonly put: (kept: KeptVisits) => void;
  readonly forgotten: () => void;
};

/** Where the names are, and what she may do about it. */
export function FileKeeping({ practice, visits, kept, put, forgotten }: Props) {
  const [trouble, setTrouble] = useState("");
  const keep = async () => {
    const done = await keepVisits(practice, visits);
    setTrouble(done ? "" : "This device does not let it be kept: it is gone when you leave this page.");
    if (done) put(visits);
  };
  const forget = async () => {
    const done = await forgetVisits(practice);
    setTrouble(
      done ? "" : "This device does not let it be looked up: clear this site’s data in the browser.",
    );
    if (done) forgotten();
  };
  return (
    <div className="stack-close">
      <p className="small">
        {kept
          ? "The list, with its names, is kept in this browser on this device until you forget it. Whoever uses this browser can open it. It is not sent anywhere and is in no backup."
          : "The list, with its names, is only on this page: it is not sent anywhere and is gone when you leave it."}
      </p>
      <p className="row">
        {kept ? null : (
          <button type="button" className="button" onClick={() => void keep()}>
            Keep it on this device
          </button>
        )}
        <button type="button" className="button" onClick={() => void forget()}>
          Forget this list
        </button>
      </p>
      <output>{trouble}</output>
    </div>
  );
}
