/** Dialogs of the demo: opened, looked into by axe, walked through by Tab, left by Escape. */
import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { en } from '../../renderer/app/words/en.ts'
import { expect, test } from './cellar-test.ts'
import { startHost } from './host-process.ts'
import { draftId, readyBook } from './screen-samples.ts'

test.describe.configure({ timeout: 300_000 })

interface Opened {
  readonly path: string
  /** The button that opens it. */
  readonly by: string
  /** Rules of axe that do not see how it is made. */
  readonly blindRules?: readonly string[]
}

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
}

/** Those that take more than one press to open: not looked into here, but none may be forgotten. */
const openedByMore: readonly string[] = [
  'app/keys-dialog.tsx',
  'parts/amending/amend-dialog.tsx',
  'parts/amending/history-dialog.tsx',
  'parts/amending/put-back-dialog.tsx',
  'parts/amending/strike-dialog.tsx',
  'screens/bench/record-dialog.tsx',
  'screens/draft/compare-dialog.tsx',
  'screens/draft/keep-batch-form.tsx',
  'screens/draft/scale-dialog.tsx',
  'screens/fruits/reset-dialog.tsx',
  'screens/labels/own-sheet-dialog.tsx',
  'screens/marry/record/record-dialog.tsx',
  'screens/season/buy/tick-dialog.tsx',
  'screens/shelf/acts/act-dialog.tsx',
  'screens/today/put-off-menu.tsx',
]

test('each file that makes a dialog is in the table, or in the list of those that take more', () => {
  const root = new URL('../../renderer/', import.meta.url).pathname
  const makers = globSync('**/*.tsx', { cwd: root })
    .filter((file) => file !== 'parts/dialog/sheet-dialog.tsx')
    .filter((file) => readFileSync(join(root, file), 'utf8').includes('<SheetDialog'))
  expect([...Object.keys(dialogs), ...openedByMore].toSorted()).toEqual(makers.toSorted())
})

test('a dialog takes the focus, keeps it, and gives it back', async ({ folder, page }) => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
  await readyBook(host)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await page.goto(host.link)
  const faults: string[] = []
  for (const [file, { path, by, blindRules = [] }] of Object.entries(dialogs)) {
    await page.evaluate((hash) => {
      location.hash = hash
    }, path)
    const opener = page.getByRole('button', { name: by, exact: true }).first()
    await opener.focus()
    await page.keyboard.press('Enter')
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

const isFocusInside = (page: Page) =>
  page.evaluate(() => document.activeElement?.closest('[role="dialog"]') !== null)
