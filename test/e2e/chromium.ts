/** Which Chromium the end-to-end tests drive, and how it is started. */
import { existsSync } from 'node:fs'
import { chromium, type LaunchOptions } from '@playwright/test'

export const howToGetChromium =
  'no Chromium found: install one (`apt-get install chromium`, or `npx playwright install chromium`)'

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
]

export const findChromium = (): string | undefined =>
  [...places, chromium.executablePath()].find((file) => existsSync(file))

export function chromiumLaunch(): LaunchOptions {
  const executablePath = findChromium()
  return {
    ...(executablePath !== undefined && { executablePath }),
    args: [
      // Chromium refuses to run as root with its sandbox.
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--disable-gpu',
      '--disable-quic',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
    ],
  }
}
