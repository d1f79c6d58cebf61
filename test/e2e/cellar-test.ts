/** `test` with a running Ratafia over a book of its own, for specs that work on screens. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { test as plain } from '@playwright/test'
import { startHost, type HostProcess } from './host-process.ts'

interface Fixtures {
  /** A folder for this test alone; gone afterwards. */
  folder: string
  /** Ratafia over an empty book; `page` has it open. */
  ratafia: HostProcess
}

export const test = plain.extend<Fixtures>({
  // Playwright reads what a fixture needs from this pattern.
  // oxlint-disable-next-line no-empty-pattern
  folder: async ({}, use) => {
    const folder = mkdtempSync(join(tmpdir(), 'ratafia-e2e-'))
    await use(folder)
    rmSync(folder, { recursive: true })
  },
  ratafia: async ({ folder, page }, use) => {
    const host = await startHost(join(folder, 'cellar.ratafia'))
    await page.goto(host.link)
    await use(host)
    await host.stop()
  },
})

export { expect } from '@playwright/test'
