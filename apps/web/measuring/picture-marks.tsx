import { cornerName } from "#core/hall";
import type { Point } from "#kernels/geometry";
import { type KeyboardEvent, type MouseEvent, useId, useRef, useState } from "react";
import { useSheetWidth } from "../floor/use-sheet-width.ts";
import { arrowPoints } from "./arrow-points.ts";
import type { Trace, TypedDistance } from "./measuring.ts";
import type { Marking } from "./trace-steps.ts";

type Props = {
  readonly address: string;
  readonly size: NonNullable<Trace["size"]>;
  readonly trace: Trace;
  readonly marking: Marking;
  /** what the next mark will be, in words */
  readonly says: string;
  readonly onMark: (at: Point) => void;
  readonly onTakeBack: () => void;
};

const zooms = [1, 2, 3, 4];

/** The picture with its marks: a tap or a click marks, and so does Enter at the cross-hair that arrow keys move. */
export function PictureMarks(props: Props) {
  const { address, size, trace, marking, says, onMark, onTakeBack } = props;
  const room = useRef<HTMLDivElement>(null);
  const cross = useRef<SVGGElement>(null);
  const hint = useId();
  const [at, setAt] = useState<Point>([Math.round(size.width / 2), Math.round(size.height / 2)]);
  const [zoom, setZoom] = useState(1);
  // at first all of it is seen: as wide as the page, or as high as three quarters of the screen
  const across = Math.min(useSheetWidth(room), (0.75 * innerHeight * size.width) / size.height);
  const shown = across * zoom;
  /** picture points to a pixel of the screen */
  const unit = size.width / Math.max(1, shown);
  const onClick = (event: MouseEvent<HTMLButtonElement>) => {
    // a key pressed the button: there is no pointer, so the cross-hair marks
    if (event.detail === 0) {
      onMark(at);
      return;
    }
    const box = event.currentTarget.getBoundingClientRect();
    const point: Point = [
      ((event.clientX - box.left) / box.width) * size.width,
      ((event.clientY - box.top) / box.height) * size.height,
    ];
    setAt([Math.round(point[0]), Math.round(point[1])]);
    onMark(point);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const by = arrowPoints(event);
    if (by !== null) {
      event.preventDefault();
      setAt(([x, y]) => [held(x + by[0], size.width), held(y + by[1], size.height)]);
      requestAnimationFrame(() => cross.current?.scrollIntoView({ block: "nearest", inline: "nearest" }));
    } else if (event.key === "Backspace" || event.key === "Delete") {
      event.preventDefault();
      onTakeBack();
    }
  };
  return (
    <div className="stack-close trace-room" ref={room}>
      <p className="trace-says" aria-live="polite">
        {says}
      </p>
      <div className="trace-frame" role="application" aria-label="The picture of the plan">
        <button
          type="button"
          className="trace-target"
          style={{ width: `${shown}px` }}
          aria-label="Mark on the picture"
          aria-describedby={hint}
          onClick={onClick}
          onKeyDown={onKeyDown}
        >
          <svg viewBox={`0 0 ${size.width} ${size.height}`} aria-hidden="true">
            <image href={address} width={size.width} height={size.height} />
            <Distance distance={trace.known} unit={unit} name="known" />
            <Distance distance={trace.check} unit={unit} name="second" />
            <Corners corners={trace.corners} unit={unit} />
            <Cross at={at} unit={unit} mark={cross} isFor={marking} />
          </svg>
        </button>
      </div>
      <p className="row">
        <span>Show it</span>
        {zooms.map((it) => (
          <button
            key={it}
            type="button"
            className={it === zoom ? "button tape-chosen" : "button"}
            aria-pressed={it === zoom}
            onClick={() => setZoom(it)}
          >
            {it === 1 ? "whole" : `${it}×`}
          </button>
        ))}
      </p>
      <p className="small soft" id={hint}>
        With keys: arrows move the cross-hair by 10 points, with Shift by 50, with Alt by 1. Enter marks,
        Backspace takes the last corner back.
      </p>
      <output className="small soft trace-at">
        Cross-hair at {at[0]}, {at[1]} of {size.width}, {size.height}
      </output>
    </div>
  );
}

function held(value: number, most: number): number {
  return Math.min(most, Math.max(0, value));
}

type DistanceProps = { readonly distance: TypedDistance; readonly unit: number; readonly name: string };

function Distance({ distance: { from, to }, unit, name }: DistanceProps) {
  const ends = [from, to].filter((it) => it !== null);
  return (
    <g className={`trace-distance trace-${name}`}>
      {from !== null && to !== null ? (
        <>
          <line className="trace-halo" x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} />
          <line className="trace-line" x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} />
        </>
      ) : null}
      {ends.map(([x, y], index) => (
        <rect
          key={index}
          className="trace-mark"
          x={x - 6 * unit}
          y={y - 6 * unit}
          width={12 * unit}
          height={12 * unit}
        />
      ))}
    </g>
  );
}

function Corners({ corners, unit }: { readonly corners: readonly Point[]; readonly unit: number }) {
  const points = corners.map((it) => it.join(",")).join(" ");
  return (
    <g>
      {corners.length < 2 ? null : (
        <>
          <polygon className="trace-halo" points={points} />
          <polygon className="trace-line" points={points} />
        </>
      )}
      {corners.map(([x, y], index) => (
        <g key={index}>
          <circle className="trace-mark" cx={x} cy={y} r={6 * unit} />
          <text className="trace-letter" x={x + 9 * unit} y={y - 9 * unit} fontSize={17 * unit}>
            {cornerName(index)}
          </text>
        </g>
      ))}
    </g>
  );
}

type CrossProps = {
  readonly at: Point;
  readonly unit: number;
  readonly mark: React.Ref<SVGGElement>;
  readonly isFor: Marking;
};

function Cross({ at: [x, y], unit, mark, isFor }: CrossProps) {
  const arm = 16 * unit;
  const path = `M${x - arm} ${y}H${x + arm}M${x} ${y - arm}V${y + arm}`;
  return (
    <g ref={mark} className="trace-cross" data-for={isFor}>
      <path className="trace-halo" d={path} />
      <path className="trace-line" d={path} />
    </g>
  );
}
