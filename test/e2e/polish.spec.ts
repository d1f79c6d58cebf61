/**
 * Every screen of the demo, its dialogs and the forms of a batch, read in Polish: nothing of the
 * English words is left, no key shows, and decimals have their comma. What the book's maker wrote,
 * such as the demo's English names and notes, stays as it was written.
 */
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { en } from '../../renderer/app/words/en.ts'
import { pl } from '../../renderer/app/words/pl.ts'
import { leavesOf } from '../screens/app/words/word-keys.ts'
import { expect, test } from './cellar-test.ts'
import { lookIntoPath } from '../../main/hosts/file-to-open.ts'
import { startHost } from './host-process.ts'
import { goTo } from './quiet-page.ts'
import { absentFile, draftId, readyBook, recipeName, screenSamples } from './screen-samples.ts'

// Some sixty addresses and dialogs, on a machine that may be busy.
test.describe.configure({ timeout: 600_000 })

const words = [...leavesOf(en).values()].flatMap((word) => word.split('\n'))
const alsoPolish = new Set([...leavesOf(pl).values()].flatMap((word) => word.split('\n')))

/** Whole words and sentences that only English has. */
const english = new Set(words.filter((word) => !alsoPolish.has(word)))

/** Parts between the gaps of a sentence, long enough to be known for English wherever they stand. */
const englishParts = [...new Set(words.flatMap((word) => word.split(/\{\{\w+\}\}/)))]
  .map((part) => part.trim())
  .filter((part) => part.length > 11 && /\p{L}{2,}\P{L}+\p{L}{2,}/u.test(part))
  .filter((part) => ![...alsoPolish].some((word) => word.includes(part)))

/** Words that no Polish sentence has. */
const plainEnglish =
  /\b(?:the|and|of|with|from|into|your|this|that|are|was|were|has|have|which|when|bottles?|jars?|batch(?:es)?|moves?|sugar|strength)\b/i

/** Of the program itself, or an example of how a locale writes: in no language. */
const alike = [
  /https?:\/\/\S+/g,
  /\S*\.(?:ratafia|sqlite|zip|csv)\b/g,
  /Ratafia \d+\.\d+\.\d+/g,
  /12\D?345\D6 · \S+$/g,
]

/** Where a dialog is opened by one press, and the name of what is pressed. */
const dialogs: readonly (readonly [path: string, by: string])[] = [
  ['/today', pl.finder.open],
  ['/today', pl.shell.settings.open],
  ['/today', pl.today.calendar.open],
  ['/batches', pl.batches.new],
  ['/batches/plum-2026', pl.batch.edit],
  ['/cellar-room', pl.cellarRoom.buy],
  ['/cellar-room', pl.cellarRoom.addJar],
  ['/fruits', pl.fruits.add],
  ['/shelf/view/places', pl.shelf.places.add],
  [`/draft/${draftId}`, pl.draft.editor.start],
  ['/draft', pl.draft.recipes.keepBatch],
  ['/draft', pl.draft.recipes.scaleOne.replace('{{name}}', recipeName)],
  ['/draft', pl.draft.recipes.compareOne.replace('{{name}}', recipeName)],
  ['/labels?lots=sour-cherry-2025-bottles', pl.labels.sheet.newSheet],
  ['/marry/mend/window', pl.marry.record.open],
]

test('what is wrong is noticed', () => {
  const wrong = [
    'Take a reading',
    'Od 27 lis it begins to ferment',
    'shell.settings.title',
    '1.50 l',
  ]
  expect(wrongIn(wrong, new Set())).toHaveLength(wrong.length)
  const right = ['Zapisz odczyt', 'Damson of the house: 1,50 l', 'wiśnia']
  expect(wrongIn(right, new Set(['Damson of the house']))).toEqual([])
})

test('every screen, dialog and form in Polish is Polish', async ({ folder, page }) => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
  await readyBook(host)
  const own = new Set<string>()
  page.on('response', async (response) => {
    if (!response.url().includes('/rpc/')) return
    for (const text of ownWords(await response.json().catch(() => undefined))) own.add(text)
  })
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await page.goto(host.link)
  await page.getByRole('button', { name: en.shell.settings.open, exact: true }).click()
  await page.getByText('Polski', { exact: true }).click()
  await page.getByRole('button', { name: pl.shell.settings.done, exact: true }).click()
  await expect(page.locator('html')).toHaveAttribute('lang', 'pl')

  const faults: string[] = []
  let read = 0
  const look = async (where: string) => {
    const texts = await whatIsRead(page)
    read += texts.length
    for (const told of wrongIn(texts, own)) faults.push(`${where}: ${told}`)
  }
  const open = async (path: string) => {
    await goTo(page, path)
    await page.locator('h1').first().waitFor()
    await settled(page)
  }

  for (const path of Object.values(screenSamples).flat()) {
    await open(path)
    await look(path)
    const alerts = await page.getByRole('alert').allInnerTexts()
    // The file that is looked into is not there, and says so.
    const expected = path === lookIntoPath(absentFile) ? 1 : 0
    for (const alert of alerts.slice(expected)) faults.push(`${path}: an alert: ${alert}`)
  }
  for (const [path, by] of dialogs) {
    await open(path)
    await page.getByRole('button', { name: by, exact: true }).first().click()
    await expect(page.getByRole('dialog'), by).toBeVisible()
    await settled(page)
    await look(`${path}, ${by}`)
    await page.keyboard.press('Escape')
    await expect(page.getByRole('dialog'), by).toBeHidden()
  }
  await open('/batches/plum-2026')
  await page.getByRole('button', { name: pl.batch.log.more, exact: true }).click()
  const kinds = page.locator('[data-kind]')
  const count = await kinds.count()
  expect(count).toBeGreaterThan(10)
  for (let at = 0; at < count; at += 1) {
    await kinds.nth(at).click()
    await settled(page)
    await look(`/batches/plum-2026, ${await kinds.nth(at).innerText()}`)
  }

  await page.close()
  await host.stop()
  expect(read).toBeGreaterThan(3000)
  expect([...new Set(faults)]).toEqual([])
})

/** Names and notes in a reply: what a maker wrote. */
function ownWords(value: unknown, name = ''): string[] {
  if (typeof value === 'string')
    return ['name', 'note', 'glass', 'file', 'latin'].includes(name) ? [value] : []
  if (Array.isArray(value)) return value.flatMap((each) => ownWords(each, name))
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, each]) => ownWords(each, key))
}

function wrongIn(texts: readonly string[], own: ReadonlySet<string>): string[] {
  const longestFirst = [...own].filter((text) => text.length > 2)
  longestFirst.sort((a, b) => b.length - a.length)
  return texts.flatMap((text) => {
    if (own.has(text)) return []
    let rest = text
    for (const word of longestFirst) rest = rest.replaceAll(word, '·')
    for (const pattern of alike) rest = rest.replaceAll(pattern, '·')
    const part = englishParts.find((each) => rest.includes(each))
    if (english.has(rest) || part !== undefined || plainEnglish.test(rest))
      return [`English: ${text}`]
    if (/\{\{|\b[a-z]\w*(?:\.[a-z]\w*){2,}\b/.test(rest)) return [`a key: ${text}`]
    if (/\d\.\d/.test(rest)) return [`a decimal point: ${text}`]
    return []
  })
}

/** Long enough without a request, and nothing says that it is being read. */
async function settled(page: Page): Promise<void> {
  await expect(page.getByText(pl.parts.loading)).toHaveCount(0, { timeout: 30_000 })
  await page.waitForTimeout(250)
  await expect(page.getByText(pl.parts.loading)).toHaveCount(0, { timeout: 30_000 })
}

// What follows runs in the page.

function whatIsRead(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true
    const texts = [document.title]
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    while (walk.nextNode()) {
      const parent = walk.currentNode.parentElement
      if (parent && !['SCRIPT', 'STYLE'].includes(parent.tagName) && !parent.closest('[lang="la"]'))
        texts.push(walk.currentNode.nodeValue ?? '')
    }
    for (const name of ['aria-label', 'placeholder', 'title', 'alt', 'aria-description'])
      for (const element of document.querySelectorAll(`[${name}]`))
        texts.push(element.getAttribute(name) ?? '')
    return texts.map((text) => text.replaceAll('\u00a0', ' ').trim()).filter(Boolean)
  })
}
