import { type ReactNode, useEffect, useId, useRef } from "react";

type Props = {
  readonly title: string;
  readonly close: () => void;
  readonly children: ReactNode;
};

/** What is filled in while the register stays behind it: the browser's own modal dialog, low down where a thumb reaches. */
export function SheetDialog({ title, close, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  return (
    <dialog ref={dialog} className="ask low" aria-labelledby={id} onClose={close}>
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
