import { type ReactNode, useId, useLayoutEffect, useRef } from "react";

type Props = {
  readonly title: string;
  readonly close: () => void;
  readonly children: ReactNode;
};

/** What is filled in while the register stays behind it: the browser's own modal dialog, low down where a thumb reaches. */
export function SheetDialog({ title, close, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useLayoutEffect(() => {
    const shown = dialog.current;
    shown?.showModal();
    // closed while it still stands in the page, so that the focus goes back to what opened it
    return () => shown?.close();
  }, []);
  const closed = () => {
    if (dialog.current?.open !== true) close();
  };
  return (
    <dialog ref={dialog} className="ask low" aria-labelledby={id} onClose={closed}>
      <div className="stack">
        <p className="row low-head">
          <strong id={id}>{title}</strong>
          <button type="button" className="button reach" onClick={() => dialog.current?.close()}>
            Back
          </button>
        </p>
        {children}
      </div>
    </dialog>
  );
}
