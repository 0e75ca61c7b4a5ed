import { defineConfig } from "vitest/config";

// Real Chromium, one page at a time: two cores, and a story is a sequence.
export default defineConfig({
  test: {
    include: ["checks/browser/**/*.test.ts"],
    maxWorkers: 1,
    fileParallelism: false,
    testTimeout: 90_000,
    hookTimeout: 60_000,
  },
});
