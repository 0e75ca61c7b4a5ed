import { type RefObject, useEffect } from "react";

/**
 * Keeps the page from scrolling under a finger that landed on a handle. Chromium 156 lets the page take
 * the drag from shapes inside an svg although they have `touch-action: none`, so the touch itself is refused.
 */
export function useStillPage(svg: RefObject<SVGSVGElement | null>): void {
  useEffect(() => {
    const node = svg.current;
    const refuse = (event: TouchEvent) => {
      const { target } = event;
      if (target instanceof Element && target.closest(".floor-handle") !== null) event.preventDefault();
    };
    node?.addEventListener("touchstart", refuse, { passive: false });
    return () => node?.removeEventListener("touchstart", refuse);
  }, [svg]);
}
