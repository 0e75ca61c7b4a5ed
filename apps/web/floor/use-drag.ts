import type { Point } from "#kernels/geometry";
import { type PointerEvent, type RefObject, useEffect, useRef, useState } from "react";
import { flushSync } from "react-dom";
import { noteMove } from "./drag-to-drawn.ts";
import type { FloorPart } from "./floor-part.ts";
import { dragged, type Handle, handleKey } from "./handle.ts";
import type { FloorHistory } from "./use-floor-history.ts";
import { floorDelta, type Viewport } from "./viewport.ts";

type Drag = {
  readonly pointer: number;
  readonly handle: Handle;
  /** where the pointer went down, in the window's pixels */
  readonly from: Point;
  /** millimetres of floor to a pixel of the window */
  readonly reach: number;
  readonly base: FloorPart;
};

export type Dragging = {
  /** the handle under the pointer and the sheet as it was when the drag began: it must not shift under the hand */
  readonly now: { readonly handle: Handle; readonly view: Viewport } | null;
  readonly start: (handle: Handle, event: PointerEvent) => void;
  readonly move: (event: PointerEvent) => void;
  readonly end: (event: PointerEvent) => void;
  readonly leave: () => void;
};

/** Pixels within which a corner is in line with the next one: about a hand's tremble, some 10 cm of a usual hall. */
const IN_LINE = 5;

/** Drags a handle of the floor: shown at most once a frame, settled when the pointer is lifted. */
export function useDrag(svg: RefObject<SVGSVGElement | null>, floor: FloorHistory, view: Viewport): Dragging {
  const drag = useRef<Drag | null>(null);
  const frame = useRef(0);
  const latest = useRef<{ readonly at: Point; readonly time: number } | null>(null);
  const [now, setNow] = useState<Dragging["now"]>(null);
  useEffect(() => () => cancelAnimationFrame(frame.current), []);

  // by how far the pointer went, not by where it is: words above the drawing may push the sheet down meanwhile
  const placed = ({ base, handle, from, reach }: Drag, [x, y]: Point): FloorPart =>
    dragged(base, handle, floorDelta([x - from[0], y - from[1]], reach), IN_LINE * reach);
  const stop = () => {
    cancelAnimationFrame(frame.current);
    frame.current = 0;
    drag.current = null;
    latest.current = null;
    setNow(null);
  };
  const draw = () => {
    frame.current = 0;
    const [running, last] = [drag.current, latest.current];
    if (running === null || last === null) return;
    const part = placed(running, last.at);
    noteMove(part, last.time);
    // in this frame, not in a task after it
    flushSync(() => floor.preview(part));
  };
  return {
    now,
    start: (handle, event) => {
      if (event.button !== 0 || svg.current === null || drag.current !== null) return;
      svg.current.setPointerCapture(event.pointerId);
      const reach = floorPerPixel(svg.current, view);
      const from: Point = [event.clientX, event.clientY];
      drag.current = { pointer: event.pointerId, handle, from, reach, base: floor.shown };
      setNow({ handle, view });
    },
    move: (event) => {
      const running = drag.current;
      if (running === null || running.pointer !== event.pointerId) return;
      latest.current = { at: [event.clientX, event.clientY], time: event.timeStamp };
      if (frame.current === 0) frame.current = requestAnimationFrame(draw);
    },
    end: (event) => {
      const running = drag.current;
      if (running === null || running.pointer !== event.pointerId) return;
      const last = latest.current;
      stop();
      if (last !== null)
        floor.settle(placed(running, last.at), `drag ${handleKey(running.handle)} ${event.timeStamp}`);
    },
    leave: () => {
      if (drag.current === null) return;
      stop();
      floor.preview(null);
    },
  };
}

/** The drawing may be shown smaller or larger than its own pixels. */
function floorPerPixel(svg: SVGSVGElement, view: Viewport): number {
  const shown = svg.getBoundingClientRect().width;
  const zoom = shown === 0 ? 1 : view.width / shown;
  return zoom / view.scale;
}
