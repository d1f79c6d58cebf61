/**
 * Every screen of the demo by keyboard alone: Tab reaches all that can be worked, once, in reading
 * order, and never gets stuck; what has the focus is marked, in light and dark, and nothing covers it.
 */
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, test } from './cellar-test.ts'
import { startHost } from './host-process.ts'
import { countRequests, goTo } from './quiet-page.ts'
import { readyBook, screenSamples } from './screen-samples.ts'

// Some forty addresses with dozens of stops each, on a machine that may be busy.
test.describe.configure({ timeout: 600_000 })

/** Rows come and go in a list of thousands: its first screenful says how it is walked through. */
const mostPresses = 400

const asTable = /^Show as table$/
const asChart = /^Show as (?:chart|picture|bars)$/

test('every screen can be walked through by Tab, and shows where it stands', async ({
  folder,
  page,
}) => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
  await readyBook(host)
  const faults: string[] = []
  const isQuiet = countRequests(page)
  await page.addInitScript(bringTools)
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' })
  await page.setViewportSize({ width: 1280, height: 900 })
  await page.goto(host.link)
  for (const path of Object.values(screenSamples).flat()) {
    await goTo(page, '/no-such-screen')
    await isQuiet()
    await goTo(page, path)
    await isQuiet()
    for (const told of await walk(page)) faults.push(`${path}: ${told}`)
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
      for (const told of await page.evaluate(marks)) faults.push(`${path} ${colorScheme}: ${told}`)
    }
    await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' })
  }
  await page.close()
  await host.stop()
  expect(faults).toEqual([])
})

test('each chart turns into its table by a key, which keeps the focus, and back', async ({
  folder,
  page,
}) => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
  await readyBook(host)
  const isQuiet = countRequests(page)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await page.goto(host.link)
  const turned = new Set<string>()
  for (const path of Object.values(screenSamples).flat()) {
    await goTo(page, path)
    await isQuiet()
    const count = await page.getByRole('button', { name: asTable }).count()
    for (let index = 0; index < count; index += 1) {
      const button = page.getByRole('button', { name: asTable }).nth(index)
      await button.scrollIntoViewIfNeeded()
      await button.focus()
      const tables = await page.getByRole('table').count()
      await page.keyboard.press('Enter')
      const focused = page.locator(':focus')
      await expect(focused, path).toHaveText(asChart)
      expect(await page.getByRole('table').count(), path).toBeGreaterThan(tables)
      const { violations } = await new AxeBuilder({ page }).include('main').analyze()
      expect(
        violations.map(({ id }) => id),
        path,
      ).toEqual([])
      await page.keyboard.press('Enter')
      await expect(focused, path).toHaveText(asTable)
      turned.add(path)
    }
  }
  await page.close()
  await host.stop()
  // Batch, comparison, shelf, season, bench, lineage: none may lose its table unseen.
  expect(turned.size).toBeGreaterThanOrEqual(8)
})

/** Presses Tab from the top until all is reached, and looks at each stop. */
async function walk(page: Page): Promise<string[]> {
  // A form that opens by itself takes the focus once it is there.
  await page.waitForTimeout(150)
  const stops = await page.evaluate(findStops)
  for (let pressed = 0; pressed < mostPresses; pressed += 1) {
    await page.keyboard.press('Tab')
    const isDone = await page.evaluate(noteStop)
    if (isDone) break
  }
  expect(stops).toBeGreaterThan(0)
  return page.evaluate(tellWalk)
}

// What follows runs in the page.

interface KeyTools {
  /** All that Tab should reach: a group of radio buttons is one stop. */
  stopsOf: () => HTMLElement[]
  nameOf: (stop: Element) => string
  isSameLandmark: (a: Element, b: Element) => boolean
  expected: HTMLElement[]
  reached: Element[]
  faults: string[]
}

function bringTools() {
  const workable = 'a[href], button, input, select, textarea, summary, [tabindex]'
  const landmark = 'nav, main, header, footer, aside, [role="region"]'
  const tools: KeyTools = {
    stopsOf: () => {
      const groups = new Set<string>()
      return [...document.querySelectorAll<HTMLElement>(workable)].filter((each) => {
        if (each.tabIndex < 0 || each.matches(':disabled') || each.closest('[inert]')) return false
        if (!each.checkVisibility({ visibilityProperty: true })) return false
        if (!(each instanceof HTMLInputElement) || each.type !== 'radio') return true
        const name = CSS.escape(each.name)
        const group = [...document.querySelectorAll<HTMLInputElement>(`input[name="${name}"]`)]
        if (!each.checked && group.some(({ checked }) => checked)) return false
        if (groups.has(name)) return false
        groups.add(name)
        return true
      })
    },
    nameOf: (stop) => {
      const said = stop.getAttribute('aria-label') ?? stop.textContent ?? ''
      return `${stop.tagName.toLowerCase()} "${said.trim().slice(0, 40)}"`
    },
    isSameLandmark: (one, other) => one.closest(landmark) === other.closest(landmark),
    expected: [],
    reached: [],
    faults: [],
  }
  Object.assign(window, { keyTools: tools })
}

function findStops(): number {
  // From the very top, wherever the screen put the focus.
  document.body.tabIndex = -1
  document.body.focus()
  document.body.removeAttribute('tabindex')
  const { keyTools } = window as unknown as { keyTools: KeyTools }
  Object.assign(keyTools, { expected: keyTools.stopsOf(), reached: [], faults: [] })
  return keyTools.expected.length
}

/** Whether the walk is over: all was reached, or Tab went out of the page. */
function noteStop(): boolean {
  const { keyTools } = window as unknown as { keyTools: KeyTools }
  const { expected, reached, faults, nameOf, isSameLandmark } = keyTools
  const active = document.activeElement
  if (!active || active === document.body) return true
  const before = reached.at(-1)
  if (active === before) {
    // Day, month and year of a date are stops inside one field.
    if (active.matches('input[type="date"], input[type="datetime-local"]')) return false
    faults.push(`Tab stays on ${nameOf(active)}`)
    return true
  }
  if (reached.includes(active)) return true
  reached.push(active)
  const fromTo = before && `from ${nameOf(before)} to ${nameOf(active)}`
  if (before && before.compareDocumentPosition(active) & Node.DOCUMENT_POSITION_PRECEDING)
    faults.push(`Tab goes back ${fromTo}`)
  // Up is right only where it begins another column, or the next series of a chart.
  if (before?.isConnected && isSameLandmark(before, active) && !active.closest('svg')) {
    const [last, next] = [before.getBoundingClientRect(), active.getBoundingClientRect()]
    if (next.bottom <= last.top - 1 && next.left < last.right) faults.push(`Tab goes up ${fromTo}`)
  }
  return expected.every((each) => !each.isConnected || reached.some((one) => each.contains(one)))
}

function tellWalk(): string[] {
  const { keyTools } = window as unknown as { keyTools: KeyTools }
  const { expected, reached, faults, nameOf } = keyTools
  // A table whose rows take the focus hands it on to one of them.
  const missed = expected.filter(
    (each) => each.isConnected && !reached.some((one) => each.contains(one)),
  )
  const names = missed.slice(0, 6).map(nameOf)
  return names.length > 0 ? [...faults, `Tab never reaches ${names.join(', ')}`] : faults
}

/** What the focus changes about each stop, or what it stands in; and whether something covers it. */
async function marks(): Promise<string[]> {
  const { keyTools } = window as unknown as { keyTools: KeyTools }
  const active = document.activeElement
  if (active instanceof HTMLElement) active.blur()
  // A list of thousands draws the rows in sight: those at the top, once they stand there.
  window.scrollTo(0, 0)
  for (let frame = 0; frame < 4; frame += 1) await new Promise(requestAnimationFrame)
  // Rows far down are like those at the top.
  const stops = keyTools.stopsOf().slice(0, 150)
  const looks = [
    'outline',
    'boxShadow',
    'borderColor',
    'backgroundColor',
    'textDecoration',
  ] as const
  /** Of itself, of what it draws behind itself, and of the line or cell that it stands in. */
  const look = (stop: Element) =>
    [stop, stop.parentElement, stop.parentElement?.parentElement]
      .flatMap((each) => (each ? [getComputedStyle(each), getComputedStyle(each, '::after')] : []))
      .flatMap((style) => looks.map((name) => style[name]))
      .join(' ')
  const unfocused = stops.map(look)
  const told = new Set<string>()
  for (const [index, stop] of stops.entries()) {
    stop.focus()
    const name = keyTools.nameOf(stop)
    if (document.activeElement === stop && look(stop) === unfocused[index])
      told.add(`${name} shows no focus`)
    if (!stop.contains(document.activeElement)) told.add(`${name} takes no focus`)
    const { left, top, right, bottom } = stop.getBoundingClientRect()
    const points = [0.5, 0.15, 0.85].flatMap((x) =>
      [0.5, 0.2, 0.8].map((y) => [left + x * (right - left), top + y * (bottom - top)] as const),
    )
    const isSeen = points.some(([x, y]) => {
      const hit = document.elementFromPoint(x, y)
      const isOwn = hit && (stop.contains(hit) || hit.contains(stop))
      return isOwn || hit?.closest('label')?.contains(stop)
    })
    if (!isSeen) told.add(`${name} is covered, or out of sight`)
  }
  return [...told]
}
