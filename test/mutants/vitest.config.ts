import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const folder = process.env['MUTANTS_FOLDER']
if (folder === undefined) throw new Error('MUTANTS_FOLDER names the folder of the engine to test')

export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: [`test/engine/${folder}/**/*.test.ts`],
    environment: 'node',
    testTimeout: 60_000,
  },
})
