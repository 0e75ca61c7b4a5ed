import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["{kernels,core,app,adapters,apps,checks,testing,demo,bench}/**/*.test.{ts,tsx}"],
    exclude: ["**/browser/**", "node_modules/**", "dist/**"],
    setupFiles: ["testing/one-seed.ts"],
    maxWorkers: 2,
    testTimeout: 20_000,
    // the contrast test reads the colours; other style sheets stay empty in tests
    css: { include: [/look\/tokens\.css/] },
  },
});
