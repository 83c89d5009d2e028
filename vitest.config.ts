import { mergeConfig } from 'vite';
import { defineConfig } from 'vitest/config';
import viteConfig from './vite.config.ts';

const node = {
  environment: 'node',
  testTimeout: 0,
  hookTimeout: 0,
  // What is waited for comes when it comes; a slow machine takes its time.
  expect: { poll: { timeout: 60_000 } },
} as const;

export default mergeConfig(
  viteConfig,
  defineConfig({
    test: {
      // Two workers: a browser or a spreadsheet beside each test fills the cores of a small machine.
      maxWorkers: 2,
      projects: [
        {
          extends: true,
          test: {
            ...node,
            name: 'unit',
            include: ['tests/unit/**/*.test.ts', 'templates/**/*.test.ts'],
          },
        },
        {
          extends: true,
          test: { ...node, name: 'standards', include: ['tests/standards/**/*.test.ts'] },
        },
        {
          extends: true,
          test: {
            ...node,
            name: 'browser',
            include: ['tests/browser/**/*.test.ts'],
            globalSetup: ['tests/support/server.ts'],
          },
        },
        {
          extends: true,
          // Of hours, for `npm run hard` alone.
          test: {
            ...node,
            name: 'hard',
            include: ['tests/hard/**/*.test.ts'],
            globalSetup: ['tests/support/server.ts'],
          },
        },
      ],
    },
  }),
);
