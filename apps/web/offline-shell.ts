/**
 * Keeps the shell on the device, so that planning works in a hall with no signal. Only the built pages
 * have an offline worker, and browsers allow one on https and on this machine only.
 */
export function keepShellOffline(): void {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  globalThis.addEventListener("load", () => {
    // without it the page works all the same, but not without a signal
    navigator.serviceWorker.register("/offline.js").catch(() => undefined);
  });
  reloadWhenPartsAreGone();
}

/** After an update the server no longer has the old page's later parts: load the new page, once. */
function reloadWhenPartsAreGone(): void {
  globalThis.addEventListener("vite:preloadError", (event) => {
    const last = Number(sessionStorage.getItem("hallful:reloaded") ?? "0");
    if (Date.now() - last < 60_000) return;
    sessionStorage.setItem("hallful:reloaded", String(Date.now()));
    event.preventDefault();
    location.reload();
  });
}
