import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/unit/**/*.test.{ts,tsx}', 'tests/sources/**/*.test.ts', 'tests/faults/**/*.test.ts'],
    environment: 'node',
    testTimeout: 30_000,
  },
});
