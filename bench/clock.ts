/** Milliseconds since some fixed moment. */
export type Clock = () => number;

export const wallClock: Clock = () => performance.now();

/**
 * The time the process itself has used, its helpers' included: never less than the time on an idle machine, and the
 * same on one that others use. The solver's limits in seconds stay those of the wall.
 */
export const ownClock: Clock = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
