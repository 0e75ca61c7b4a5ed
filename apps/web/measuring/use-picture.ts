import { useCallback, useEffect, useRef, useState } from "react";
import type { Problem } from "#core/words";
import { keepPicture, keptPicture } from "./kept-picture.ts";
import { type ScaledPicture, scaledPicture } from "./scaled-picture.ts";

export type PictureHere = {
  /** an address within this page; null while there is none, or none is here any more */
  readonly address: string | null;
  /** whether the device was asked */
  readonly asked: boolean;
  /** whether the device keeps it */
  readonly kept: boolean;
  readonly problems: readonly Problem[];
  readonly choose: (file: File) => Promise<void>;
};

/** Told the size of a chosen picture, and whether the one before was not on the device any more. */
export type OnChosen = (size: Pick<ScaledPicture, "width" | "height">, wasGone: boolean) => void;

/** The picture of one measuring, read from the device; a chosen one is scaled down, kept and told to `onChosen`. */
export function usePicture(id: string, onChosen: OnChosen): PictureHere {
  const [address, setAddress] = useState<string | null>(null);
  const [asked, setAsked] = useState(false);
  const [kept, setKept] = useState(true);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const made = useRef<string | null>(null);
  const show = useCallback((picture: Blob | null) => {
    if (made.current !== null) URL.revokeObjectURL(made.current);
    made.current = picture === null ? null : URL.createObjectURL(picture);
    setAddress(made.current);
  }, []);
  useEffect(() => {
    let here = true;
    const open = async () => {
      const found = await keptPicture(id);
      if (!here) return;
      if (made.current === null) show(found);
      setAsked(true);
    };
    void open();
    return () => {
      here = false;
      if (made.current !== null) URL.revokeObjectURL(made.current);
      made.current = null;
    };
  }, [id, show]);
  const choose = useCallback(
    async (file: File) => {
      const scaled = await scaledPicture(file);
      setProblems(scaled.ok ? [] : scaled.problems);
      if (!scaled.ok) return;
      const wasGone = made.current === null;
      setKept(await keepPicture(id, scaled.value.picture));
      show(scaled.value.picture);
      onChosen({ width: scaled.value.width, height: scaled.value.height }, wasGone);
    },
    [id, show, onChosen],
  );
  return { address, asked, kept, problems, choose };
}
