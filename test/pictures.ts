/** `npm run pictures`: the README's pictures, taken of the demo as it is today. */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { chromiumLaunch } from './e2e/chromium.ts'
import { startHost } from './e2e/host-process.ts'

const pictures = [
  { name: 'batch', path: '/batches/damson-2026', waitFor: 'Ledger', height: 1320 },
  { name: 'bench', path: '/bench', waitFor: 'Reduce spirit', height: 860 },
] as const

const target = join(import.meta.dirname, '..', '.github', 'pictures')
const folder = mkdtempSync(join(tmpdir(), 'ratafia-pictures-'))
const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
const browser = await chromium.launch(chromiumLaunch())
try {
  mkdirSync(target, { recursive: true })
  for (const { name, path, waitFor, height } of pictures) {
    const page = await browser.newPage({
      viewport: { width: 1280, height },
      colorScheme: 'light',
      reducedMotion: 'reduce',
    })
    await page.goto(host.link)
    await page.getByRole('heading', { name: 'Today', level: 1 }).waitFor()
    await page.evaluate((hash) => {
      location.hash = hash
    }, path)
    await page.getByRole('heading', { name: waitFor }).first().waitFor()
    // Charts and answers come a moment after the headings, and nothing says when the last is drawn.
    await page.waitForTimeout(2000)
    await page.screenshot({ path: join(target, `${name}.png`) })
    await page.close()
    console.log(`${name}.png`)
  }
} finally {
  await browser.close()
  await host.stop()
  rmSync(folder, { recursive: true })
}
