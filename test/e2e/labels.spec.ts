/** Labels by hand on the demo: chosen, looked at, printed; and what is seen is what is printed. */
import { AxeBuilder } from '@axe-core/playwright'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Answer } from '../../shared/channels.ts'
import { expect, test as plain, type Page } from '@playwright/test'
import { compared } from './compare-with-print.ts'
import { startHost, type HostProcess } from './host-process.ts'
import { goTo } from './quiet-page.ts'

/** The demo is made once for all tests of this file: none of them changes what is in its bottles. */
const test = plain.extend<object, { demo: HostProcess }>({
  demo: [
    // Playwright reads what a fixture needs from this pattern.
    // oxlint-disable-next-line no-empty-pattern
    async ({}, use) => {
      const folder = mkdtempSync(join(tmpdir(), 'ratafia-e2e-labels-'))
      const file = join(folder, 'cellar.ratafia')
      const host = await startHost(file, { args: ['--no-open', '--demo'] })
      await use(host)
      await host.stop()
      rmSync(folder, { recursive: true })
    },
    { scope: 'worker', timeout: 90_000 },
  ],
})

async function answer<C extends 'bottles.list'>(host: HostProcess, channel: C): Promise<Answer<C>> {
  const reply = await host.call(channel)
  if (!reply.ok) throw new Error(reply.error.message)
  return reply.value as Answer<C>
}

async function openLabels(page: Page, demo: HostProcess, count: number) {
  if (!page.url().startsWith(demo.origin)) await page.goto(demo.link)
  const lots = (await answer(demo, 'bottles.list')).filter((lot) => lot.count > 0)
  const ids = lots.slice(0, count).map(({ id }) => id)
  await goTo(page, `/labels?lots=${ids.join(',')}`)
  await expect(page.getByRole('heading', { name: 'Labels', level: 1 })).toBeVisible()
  await expect(page.getByText(/^\d+ labels? on \d+ sheets?$/)).toBeVisible()
}

async function savedPdf(page: Page) {
  const downloading = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save PDF' }).click()
  const download = await downloading
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) }
}

test('labels of the demo are chosen, written, looked at and saved', async ({ demo, page }) => {
  test.slow()
  page.setDefaultTimeout(20_000)
  await openLabels(page, demo, 2)
  await page.getByText('Glass', { exact: true }).click()
  await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Wiśniówka “Łąka”')
  await expect(page.getByRole('img', { name: 'The label of Wiśniówka “Łąka”' })).toBeVisible()
  await page.getByRole('textbox', { name: /^Kind/ }).fill('樱桃酒')
  await expect(page.getByText(/there are no letters for “樱” “桃” “酒”/)).toBeVisible()
  await page.getByRole('textbox', { name: /^Strength/ }).fill('96 % vol')
  await expect(page.getByText(/Says 96\.0\s% vol, but the book has/)).toBeVisible()

  for (const scheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: scheme })
    const { violations } = await new AxeBuilder({ page }).analyze()
    expect(violations.map(({ id }) => id)).toEqual([])
  }
  for (const width of [800, 2560]) {
    await page.setViewportSize({ width, height: 900 })
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    )
    expect(overflow).toBeLessThanOrEqual(0)
  }

  const { name, bytes } = await savedPdf(page)
  expect(name).toMatch(/^Labels \d{4}-\d\d-\d\d\.pdf$/)
  expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-')
  await expect(page.getByText(/The PDF is made/)).toBeVisible()

  // What was chosen is there the next time.
  await goTo(page, '/shelf')
  await openLabels(page, demo, 1)
  await expect(page.getByRole('radio', { name: 'Glass' })).toBeChecked()
})

/** Share of a sheet's pixels. */
const greatestDifference = 0.0005

for (const design of ['Parlour', 'Ledger', 'Glass', 'Lamplight'])
  test(`the preview of ${design} equals the printed sheet`, async ({ demo, page, context }) => {
    await page.setViewportSize({ width: 1600, height: 1400 })
    await openLabels(page, demo, 4)
    await page.getByText(design, { exact: true }).click()
    await expect(page.getByRole('radio', { name: design })).toBeChecked()
    const picture = page.getByRole('img', { name: /^Sheet 1 of/ })
    await page.waitForTimeout(500)
    const svg = await picture.evaluate((element) => element.outerHTML)
    const { bytes } = await savedPdf(page)
    const other = await context.newPage()
    const { differing, inked } = await compared(other, svg, bytes)
    expect(inked).toBeGreaterThan(0.02)
    // Both are drawn with soft edges by two renderers; what stands 0.3 mm off differs by far more.
    expect(differing).toBeLessThan(greatestDifference)
    const shifted = svg.replaceAll('<use ', '<use transform="translate(0.3 0)" ')
    const off = await compared(other, shifted, bytes)
    expect(off.differing).toBeGreaterThan(4 * greatestDifference)
  })
