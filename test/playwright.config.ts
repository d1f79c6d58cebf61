import { availableParallelism } from 'node:os'
import { defineConfig } from '@playwright/test'
import { chromiumLaunch } from './e2e/chromium.ts'

export default defineConfig({
  testDir: './e2e',
  outputDir: '../out/test-results',
  // A browser and its host are two processes that wait for each other: two tests fill two cores.
  workers: Math.min(2, availableParallelism()),
  timeout: 60_000,
  forbidOnly: Boolean(process.env['CI']),
  reporter: [['list']],
  use: {
    launchOptions: chromiumLaunch(),
    locale: 'en-GB',
    timezoneId: 'UTC',
    colorScheme: 'light',
    screenshot: 'only-on-failure',
  },
})
