import { type ChangeEvent, useId } from "react";
import { ProblemList } from "../parts/problem-list.tsx";
import type { PictureHere } from "./use-picture.ts";

type Props = { readonly picture: PictureHere; readonly has: boolean };

/** A photo taken now or a picture that is there already; it stays on the device. */
export function PictureChoice({ picture, has }: Props) {
  const id = useId();
  const take = async (event: ChangeEvent<HTMLInputElement>) => {
    const box = event.target;
    const file = box.files?.[0];
    if (file !== undefined) await picture.choose(file);
    // the same file can be chosen again
    box.value = "";
  };
  return (
    <div className="stack">
      {has ? (
        <p>Another picture begins the marks anew; distances that were typed stay.</p>
      ) : (
        <p>
          Take the plan flat-on: the camera straight above or straight before it, its edges even with those of
          the screen. A leaning picture bends every length.
        </p>
      )}
      <div className="row tape-pictures">
        <div className="stack-close">
          <label htmlFor={`${id}-take`}>{has ? "Another photo" : "Take a photo"}</label>
          <input
            id={`${id}-take`}
            type="file"
            accept="image/*"
            capture="environment"
            onChange={(event) => void take(event)}
          />
        </div>
        <div className="stack-close">
          <label htmlFor={`${id}-choose`}>{has ? "Or another picture" : "Or choose a picture"}</label>
          <input id={`${id}-choose`} type="file" accept="image/*" onChange={(event) => void take(event)} />
        </div>
      </div>
      <p className="small">
        <strong>The picture stays on this device.</strong> It is sent nowhere; only the outline becomes part
        of a hall.
      </p>
      <ProblemList problems={picture.problems} />
      {picture.kept ? null : (
        <p className="problem-note">This device does not keep the picture: do not close the page.</p>
      )}
    </div>
  );
}
