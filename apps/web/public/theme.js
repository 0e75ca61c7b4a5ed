// Runs before the first paint, so that a chosen dark page never flashes light.
try {
  const chosen = localStorage.getItem("hallful:theme");
  if (chosen === "light" || chosen === "dark") document.documentElement.dataset.theme = chosen;
} catch {
  // storage is shut off: the device's own setting stands
}
