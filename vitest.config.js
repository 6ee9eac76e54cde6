import { defineConfig } from "vitest/config";

/** Every wait of every test, in one place: long enough for a slow machine with its cores busy, and no wait is a measurement. */
const patience = 120_000;

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    globalSetup: ["tests/global-setup.ts"],
    setupFiles: ["tests/seed.ts"],
    testTimeout: 2 * patience,
    hookTimeout: 2 * patience,
    expect: { poll: { timeout: patience, interval: 50 } },
    maxWorkers: 2,
  },
});
