/**
 * Every route over the demo, in both themes, wide and narrow: nothing for axe to find, nothing wider
 * than the window, one heading, no error said, nothing asked of anybody but our own host, and nothing
 * that jumps about or moves where stillness is wished.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, test } from './cellar-test.ts'
import type { HostProcess } from './host-process.ts'

interface Ids {
  readonly lotId: string
  readonly fruitLotId: string
  readonly draftId: string
}

/** A place to go to for each route, as `routes.tsx` writes it. */
const samples: Readonly<Record<string, (ids: Ids) => readonly string[]>> = {
  '/': () => ['/'],
  '/^\\/today(?:\\/(?<part>calendar))?$/': () => ['/today', '/today/calendar'],
  '/batches': () => ['/batches'],
  '/^\\/batches\\/(?<id>[^/]+)(?:\\/do\\/(?<task>[^/]+))?$/': () => [
    '/batches/damson-2026',
    '/batches/quince-2026',
  ],
  '/compare/:ids?': () => ['/compare/damson-2026,plum-2026'],
  '/draft': () => ['/draft'],
  '/draft/:id': ({ draftId }) => [`/draft/${draftId}`],
  '/marry': () => ['/marry'],
  '/marry/mend/:jarId?': () => ['/marry/mend'],
  '/^\\/season(?:\\/(?<view>[^/]+))?$/': () => [
    '/season',
    '/season/buy',
    '/season/wishes',
    '/season/fruit',
    '/season/last',
  ],
  '/bench/:tool?': () => ['/bench'],
  '/^\\/shelf(?:\\/view\\/(?<view>[^/]+))?$/': () => ['/shelf', '/shelf/view/stock'],
  '/shelf/stocktake/:shelfId?': () => ['/shelf/stocktake'],
  '/shelf/:id': ({ lotId }) => [`/shelf/${lotId}`],
  '/lineage/lot/:lotId': ({ fruitLotId }) => [`/lineage/lot/${fruitLotId}`],
  '/^\\/labels(?:\\?(?<query>.*))?$/': ({ lotId }) => [`/labels?lots=${lotId}`],
  '/cellar-room': () => ['/cellar-room'],
  '/fruits': () => ['/fruits'],
  '/fruits/:id': () => ['/fruits/damson'],
  '/moves': () => ['/moves'],
  '/bring-in': () => ['/bring-in'],
  '/safekeeping': () => ['/safekeeping'],
  '/handbook/:chapter?': () => ['/handbook', '/handbook/terms'],
}

const routesFile = join(import.meta.dirname, '..', '..', 'renderer', 'app', 'routes.tsx')

test('has a sample of every route', () => {
  const source = readFileSync(routesFile, 'utf8')
  const routes = [...source.matchAll(/<Route path=(?:"([^"]+)"|\{(\/.+\/)\})/g)]
  expect(routes.length).toBeGreaterThan(15)
  expect(routes.map(([, text, pattern]) => text ?? pattern).toSorted()).toEqual(
    Object.keys(samples).toSorted(),
  )
})

async function addresses({ call }: HostProcess): Promise<string[]> {
  const value = async <T>(channel: string, request = {}) => {
    const reply = await call(channel, request)
    if (!reply.ok) throw new Error(`${channel}: ${reply.error.message}`)
    return reply.value as T
  }
  const { lots } = await value<{ lots: { lot: { id: string } }[] }>('shelf.lots', {
    withGone: false,
  })
  const pantry = await value<{ id: string; goods: { kind: string } }[]>('pantry.list')
  const usual = { fruitId: 'sour_cherry', massG: 2000, spiritPctVol: 96 }
  const { spec } = await value<{ spec: object }>('drafts.usual', usual)
  const wishes = { bottles: 6, strengthPctVol: 30 }
  await value('drafts.keep', { id: 'd1', name: 'Cherries', spec, pins: [], wishes, note: '' })
  const ids = {
    lotId: lots[0]?.lot.id ?? '',
    fruitLotId: pantry.find(({ goods }) => goods.kind === 'fruit')?.id ?? '',
    draftId: 'd1',
  }
  expect(Object.values(ids)).not.toContain('')
  return Object.values(samples).flatMap((sample) => sample(ids))
}

interface Look {
  readonly width: number
  readonly colorScheme: 'light' | 'dark'
}

/** Shows a screen and waits until what it asked for is there. */
async function show(page: Page, path: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = `#${hash}`
  }, path)
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible({ timeout: 20_000 })
  // Nothing says when the last chart is drawn.
  await page.waitForTimeout(300)
}

const widerThanWindow = (page: Page) =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement
    return scrollWidth - clientWidth
  })

/** The bars of a batch's stages, whose classes are their stages'. */
const onTimeline = /\._(?:layered|steeping|drawnOff|sugarDraw|pressed|married|filtered)_/

/** What is wrong with a screen as it stands; empty where nothing is. */
async function wrongWith(page: Page, colorScheme: Look['colorScheme']): Promise<string[]> {
  const axe = new AxeBuilder({ page })
  // The dark one has the same elements in other colours.
  if (colorScheme === 'dark') axe.withRules(['color-contrast'])
  else axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
  const { violations } = await axe.analyze()
  const found = violations.flatMap(({ id, nodes }) => {
    const places = nodes.map(({ target }) => target.join(' '))
    // A day is narrow on a line of months; the table beside it tells the same (WCAG 2.5.8, Equivalent).
    const told = id === 'target-size' ? places.filter((place) => !onTimeline.test(place)) : places
    return told.length > 0 ? [`${id}: ${told.join('; ')}`] : []
  })
  const headings = await page.getByRole('heading', { level: 1 }).count()
  if (headings !== 1) found.push(`${headings} first headings`)
  const moving = await page.evaluate(
    () => document.getAnimations().filter(({ playState }) => playState === 'running').length,
  )
  if (moving > 0) found.push(`${moving} animations`)
  return found
}

for (const { width, colorScheme } of [
  { width: 1280, colorScheme: 'light' },
  { width: 800, colorScheme: 'dark' },
] satisfies Look[])
  test(`every screen is sound, ${width} wide, ${colorScheme}`, async ({ ratafia, browser }) => {
    test.setTimeout(600_000)
    await ratafia.call('cellar.openDemo')
    const context = await browser.newContext({
      viewport: { width, height: 900 },
      colorScheme,
      reducedMotion: 'reduce',
    })
    const page = await context.newPage()
    const wrong: string[] = []
    const foreign: string[] = []
    page.on('request', (request) => {
      const url = request.url()
      if (!url.startsWith(`${ratafia.origin}/`) && !/^(?:data|blob):/.test(url)) foreign.push(url)
    })
    page.on('pageerror', (error) => wrong.push(`${page.url()}: ${error.message}`))
    page.on('console', (message) => {
      if (message.type() === 'error') wrong.push(`${page.url()}: ${message.text()}`)
    })
    await page.goto(ratafia.link)
    for (const path of await addresses(ratafia)) {
      await show(page, path)
      wrong.push(...(await wrongWith(page, colorScheme)).map((what) => `${path}: ${what}`))
      for (const wide of width === 1280 ? [width, 2560] : [width]) {
        await page.setViewportSize({ width: wide, height: 900 })
        const beyond = await widerThanWindow(page)
        if (beyond > 0) wrong.push(`${path}: ${beyond} px wider than ${wide}`)
      }
      await page.setViewportSize({ width, height: 900 })
    }
    await context.close()
    expect(wrong).toEqual([])
    expect(foreign).toEqual([])
  })
