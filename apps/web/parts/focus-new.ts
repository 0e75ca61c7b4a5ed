/** For `ref`: what appears in the place of what had the focus takes it, so that it is not lost. */
export function focusNew(node: HTMLElement | null): void {
  node?.focus({ preventScroll: true });
}
