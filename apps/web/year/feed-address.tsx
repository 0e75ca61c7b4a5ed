import type { YearPlan } from "#core/year";
import { useId, useState } from "react";
import { newId } from "../api/new-id.ts";
import { Show } from "../parts/show.tsx";
import type { ChangePlan } from "./plan-form.ts";

type Props = { readonly plan: YearPlan; readonly change: ChangePlan };

/** The secret address by which a calendar program follows the year, made and taken back here. */
export function FeedAddress({ plan, change }: Props) {
  const { feed } = plan;
  const put = (secret: string | null) => change((before) => ({ ...before, feed: secret }));
  return (
    <Show
      summary={
        feed === null ? "Let a calendar program follow the year" : "A calendar program can follow the year"
      }
    >
      <p className="small soft">
        A calendar program on this computer asks this address again and again, so that what you change here
        changes there. Whoever has the address sees where and when you teach, and nothing else of you.
      </p>
      {feed === null ? (
        <p>
          <button type="button" className="button" onClick={() => put(newId())}>
            Make an address
          </button>
        </p>
      ) : (
        <Address
          address={`${location.origin}/calendar/${feed}.ics`}
          renew={() => put(newId())}
          takeBack={() => put(null)}
        />
      )}
    </Show>
  );
}

type AddressProps = {
  readonly address: string;
  readonly renew: () => void;
  readonly takeBack: () => void;
};

function Address({ address, renew, takeBack }: AddressProps) {
  const id = useId();
  const [told, setTold] = useState("");
  const copy = () => {
    navigator.clipboard.writeText(address).then(
      () => setTold("Copied."),
      () => setTold("It could not be copied: mark it and copy it yourself."),
    );
  };
  return (
    <>
      <div className="stack-close">
        <label htmlFor={id}>The address of your calendar</label>
        <input
          id={id}
          className="field-box field-words"
          readOnly
          value={address}
          onFocus={(event) => event.target.select()}
        />
      </div>
      <p className="row">
        <button type="button" className="button" onClick={copy}>
          Copy it
        </button>
        <button type="button" className="link-button" onClick={renew}>
          Make another, this one ends
        </button>
        <button type="button" className="link-button" onClick={takeBack}>
          Take it back
        </button>
        <output>{told}</output>
      </p>
    </>
  );
}
