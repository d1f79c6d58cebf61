import { defineConfig } from '@playwright/test'
import { chromiumLaunch } from './e2e/chromium.ts'

export default defineConfig({
  testDir: './e2e',
  outputDir: '../out/test-results',
  workers: 1,
  timeout: 30_000,
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
