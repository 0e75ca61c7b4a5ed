/** The oldest Node that Hallful runs on, as package.json says under "engines". */
const OLDEST = [20, 19];

export function nodeIsNewEnough() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major > OLDEST[0] || (major === OLDEST[0] && minor >= OLDEST[1])) return true;
  console.error(`Hallful needs Node ${OLDEST.join(".")} or newer; this is ${process.versions.node}.`);
  console.error("Install a newer Node from https://nodejs.org and start again.");
  return false;
}
