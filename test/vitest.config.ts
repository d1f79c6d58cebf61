import { defineConfig } from 'vitest/config'

const root = new URL('..', import.meta.url).pathname

/** No test is a stopwatch: a slow machine must only take longer. */
const testTimeout = 60_000

export default defineConfig({
  test: {
    watch: false,
    // Left to itself the runner keeps one of two cores free, and a machine of CI has but two.
    maxWorkers: 2,
    projects: [
      {
        root,
        test: {
          name: 'node',
          include: [
            'test/{architecture,shared,engine,cellar,papers,service,hosts,demo}/**/*.test.ts',
          ],
          environment: 'node',
          // Processes: V8 of Node 24 may end a whole process when a thread with WebAssembly in it
          // goes (nodejs/node issue 64500), and the solver is WebAssembly.
          pool: 'forks',
          // Nothing here keeps state between files, and starting a worker for each costs more than they do.
          isolate: false,
          testTimeout,
        },
      },
      {
        root,
        // Packs and runs what is built, and is a step of its own after the build.
        test: {
          name: 'packages',
          include: ['test/packages/**/*.test.ts'],
          environment: 'node',
          pool: 'forks',
          testTimeout: 10 * testTimeout,
          hookTimeout: 10 * testTimeout,
        },
      },
      {
        root,
        test: {
          name: 'screens',
          include: ['test/screens/**/*.test.{ts,tsx}'],
          environment: 'jsdom',
          pool: 'threads',
          testTimeout,
        },
      },
    ],
  },
})
