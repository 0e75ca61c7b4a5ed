import { type RefObject, useLayoutEffect, useState } from "react";

/** The width of an element in CSS pixels, kept up to date; `before` until it is known, as on paper or a server. */
export function useSheetWidth(element: RefObject<HTMLElement | null>, before = 640): number {
  const [width, setWidth] = useState(before);
  useLayoutEffect(() => {
    const node = element.current;
    if (node === null) return undefined;
    const measure = () => {
      if (node.clientWidth > 0) setWidth(node.clientWidth);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(node);
    return () => observer.disconnect();
  }, [element]);
  return width;
}
