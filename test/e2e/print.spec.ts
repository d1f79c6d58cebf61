/** Any screen on paper: ink on white, whatever the window's theme; charts as wide as the sheet; nothing to press. */
import { join } from 'node:path'
import { expect, test } from './cellar-test.ts'
import { startHost } from './host-process.ts'
import { countRequests, goTo } from './quiet-page.ts'

test.describe.configure({ timeout: 120_000 })

/** A4 within its margins, at 96 to the inch. */
const paperPx = Math.floor(((210 - 2 * 14) / 25.4) * 96)

test('a screen goes on paper without what is there to be worked', async ({ folder, page }) => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
  const isQuiet = countRequests(page)
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' })
  await page.goto(host.link)
  for (const path of [
    '/batches/plum-2026',
    '/today',
    '/shelf',
    '/shelf/sour-cherry-2025-bottles',
    '/season/fruit',
  ]) {
    await page.emulateMedia({ media: 'screen' })
    await page.setViewportSize({ width: 1280, height: 900 })
    await goTo(page, path)
    await isQuiet()
    await expect(page.getByRole('navigation').first()).toBeVisible()
    const charts = await page.locator('.recharts-surface').count()
    await page.emulateMedia({ media: 'print' })
    await page.setViewportSize({ width: paperPx, height: 1000 })
    await expect(page.getByRole('navigation').first(), path).toBeHidden()
    const printed = await page.evaluate(onPaper)
    expect(printed, path).toEqual({ paper: 'rgb(255, 255, 255)', worked: [], wider: 0, charts })
    // As a browser makes it: more than a page of headings.
    const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true })
    expect(pdf.length, path).toBeGreaterThan(10_000)
  }
  await page.close()
  await host.stop()
})

// Runs in the page.
function onPaper() {
  const worked = [...document.querySelectorAll('form, select, textarea, input, [data-rac]')]
    .filter((each) => each.matches('form, select, textarea, input, button, a'))
    .filter((each) => each.checkVisibility())
    .map((each) => `${each.tagName} ${each.textContent?.slice(0, 20)}`)
  const charts = [...document.querySelectorAll('.recharts-surface')].filter((each) => {
    const { width, height } = each.getBoundingClientRect()
    return width > 100 && height > 50
  })
  const { scrollWidth, clientWidth } = document.documentElement
  return {
    paper: getComputedStyle(document.documentElement).backgroundColor,
    worked,
    wider: scrollWidth - clientWidth,
    charts: charts.length,
  }
}
