import { defineConfig } from "vitest/config";

// Real Chromium, two files at a time on two cores, each with a browser and a server of its own: 300 s for all of them
// where one after another took 500 s. Within a file a story is a sequence.
export default defineConfig({
  test: {
    include: ["checks/browser/**/*.test.ts"],
    maxWorkers: 2,
    testTimeout: 90_000,
    hookTimeout: 60_000,
  },
});
