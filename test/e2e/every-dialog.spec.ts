/** Dialogs of the demo: opened, looked into by axe, walked through by Tab, left by Escape. */
import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { en } from '../../renderer/app/words/en.ts'
import type { MovePage } from '../../shared/schemas/all-moves.ts'
import type { FruitPage } from '../../shared/schemas/fruits.ts'
import { expect, test } from './cellar-test.ts'
import { startHost, type HostProcess } from './host-process.ts'
import { goTo } from './quiet-page.ts'
import { answer, draftId, readyBook, recipeName } from './screen-samples.ts'

test.describe.configure({ timeout: 300_000 })

interface Opened {
  readonly path: string
  /** The button that opens it, or opens the menu that does. */
  readonly by: string | RegExp
  /** The line of that menu. */
  readonly item?: string
  /** What has to be done on the screen before. */
  readonly first?: (page: Page) => Promise<void>
  /** Rules of axe that do not see how it is made. */
  readonly blindRules?: readonly string[]
}

const readAJug = /^Change: Read the /

/** Each file of the renderer that makes a dialog, and where it is opened. */
const dialogs: Readonly<Record<string, Opened>> = {
  'app/finder/finder.tsx': {
    path: '/today',
    by: en.finder.open,
    // What is found is described beside its name, and scrolled by arrows from the field.
    blindRules: ['label-content-name-mismatch', 'scrollable-region-focusable'],
  },
  'app/settings-dialog.tsx': { path: '/today', by: en.shell.settings.open },
  'screens/today/calendar-dialog.tsx': { path: '/today', by: en.today.calendar.open },
  'screens/batches/new-batch-dialog.tsx': { path: '/batches', by: en.batches.new },
  'screens/batch/head/edit-batch-dialog.tsx': { path: '/batches/plum-2026', by: en.batch.edit },
  'screens/cellar-room/buy-dialog.tsx': { path: '/cellar-room', by: en.cellarRoom.buy },
  'screens/cellar-room/jar-dialog.tsx': { path: '/cellar-room', by: en.cellarRoom.addJar },
  'screens/fruits/add-fruit-dialog.tsx': { path: '/fruits', by: en.fruits.add },
  'screens/shelf/places/place-dialog.tsx': { path: '/shelf/view/places', by: en.shelf.places.add },
  'screens/draft/start-dialog.tsx': { path: `/draft/${draftId}`, by: en.draft.editor.start },
  'screens/draft/keep-batch-form.tsx': { path: '/draft', by: en.draft.recipes.keepBatch },
  'screens/draft/scale-dialog.tsx': {
    path: '/draft',
    by: en.draft.recipes.scaleOne.replace('{{name}}', recipeName),
  },
  'screens/draft/compare-dialog.tsx': {
    path: '/draft',
    by: en.draft.recipes.compareOne.replace('{{name}}', recipeName),
  },
  'screens/shelf/acts/act-dialog.tsx': { path: '/shelf/view/first', by: /^Open a bottle: / },
  'screens/labels/own-sheet-dialog.tsx': {
    path: '/labels?lots=sour-cherry-2025-bottles',
    by: en.labels.sheet.newSheet,
  },
  'screens/marry/record/record-dialog.tsx': {
    path: '/marry/mend/window',
    by: en.marry.record.open,
  },
  'parts/amending/amend-dialog.tsx': {
    path: '/moves',
    by: readAJug,
    item: en.batch.ledger.amend,
  },
  'parts/amending/strike-dialog.tsx': {
    path: '/moves',
    by: readAJug,
    item: en.batch.ledger.strike,
  },
  'parts/amending/history-dialog.tsx': {
    path: '/batches/plum-2026',
    by: readAJug,
    item: en.batch.ledger.history,
  },
  'screens/today/put-off-menu.tsx': {
    path: '/today',
    by: /^Put off: Filter, /,
    item: en.today.putOff.other,
  },
  'parts/amending/put-back-dialog.tsx': {
    path: '/moves',
    first: async (page) => {
      await page.getByText(en.moves.struck, { exact: true }).last().click()
      await page.getByText(/struck or taken back$/).waitFor()
    },
    by: /^Change: /,
    item: en.moves.menu.putBack,
  },
  'screens/bench/record-dialog.tsx': {
    path: '/bench/alcoholometer',
    first: (page) => page.getByRole('textbox', { name: 'It shows' }).fill('38'),
    by: en.bench.record.open,
  },
  'screens/fruits/reset-dialog.tsx': { path: '/fruits/sloe', by: en.fruits.page.reset },
  'screens/season/buy/tick-dialog.tsx': { path: '/season/buy', by: /^Bought: / },
}

/** A move that is struck, a fruit of the maker's own, a list of what to buy. */
async function readyDialogs(host: HostProcess): Promise<void> {
  await readyBook(host)
  const { rows } = await answer<MovePage>(host, 'moves.list', { filter: {}, from: 0, count: 50 })
  const read = rows.find(({ recorded }) => recorded.move.kind === 'read')
  if (!read) throw new Error('the newest moves of the demo have no reading')
  const { id: moveId, version: fromVersion } = read.recorded
  const striking = { key: 'strike', moveId, fromVersion, move: null, alsoStrike: [] }
  await answer(host, 'moves.amend', striking)
  const { fruit } = await answer<FruitPage>(host, 'fruits.page', { fruitId: 'sloe' })
  await answer(host, 'fruits.keep', { ...fruit, preparation: 'As we do it.' })
  const jobId = 'plan'
  const wishes = await answer(host, 'season.wishes', {})
  const asked = { jobId, wishes, isExplained: false, timeLimitSeconds: 5 }
  await answer(host, 'season.startPlan', asked)
  await expect
    .poll(() => answer(host, 'season.planState', { jobId }), { timeout: 60_000 })
    .toMatchObject({ state: 'done' })
  await answer(host, 'season.keepPlan', { id: 'kept', jobId })
}

/** Opens by a key alone, and has a test of its own below. */
const byKey = 'app/keys-dialog.tsx'

test('each file that makes a dialog is in the table', () => {
  const root = new URL('../../renderer/', import.meta.url).pathname
  const makers = globSync('**/*.tsx', { cwd: root })
    .filter((file) => file !== 'parts/dialog/sheet-dialog.tsx')
    .filter((file) => readFileSync(join(root, file), 'utf8').includes('<SheetDialog'))
  expect([...Object.keys(dialogs), byKey].toSorted()).toEqual(makers.toSorted())
})

test('a dialog takes the focus, keeps it, and gives it back', async ({ folder, page }) => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
  await readyDialogs(host)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await page.goto(host.link)
  const faults: string[] = []
  for (const [file, { path, first, by, item, blindRules = [] }] of Object.entries(dialogs)) {
    await goTo(page, path)
    await first?.(page)
    const opener = page.getByRole('button', { name: by, exact: true }).first()
    await opener.focus()
    await page.keyboard.press('Enter')
    if (item !== undefined) await chooseByArrows(page, item)
    const dialog = page.getByRole('dialog')
    await expect(dialog, file).toBeVisible()
    await expect.poll(() => isFocusInside(page), { message: `${file}: focus goes in` }).toBe(true)
    const { violations } = await new AxeBuilder({ page }).disableRules([...blindRules]).analyze()
    for (const { id, nodes } of violations)
      faults.push(`${file}: axe ${id}: ${nodes.map(({ target }) => String(target)).join(' | ')}`)
    const stops = await dialog.locator('a, button, input, select, textarea, [tabindex="0"]').count()
    for (let pressed = 0; pressed < stops + 2; pressed += 1) {
      await page.keyboard.press('Tab')
      if (await isFocusInside(page)) continue
      faults.push(`${file}: Tab leaves it after ${pressed + 1}`)
      break
    }
    await page.keyboard.press('Escape')
    await expect(dialog, file).toBeHidden()
    await expect(opener, `${file}: focus comes back`).toBeFocused()
  }
  await host.stop()
  expect(faults).toEqual([])
})

/** Down the open menu to its line, once around it at the most. */
async function chooseByArrows(page: Page, item: string): Promise<void> {
  const line = page.getByRole('menuitem', { name: item, exact: true })
  await expect(line).toBeVisible()
  const lines = await page.getByRole('menuitem').count()
  const isThere = () => line.evaluate((each) => each === document.activeElement)
  for (let pressed = 0; pressed <= lines && !(await isThere()); pressed += 1)
    await page.keyboard.press('ArrowDown')
  await expect(line).toBeFocused()
  await page.keyboard.press('Enter')
}

test('a menu opens on its first line, goes by arrows, and Escape gives the focus back', async ({
  folder,
  page,
}) => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
  await page.goto(host.link)
  for (const [path, by] of [
    ['/moves', readAJug],
    ['/today', /^Put off: Filter, /],
    ['/shelf/sour-cherry-2025-bottles', /^More for /],
  ] as const) {
    await goTo(page, path)
    const opener = page.getByRole('button', { name: by }).first()
    await opener.focus()
    await page.keyboard.press('ArrowDown')
    const lines = page.getByRole('menuitem')
    await expect(lines.first()).toBeFocused()
    await page.keyboard.press('ArrowDown')
    await expect(lines.nth(1)).toBeFocused()
    await page.keyboard.press('End')
    await expect(lines.last()).toBeFocused()
    const { violations } = await new AxeBuilder({ page }).include('[role="menu"]').analyze()
    expect(violations.map(({ id }) => id)).toEqual([])
    await page.keyboard.press('Escape')
    await expect(lines.first()).toBeHidden()
    await expect(opener).toBeFocused()
  }
  await page.close()
  await host.stop()
})

test('the list of keys opens by its own key, and Escape leaves it where the focus was', async ({
  folder,
  page,
}) => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
  await page.goto(host.link)
  const link = page.getByRole('link', { name: en.shell.screens.batches }).first()
  await link.focus()
  await page.keyboard.press('Control+/')
  const dialog = page.getByRole('dialog')
  await expect(dialog).toBeVisible()
  await expect.poll(() => isFocusInside(page)).toBe(true)
  const { violations } = await new AxeBuilder({ page }).analyze()
  expect(violations.map(({ id }) => id)).toEqual([])
  await page.keyboard.press('Escape')
  await expect(dialog).toBeHidden()
  await expect(link).toBeFocused()
  await page.close()
  await host.stop()
})

const isFocusInside = (page: Page) =>
  page.evaluate(() => document.activeElement?.closest('[role="dialog"]') !== null)
