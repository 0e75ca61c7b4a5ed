import "./import.css";
import type { Locale } from "#core/words";
import { useId } from "react";
import { dayWords } from "../words/dates.ts";
import { sessionWords } from "./taking-words.ts";
import type { Clash } from "./taking.ts";

type Props = {
  readonly clashes: readonly Clash[];
  /** the dates of which the file's figures are taken */
  readonly theFiles: ReadonlySet<string>;
  readonly put: (theFiles: ReadonlySet<string>) => void;
  readonly locale: Locale;
};

/** Dates that are in the record with other figures: for each she says which stands. */
export function Clashes({ clashes, theFiles, put, locale }: Props) {
  const count = clashes.length === 1 ? "1 date is" : `${clashes.length} dates are`;
  const choose = (date: string, file: boolean) => {
    const others = [...theFiles].filter((it) => it !== date);
    put(new Set(file ? [...others, date] : others));
  };
  return (
    <div className="stack-close">
      <p>
        <strong>{count} in the record already, with other figures.</strong> What is there stays, unless you
        take the file’s.
      </p>
      {clashes.length > 1 ? (
        <p className="row">
          <button type="button" className="button" onClick={() => put(new Set())}>
            Keep all that is there
          </button>
          <button
            type="button"
            className="button"
            onClick={() => put(new Set(clashes.map(({ date }) => date)))}
          >
            Take all of the file’s
          </button>
        </p>
      ) : null}
      {clashes.map((it) => (
        <OneClash
          key={it.date}
          clash={it}
          day={dayWords(it.date, locale)}
          file={theFiles.has(it.date)}
          choose={(file) => choose(it.date, file)}
        />
      ))}
    </div>
  );
}

type OneProps = {
  readonly clash: Clash;
  readonly day: string;
  readonly file: boolean;
  readonly choose: (file: boolean) => void;
};

function OneClash({ clash, day, file, choose }: OneProps) {
  const name = useId();
  return (
    <fieldset className="clash">
      <legend>{day}</legend>
      <label>
        <input type="radio" name={name} checked={!file} onChange={() => choose(false)} />
        Keep what is there: {sessionWords(clash.there)}
      </label>
      <label>
        <input type="radio" name={name} checked={file} onChange={() => choose(true)} />
        Take the file’s: {sessionWords(clash.file)}
      </label>
    </fieldset>
  );
}
