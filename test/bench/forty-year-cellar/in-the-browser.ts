/**
 * The book of forty years in a real browser: how long from starting the program until Today stands
 * there, how long each press and key takes until it is seen, and what the page holds in memory.
 */
import { setTimeout as sleep } from 'node:timers/promises'
import { chromium, type Page, type Request as PageRequest } from '@playwright/test'
import { en } from '../../../renderer/app/words/en.ts'
import { chromiumLaunch } from '../../e2e/chromium.ts'
import { startHost } from '../../e2e/host-process.ts'

export interface InTheBrowser {
  readonly linkMs: number
  readonly todayMs: number
  /** From a press on the shell's link until the screen stands there with all it asked for. */
  readonly screensMs: readonly number[]
  /** By Event Timing: until the next frame is painted, in steps of 8 ms. */
  readonly interactionsMs: readonly number[]
  readonly heapBytes: number
}

/** The API tells nothing of what is quicker. */
const leastMs = 16

export async function measureInBrowser(file: string): Promise<InTheBrowser> {
  const browser = await chromium.launch(chromiumLaunch())
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
  await page.addInitScript(watchInteractions, leastMs)
  const asked = countAsked(page)
  const goTo = async (screen: string) => {
    const pressedMs = performance.now()
    await page.getByRole('link', { name: screen, exact: true }).first().click()
    await page.getByRole('heading', { name: screen, level: 1 }).waitFor()
    while (asked.open > 0) await sleep(2)
    await page.evaluate(nextFrame)
    return performance.now() - pressedMs
  }
  const startMs = performance.now()
  const host = await startHost(file)
  try {
    const linkMs = performance.now() - startMs
    await page.goto(host.link)
    await page.locator('main h2').first().waitFor()
    const todayMs = performance.now() - startMs
    const screensMs: number[] = []
    for (let round = 0; round < 3; round += 1)
      for (const screen of ['batches', 'shelf', 'season', 'cellarRoom', 'today'] as const)
        screensMs.push(await goTo(en.shell.screens[screen]))
    await goTo(en.shell.screens.shelf)
    await page.getByRole('searchbox').first().pressSequentially('damson', { delay: 50 })
    await goTo(en.shell.screens.batches)
    await page.getByRole('row').nth(1).focus()
    for (let pressed = 0; pressed < 20; pressed += 1) await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Control+k')
    await page.getByRole('dialog').waitFor()
    await page.keyboard.type('quince 20', { delay: 50 })
    await page.keyboard.press('Escape')
    await page.waitForTimeout(300)
    const interactionsMs = await page.evaluate(interactions, leastMs)
    const devTools = await page.context().newCDPSession(page)
    await devTools.send('Performance.enable')
    await devTools.send('HeapProfiler.collectGarbage')
    const { metrics } = await devTools.send('Performance.getMetrics')
    const heapBytes = metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? 0
    return { linkMs, todayMs, screensMs, interactionsMs, heapBytes }
  } finally {
    await browser.close()
    await host.stop()
  }
}

/** How many answers of the host the page waits for. */
function countAsked(page: Page): { readonly open: number } {
  const asked = { open: 0 }
  const count = (step: number) => (request: PageRequest) => {
    if (request.url().includes('/rpc/')) asked.open += step
  }
  page.on('request', count(1))
  page.on('requestfinished', count(-1))
  page.on('requestfailed', count(-1))
  return asked
}

// What follows runs in the page.

function watchInteractions(durationThreshold: number) {
  const longest = new Map<number, number>()
  Object.assign(window, { longest })
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      const { interactionId, duration } = entry as PerformanceEventTiming & {
        interactionId: number
      }
      if (interactionId > 0)
        longest.set(interactionId, Math.max(longest.get(interactionId) ?? 0, duration))
    }
  }).observe({ type: 'event', durationThreshold, buffered: true } as PerformanceObserverInit)
}

const nextFrame = () => new Promise((drawn) => requestAnimationFrame(drawn))

/** Those that were too quick to be told count as the least. */
function interactions(quick: number): number[] {
  const { longest } = window as unknown as { longest: ReadonlyMap<number, number> }
  const { interactionCount = longest.size } = performance as { interactionCount?: number }
  const unseen = Math.max(0, interactionCount - longest.size)
  return [...longest.values(), ...Array.from({ length: unseen }, () => quick)]
}
