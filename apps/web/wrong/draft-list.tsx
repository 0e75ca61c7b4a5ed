import { useState } from "react";
import { Show } from "../parts/show.tsx";
import { nameOf } from "../tonight/register-rows.ts";
import type { Drafted } from "./kept-drafts.ts";
import type { WrongHere } from "./wrong-here.ts";

type Props = { readonly here: WrongHere; readonly drafts: Drafted };

/** What is to be sent and hung up, ready to be copied; only those with a place or on the list are written to. */
export function DraftList({ here, drafts: { messages, notice } }: Props) {
  return (
    <>
      <Show summary={`${messages.length} messages, one for each of them`}>
        <ul className="list-plain ledger">
          {messages.map(({ person, text }) => (
            <li key={`${person} ${text}`} className="stack-close">
              <strong>{nameOf(here.record.look, person)}</strong>
              <span className="small soft">{reachOf(here, person)}</span>
              <p>{text}</p>
              <CopyButton text={text} what={`the message to ${nameOf(here.record.look, person)}`} />
            </li>
          ))}
        </ul>
      </Show>
      <Show summary="A notice for the door">
        <p>{notice}</p>
        <CopyButton text={notice} what="the notice" />
      </Show>
    </>
  );
}

function reachOf({ record }: WrongHere, person: string): string {
  const contact = record.look.person(person)?.contact;
  const ways = [contact?.phone ?? "", contact?.email ?? ""].filter((it) => it !== "");
  return ways.length === 0 ? "No phone or address is written down." : ways.join(", ");
}

function CopyButton({ text, what }: { readonly text: string; readonly what: string }) {
  const [said, setSaid] = useState("");
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setSaid("Copied.");
    } catch {
      setSaid("This browser does not let a page copy; mark the words and copy them.");
    }
  };
  return (
    <p className="row">
      <button type="button" className="button" aria-label={`Copy ${what}`} onClick={() => void copy()}>
        Copy
      </button>
      <output className="small">{said}</output>
    </p>
  );
}
