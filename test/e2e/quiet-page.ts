/** From screen to screen, and when one has come to rest. */
import { expect, type Page } from '@playwright/test'

/** As a link within the program leads: the page stays. */
export const goTo = (page: Page, path: string): Promise<void> =>
  page.evaluate((hash) => {
    location.hash = hash
  }, path)

/** Waits until the screen has asked for all it needs, and nothing more follows. */
export function countRequests(page: Page): () => Promise<void> {
  let open = 0
  let lastMs = Date.now()
  const count = (step: number) => (request: { url: () => string }) => {
    if (!request.url().includes('/rpc/')) return
    open += step
    lastMs = Date.now()
  }
  page.on('request', count(1))
  page.on('requestfinished', count(-1))
  page.on('requestfailed', count(-1))
  return async () => {
    await page.locator('h1').first().waitFor()
    lastMs = Math.max(lastMs, Date.now() - 100)
    await expect
      .poll(() => open === 0 && Date.now() - lastMs > 250, { timeout: 30_000, intervals: [50] })
      .toBe(true)
  }
}
