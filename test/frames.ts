/**
 * `node test/frames.ts [LOTS]`: how smoothly the built shelf scrolls with many lots. Wheels through the
 * list and prints the frames: how many, how long they took, and how long the page itself worked for each.
 */
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { chromiumLaunch } from './e2e/chromium.ts'
import { serveScreens } from './fake-host.ts'
import { cellar } from './screens/cellar-fixture.ts'
import { fakeBridge } from './screens/fake-bridge.ts'
import { bigBatches, bigFruits, bigShelf } from './screens/shelf/big-shelf.ts'
import { shelfAnswers } from './screens/shelf/shelf-fixture.ts'

const count = Number(process.argv[2] ?? 2000)
const built = process.argv[3] ?? join(import.meta.dirname, '..', 'out', 'renderer')
const lots = bigShelf(count)
const bridge = fakeBridge({
  ...cellar,
  ...shelfAnswers,
  'shelf.lots': { lots, opened: [], drinkFirst: [] },
  'bottles.list': lots.map(({ lot }) => lot),
  'batches.list': bigBatches(),
  'fruits.list': bigFruits(),
})

const host = await serveScreens(built, bridge)
const browser = await chromium.launch(chromiumLaunch())
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
  // Counted in processor time, so that a busy machine does not pass for a slow list. Painting is
  // left out: here it is done by the processor, in a window by the graphics card.
  const session = await page.context().newCDPSession(page)
  await session.send('Performance.enable', { timeDomain: 'threadTicks' })
  const spentMs = async () => {
    const { metrics } = await session.send('Performance.getMetrics')
    const of = (wanted: string) => metrics.find(({ name }) => name === wanted)?.value ?? 0
    return 1000 * (of('ScriptDuration') + of('LayoutDuration') + of('RecalcStyleDuration'))
  }
  for (const path of ['/shelf', '/shelf/view/ageing']) {
    const from = Date.now()
    await page.goto('about:blank')
    await page.goto(host.link)
    await page.getByRole('heading', { level: 1 }).waitFor()
    await page.evaluate((hash) => {
      location.hash = hash
    }, path)
    await page.locator('a[href^="#/shelf/lot-"]').first().waitFor()
    const shownMs = Date.now() - from
    const before = await spentMs()
    // Each step is a wheel's notch, asked for at every frame for some seconds.
    const frames = await page.evaluate(async () => {
      const spans: number[] = []
      let last = performance.now()
      for (let step = 0; step < 240; step += 1) {
        window.scrollBy(0, 120)
        await new Promise((drawn) => requestAnimationFrame(drawn))
        const now = performance.now()
        spans.push(now - last)
        last = now
      }
      return spans.sort((a, b) => a - b)
    })
    const perFrame = ((await spentMs()) - before) / frames.length
    const at = (share: number) => (frames[Math.floor(share * (frames.length - 1))] ?? 0).toFixed(1)
    const slow = frames.filter((ms) => ms > 50).length
    const drawn = await page.locator('main [data-index], main li a[href]').count()
    console.log(
      `${path}: ${count} lots shown after ${shownMs} ms; ${frames.length} frames, median ${at(0.5)} ms, ` +
        `95 % under ${at(0.95)} ms, longest ${at(1)} ms, ${slow} over 50 ms; script, style and ` +
        `layout ${perFrame.toFixed(1)} ms a frame; ${drawn} rows drawn`,
    )
  }
} finally {
  await browser.close()
  host.close()
}
