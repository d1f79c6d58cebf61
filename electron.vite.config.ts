import { resolve } from 'node:path'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'electron-vite'

const here = (path: string) => resolve(import.meta.dirname, path)

export default defineConfig({
  main: {
    build: {
      externalizeDeps: true,
      rolldownOptions: {
        input: {
          electron: here('main/hosts/electron/main.ts'),
          browser: here('main/hosts/browser/main.ts'),
          // A process and threads of their own, found beside these by worker-file.ts.
          'season-worker': here('main/service/season-worker.ts'),
          'export-thread': here('main/service/export-thread.ts'),
          'safekeeping-thread': here('main/cellar/safekeeping-thread.ts'),
        },
      },
    },
  },
  preload: {
    build: {
      // A sandboxed preload must be one CommonJS file that requires nothing but 'electron'.
      externalizeDeps: false,
      rolldownOptions: {
        input: { preload: here('main/hosts/electron/preload.ts') },
        output: { format: 'cjs', entryFileNames: '[name].cjs', codeSplitting: false },
      },
    },
  },
  renderer: {
    root: here('renderer'),
    plugins: [react()],
    build: { minify: true, rolldownOptions: { input: here('renderer/index.html') } },
  },
})
