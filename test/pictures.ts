/** `npm run pictures`: the README's pictures, taken of the demo as it is today. */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Page } from '@playwright/test'
import { chromiumLaunch } from './e2e/chromium.ts'
import { startHost } from './e2e/host-process.ts'

interface Picture {
  readonly name: string
  readonly path: string
  readonly waitFor: string
  /** What begins a job, whose end is waited for. */
  readonly press?: string
  readonly height: number
}

const pictures: readonly Picture[] = [
  { name: 'today', path: '/today', waitFor: 'Today', height: 900 },
  { name: 'batch', path: '/batches/damson-2026', waitFor: 'Ledger', height: 1320 },
  { name: 'shelf', path: '/shelf', waitFor: 'Shelf', height: 900 },
  { name: 'season', path: '/season', waitFor: 'Season', press: 'Make the plan', height: 1000 },
  { name: 'bench', path: '/bench', waitFor: 'Reduce spirit', height: 860 },
]

const target = join(import.meta.dirname, '..', '.github', 'pictures')
const folder = mkdtempSync(join(tmpdir(), 'ratafia-pictures-'))
const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
const browser = await chromium.launch(chromiumLaunch())
try {
  mkdirSync(target, { recursive: true })
  for (const { name, path, waitFor, press, height } of pictures) {
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
    if (press !== undefined) await pressAndWait(page, press)
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

async function pressAndWait(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name }).first().click()
  await page.getByRole('progressbar').first().waitFor()
  await page.getByRole('progressbar').waitFor({ state: 'detached', timeout: 120_000 })
}
