import { useId } from "react";
import { FieldRow } from "../fields/field-row.tsx";
import type { Lookup, PersonHere } from "../record/lookup.ts";

/** Who it is about: somebody known, or a name to be written down under an id made here. */
export type PersonAsked = { readonly id: string; readonly name: string; readonly known: boolean };

type Props = {
  readonly label: string;
  readonly asked: PersonAsked;
  readonly look: Lookup;
  readonly put: (asked: PersonAsked) => void;
  /** an id for whoever is not known yet */
  readonly fresh: () => string;
};

/** A name, typed; whoever is known by a like name can be chosen under it. */
export function PersonField({ label, asked, look, put, fresh }: Props) {
  const id = useId();
  const like = asked.known ? [] : alike(look.people, asked.name);
  return (
    <div>
      <FieldRow id={id} label={label} wide>
        <input
          id={id}
          className="field-box field-words"
          type="text"
          autoComplete="off"
          autoCapitalize="words"
          value={asked.name}
          onChange={(event) =>
            put({ id: asked.known ? fresh() : asked.id, name: event.target.value, known: false })
          }
        />
      </FieldRow>
      <output className="small soft">{asked.known ? "Somebody you know." : ""}</output>
      {like.length > 0 ? (
        <ul className="list-plain big-choices" aria-label="Somebody you know?">
          {like.map((it) => (
            <li key={it.id}>
              <button
                type="button"
                className="button reach"
                onClick={() => put({ id: it.id, name: it.state.contact.name, known: true })}
              >
                {it.state.contact.name}
              </button>
            </li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}

const MOST_ALIKE = 4;

/** Whoever has the letters typed at the beginning of one of her names. */
function alike(people: readonly PersonHere[], typed: string): readonly PersonHere[] {
  const wanted = plain(typed).trim();
  if (wanted === "") return [];
  return people
    .filter(({ state }) => ` ${plain(state.contact.name)}`.includes(` ${wanted}`))
    .slice(0, MOST_ALIKE);
}

function plain(name: string): string {
  return name.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
}
