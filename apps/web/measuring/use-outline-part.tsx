import { useQueryClient } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { type HallDocument } from "#core/hall";
import { metresFromMillimetres } from "#core/words";
import type { Polygon } from "#kernels/geometry";
import { useMemo } from "react";
import { beginDocument } from "../drafts/keepers.ts";
import { saveWords } from "../drafts/save-words.ts";
import { type Opened, useDraft } from "../drafts/use-draft.ts";
import { usePractice } from "../drafts/use-practice.ts";
import { WordsField } from "../fields/words-field.tsx";
import { nameOr } from "../places/hall-name.ts";
import { newHall } from "../places/new-hall.ts";
import { floorBefore, hallFloor, replacedWords } from "./hall-floor.ts";
import type { OpenedMeasuring } from "./use-measuring.ts";

type Props = {
  readonly practice: string;
  readonly opened: OpenedMeasuring;
  /** null where there is none yet */
  readonly outline: Polygon | null;
  /** the outline is being worked out anew */
  readonly pending?: boolean;
  readonly caution?: string | null;
};

/** Makes the outline the floor of a hall: of a new one, or of one that stands. */
export function UseOutlinePart(props: Props) {
  const { practice, opened, caution = null } = props;
  const { measuring } = opened;
  const hall = useDraft(practice, "halls", measuring.hall);
  return (
    <section className="stack" aria-labelledby="use">
      <h2 id="use">Use this outline</h2>
      {caution === null ? null : <p className="caution">{caution}</p>}
      {hall === null ? <ForNewHall {...props} /> : <ForHall {...props} hall={hall} />}
    </section>
  );
}

function ForNewHall({ practice: id, opened, outline, pending = false }: Props) {
  const { measuring, change } = opened;
  const { practice } = usePractice(id);
  const queries = useQueryClient();
  const begin = () => {
    if (outline === null) return;
    const metres = outline.map(([x, y]): [number, number] => [
      metresFromMillimetres(x),
      metresFromMillimetres(y),
    ]);
    const fresh = newHall(practice.currency, { name: measuring.name.trim() });
    const hall = beginDocument(queries, id, "halls", { ...fresh, outline: metres });
    change((before) => ({ ...before, hall, used: true, before: null }));
  };
  return (
    <>
      {measuring.hall === null ? null : <p>The hall that was measured is no longer here.</p>}
      <div className="holds-fields measure">
        <WordsField
          label="Name of the hall"
          value={measuring.name}
          onChange={(name) => change((before) => ({ ...before, name }))}
        />
      </div>
      <p>
        <button
          type="button"
          className="button button-main tape-wide"
          disabled={outline === null || pending || measuring.name.trim() === ""}
          onClick={begin}
        >
          Make it a new hall
        </button>
      </p>
      <p className="soft small">
        {outline === null
          ? "There is no outline yet."
          : measuring.name.trim() === ""
            ? "Give the hall a name first."
            : "Doors, stage and pillars are put in on the hall’s own page."}
      </p>
    </>
  );
}

type ForHallProps = Props & { readonly hall: Opened<HallDocument> };

function ForHall({ practice, opened, hall, outline, pending = false }: ForHallProps) {
  const { measuring, change } = opened;
  const { document } = hall.draft;
  const name = nameOr(document.name, "the hall");
  const floor = useMemo(() => (outline === null ? null : hallFloor(document, outline)), [document, outline]);
  const use = () => {
    if (floor === null) return;
    change((it) => ({ ...it, before: floorBefore(document), used: true }));
    hall.keeper.change(() => floor.document);
  };
  const putBack = () => {
    const { before } = measuring;
    if (before === null) return;
    hall.keeper.change((it) => ({ ...it, ...before }));
    change((it) => ({ ...it, before: null, used: false }));
  };
  const isUsed = floor?.isSame === true;
  return (
    <>
      <div className="stack-close" aria-live="polite">
        {floor === null ? <p className="soft">There is no outline yet.</p> : null}
        {isUsed ? (
          <p>
            This outline is the floor of{" "}
            <Link to="/practice/$practice/halls/$id" params={{ practice, id: measuring.hall ?? "" }}>
              {name}
            </Link>
            . {saveWords(hall.draft.state, false, hall.keeper.onDevice())}
          </p>
        ) : null}
        {floor === null || isUsed ? null : (
          <ul className="list-plain listed">
            {replacedWords(document, floor).map((it) => (
              <li key={it}>{it}</li>
            ))}
          </ul>
        )}
      </div>
      <p className="row">
        {floor === null || isUsed ? null : (
          <button type="button" className="button button-main tape-wide" disabled={pending} onClick={use}>
            Use it for {name}
          </button>
        )}
        {measuring.before === null ? null : (
          <button type="button" className="button" onClick={putBack}>
            Put back the floor that was there
          </button>
        )}
      </p>
    </>
  );
}
