/**
 * Every screen of the demo fits its window, with large text too, keeps still, has a title of its own,
 * nothing for axe to find, and asks nobody but our own host.
 */
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { en } from '../../renderer/app/words/en.ts'
import { expect, test } from './cellar-test.ts'
import { startHost } from './host-process.ts'
import { countRequests } from './quiet-page.ts'
import { readyBook, screenSamples, writtenRoutes } from './screen-samples.ts'

// Some forty addresses, twice, on a machine that may be busy.
test.describe.configure({ timeout: 600_000 })

const looks = [
  { colorScheme: 'light', widthPx: 1280 },
  { colorScheme: 'dark', widthPx: 800 },
] as const

const heightPx = 900
const widestCls = 0.1

/** What every screen has to stand: 640 px is 1280 at a zoom of 200 %; text is what the browser is set to. */
const rooms = [
  { widthPx: 640, textPct: 100 },
  { widthPx: 800, textPct: 100 },
  { widthPx: 1280, textPct: 100 },
  { widthPx: 2560, textPct: 100 },
  { widthPx: 1280, textPct: 200 },
] as const

/** A form that opens by itself, of the task that the address names, pushes what stands below. */
const mayJump = /^\/batches\/[^/]+\/do\//

test('each route has an address in the table of samples', () => {
  expect(Object.keys(screenSamples).toSorted()).toEqual(writtenRoutes().toSorted())
})

/** The bars of a batch's stages, whose classes are their stages'. */
const onTimeline = /\._(?:layered|steeping|drawnOff|sugarDraw|pressed|married|filtered)_/

test('every screen is sound: it fits, keeps still, and can be read and reached', async ({
  folder,
  page,
}) => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
  await readyBook(host)
  const faults: string[] = []
  let address = ''
  let before = ''
  const fault = (what: string) => faults.push(`${address}: ${what}`)
  page.on('pageerror', ({ message }) => fault(`threw ${message}`))
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) fault(`console: ${message.text()}`)
  })
  page.on('request', (request) => {
    const url = request.url()
    if (!url.startsWith(`${host.origin}/`) && !/^(?:data|blob):/.test(url)) fault(`asks ${url}`)
  })
  const isQuiet = countRequests(page)
  await page.addInitScript(watchShifts)
  const devTools = await page.context().newCDPSession(page)
  const setText = (pct: number) =>
    devTools.send('Page.setFontSizes', {
      fontSizes: { standard: (16 * pct) / 100, fixed: (13 * pct) / 100 },
    })
  for (const { colorScheme, widthPx } of looks) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    await page.setViewportSize({ width: widthPx, height: heightPx })
    await page.goto(host.link)
    const titles = new Map<string, string>()
    for (const path of Object.values(screenSamples).flat()) {
      address = `${path} ${colorScheme} ${widthPx}`
      const [, route = ''] = path.split(/[/?]/)
      // Another view of the screen that is open may move what stands there: that is no jump.
      if (route === before) {
        await page.evaluate(goTo, '/no-such-screen')
        await isQuiet()
      }
      before = route
      await page.evaluate(goTo, path)
      await isQuiet()
      const limit = mayJump.test(path) ? Number.MAX_VALUE : widestCls
      for (const told of await page.evaluate(judge, {
        clsLimit: limit,
        tryAgain: en.parts.tryAgain,
      }))
        fault(told)
      for (const told of await foundByAxe(page, colorScheme)) fault(told)
      const title = await page.title()
      const other = titles.get(title) ?? route
      if (other !== route) fault(`has the title of /${other}: ${title}`)
      // The root leads on to another screen.
      if (path !== '/') titles.set(title, other)
      if (colorScheme === 'dark') continue
      for (const room of rooms) {
        await page.setViewportSize({ width: room.widthPx, height: heightPx })
        await setText(room.textPct)
        const wider = await page.evaluate(overflow)
        if (wider !== undefined) fault(`at ${room.widthPx} px, text ${room.textPct} %, ${wider}`)
      }
      await setText(100)
      await page.setViewportSize({ width: widthPx, height: heightPx })
      await page.evaluate(twoFrames)
    }
  }
  // A window that is still open would ask the host that is gone.
  await page.close()
  await host.stop()
  expect(faults).toEqual([])
})

async function foundByAxe(page: Page, colorScheme: 'light' | 'dark'): Promise<string[]> {
  const axe = new AxeBuilder({ page })
  // The dark one has the same elements in other colours.
  if (colorScheme === 'dark') axe.withRules(['color-contrast'])
  else axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
  const { violations } = await axe.analyze()
  return violations.flatMap(({ id, nodes }) => {
    const places = nodes.map(({ target }) => target.join(' '))
    // A day is narrow on a line of months; the table beside it tells the same (WCAG 2.5.8, Equivalent).
    const told = id === 'target-size' ? places.filter((place) => !onTimeline.test(place)) : places
    return told.length > 0 ? [`${id}: ${told.join('; ')}`] : []
  })
}

// What follows runs in the page.

interface Watched {
  shifts: { value: number; atMs: number; what: string }[]
  openedMs: number
}

function watchShifts() {
  const watched: Watched = { shifts: [], openedMs: 0 }
  Object.assign(window, { watched })
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      const { value, sources } = entry as PerformanceEntry & {
        value: number
        sources: { node: Node | null }[]
      }
      const what = sources.map(({ node }) => (node as Element | null)?.textContent?.slice(0, 30))
      watched.shifts.push({ value, atMs: entry.startTime, what: what.join(' / ') })
    }
  }).observe({ type: 'layout-shift', buffered: true })
}

function goTo(path: string) {
  const { watched } = window as unknown as { watched: Watched }
  watched.openedMs = performance.now()
  watched.shifts = []
  location.hash = path
}

function judge({ clsLimit, tryAgain }: { clsLimit: number; tryAgain: string }): string[] {
  const told: string[] = []
  const h1s = document.querySelectorAll('h1').length
  if (h1s !== 1) told.push(`${h1s} h1`)
  if (!/.+ · .+/.test(document.title)) told.push(`no title of its own: ${document.title}`)
  const again = [...document.querySelectorAll('button')].some(
    ({ textContent }) => textContent === tryAgain,
  )
  if (again) told.push('could not be read')
  const moving = document.getAnimations().filter(({ playState }) => playState === 'running')
  if (moving.length > 0) told.push(`${moving.length} animations under reduced motion`)
  const { watched } = window as unknown as { watched: Watched }
  // The change from one screen to the next is no jump: what counts is what comes after it.
  const after = watched.shifts.filter(({ atMs }) => atMs > watched.openedMs)
  const cls = after.reduce((sum, { value }) => sum + value, 0)
  if (cls >= clsLimit)
    told.push(`jumps by ${cls.toFixed(3)}: ${after.map(({ what }) => what).join(' ; ')}`)
  return told
}

async function twoFrames(): Promise<void> {
  await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)))
}

/** Charts follow the window a little later. */
async function overflow(): Promise<string | undefined> {
  const { documentElement: root } = document
  const patientUntilMs = performance.now() + 3000
  do await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)))
  while (root.scrollWidth > root.clientWidth && performance.now() < patientUntilMs)
  const { scrollWidth, clientWidth } = root
  if (scrollWidth <= clientWidth) return undefined
  const out = [...document.querySelectorAll('body *')].filter(
    (each) => each.getBoundingClientRect().right > clientWidth + 1,
  )
  const names = out.slice(0, 3).map((each) => `${each.tagName} ${each.className}`)
  return `the page is ${scrollWidth - clientWidth} px too wide (${names.join(', ')})`
}
