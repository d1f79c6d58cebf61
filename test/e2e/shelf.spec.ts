/** The shelf by hand on the demo: real service, real book, every act by a press or a key. */
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import type { ShelfLots } from '../../shared/schemas/shelf.ts'
import { expect, test as plain } from './cellar-test.ts'
import { startHost, type HostProcess } from './host-process.ts'

const test = plain.extend<{ demo: HostProcess }>({
  demo: async ({ folder, page }, use) => {
    const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
    await page.goto(host.link)
    await page.getByRole('link', { name: 'Shelf', exact: true }).click()
    await expect(page.getByText(/^[\d,]+ bottles of \d+ lots$/)).toBeVisible()
    await use(host)
    await host.stop()
  },
})

// Each fills a demo cellar first, and goes through many screens.
test.describe.configure({ timeout: 240_000 })

async function shelfLots({ call }: HostProcess): Promise<ShelfLots> {
  const reply = await call('shelf.lots', { withGone: true })
  if (!reply.ok) throw new Error(reply.error.message)
  return reply.value as ShelfLots
}

const bottles = ({ lots }: ShelfLots) => lots.reduce((sum, { lot }) => sum + lot.count, 0)

/** A lot by its id: two sizes may have one name. */
async function lotOf(demo: HostProcess, lotId: string) {
  const found = (await shelfLots(demo)).lots.find(({ lot }) => lot.id === lotId)
  if (!found) throw new Error(`no lot ${lotId}`)
  return found.lot
}

/** The fullest lot that stands in one place, and whose name is its own. */
async function fullestLot(demo: HostProcess) {
  const { lots } = await shelfLots(demo)
  const standing = lots.map(({ lot }) => lot).filter(({ count }) => count > 0)
  const names = standing.map(({ name }) => name)
  const [fullest] = standing
    .filter(
      ({ name, places }) => places.length === 1 && names.indexOf(name) === names.lastIndexOf(name),
    )
    .toSorted((a, b) => b.count - a.count)
  if (!fullest || fullest.count < 4) throw new Error('the demo has no lot of four bottles')
  return fullest
}

async function expectAxeClean(page: Page) {
  const { violations } = await new AxeBuilder({ page }).analyze()
  expect(
    violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.target).join(' ')}`),
  ).toEqual([])
}

const told = (page: Page) => page.getByRole('status', { name: 'What was done last' })

async function choose(page: Page, name: string, act: string) {
  await page.getByRole('button', { name: `More for ${name}` }).click()
  await page.getByRole('menuitem', { name: act }).click()
  return page.getByRole('dialog')
}

test('a bottle is drawn, opened, poured, carried and tasted, and an act is taken back', async ({
  demo,
  page,
}) => {
  const lot = await fullestLot(demo)
  await page.getByRole('searchbox').fill(lot.name)
  const row = page.getByRole('row', { name: lot.name })
  await row.getByRole('button', { name: `Draw: ${lot.name}` }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Draw' }).click()
  await expect(told(page)).toHaveText(`Recorded: Drew 1 bottle of ${lot.name}.`)
  await expect.poll(async () => (await lotOf(demo, lot.id)).count).toBe(lot.count - 1)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(told(page)).toHaveText(`Taken back: Drew 1 bottle of ${lot.name}.`)
  expect((await lotOf(demo, lot.id)).count).toBe(lot.count)

  await row.press('Enter')
  await expect(page.getByRole('heading', { name: lot.name, level: 1 })).toBeVisible()
  const tooMany = await choose(page, lot.name, 'Give away')
  await tooMany.getByRole('textbox', { name: /Bottles/ }).fill('99')
  await expect(tooMany.getByText(/you asked for 99 bottles/)).toBeVisible()
  await tooMany.getByRole('button', { name: `Use the nearest: ${lot.count} bottles` }).click()
  await expect(tooMany.getByText(`${lot.count} there; 0 left after this.`)).toBeVisible()
  await page.keyboard.press('Escape')

  await (
    await choose(page, lot.name, 'Open a bottle')
  )
    .getByRole('button', { name: 'Open it' })
    .click()
  await expect(told(page)).toHaveText(`Recorded: Opened a bottle of ${lot.name}.`)
  const opened = page.getByRole('region', { name: 'Opened bottles' })
  await expect(opened).toContainText(`${lot.bottleSizeMl} ml of ${lot.bottleSizeMl} ml left`)
  await opened
    .getByRole('button', { name: /^Pour a glass/ })
    .last()
    .click()
  await page
    .getByRole('dialog')
    .getByRole('textbox', { name: /How much/ })
    .fill('5 cl')
  await page.getByRole('dialog').getByRole('button', { name: 'Pour' }).click()
  await expect(told(page)).toContainText('Poured 50 ml')
  await expect(opened).toContainText(`${lot.bottleSizeMl - 50} ml of ${lot.bottleSizeMl} ml left`)

  const carry = await choose(page, lot.name, 'Move to another place')
  await carry.getByRole('textbox', { name: /Bottles/ }).fill('2')
  await carry.getByRole('combobox', { name: /^To/ }).selectOption({ index: 1 })
  await carry.getByRole('button', { name: 'Move' }).click()
  await expect(told(page)).toContainText(`Moved 2 bottles of ${lot.name}`)
  expect((await lotOf(demo, lot.id)).places).toHaveLength(2)

  await page.getByRole('button', { name: 'Taste' }).first().click()
  await expect(page.getByRole('slider', { name: 'Aroma' })).toBeFocused()
  await page.keyboard.type('8')
  await page.keyboard.press('Tab')
  await page.keyboard.type('10')
  await expectAxeClean(page)
  await page.getByRole('radio', { name: 'ready' }).check({ force: true })
  await page.getByRole('textbox', { name: /In words/ }).fill('Rounder than last year.')
  await page.getByRole('button', { name: 'Keep the tasting' }).click()
  await expect(told(page)).toHaveText(`Recorded: Tasted ${lot.name}: ready.`)
  const tastings = page.getByRole('region', { name: 'Tastings' })
  await expect(tastings.getByText('Rounder than last year.')).toBeVisible()
  await expect(tastings.getByText('Fruit 10')).toBeVisible()
  await expectAxeClean(page)
})

test('a place is counted, and the differences go in and out of the book as one', async ({
  demo,
  page,
}) => {
  await page.getByRole('link', { name: 'Places', exact: true }).click()
  await page
    .getByRole('link', { name: /^Take stock/ })
    .first()
    .click()
  const table = page.getByRole('table', { name: 'Count of each lot' })
  const fields = table.getByRole('textbox')
  const before = await shelfLots(demo)
  await fields.nth(0).fill('0')
  await fields.nth(1).fill('999')
  await expect(table.getByText(/999 bottles/)).toBeVisible()
  await expect(page.getByText(/1 count cannot be/)).toBeVisible()
  await fields.nth(1).fill('0')
  await expect(page.getByText(/1 count cannot be/)).toBeHidden()
  await expectAxeClean(page)
  await page.getByRole('button', { name: 'The others are as booked' }).click()
  await page.getByRole('button', { name: 'Record the differences' }).click()
  await expect(told(page)).toContainText('and 1 more')
  expect(bottles(await shelfLots(demo))).toBeLessThan(bottles(before))
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(told(page)).toContainText('Taken back')
  expect(bottles(await shelfLots(demo))).toBe(bottles(before))
})

test('every view is clean, tells the same as a table, and leads where it says', async ({
  demo,
  page,
}) => {
  await expectAxeClean(page)
  const views = page.getByRole('navigation', { name: 'Views of the shelf' })
  for (const [view, drawn, table] of [
    ['Ageing', /^×/, 'Lots and their windows'],
    ['Stock', 'now, then forecast', 'Stock by month'],
  ] as const) {
    await views.getByRole('link', { name: view }).click()
    await expect(page.getByText(drawn).first()).toBeVisible()
    await expectAxeClean(page)
    await page.getByRole('button', { name: 'Show as table' }).click()
    await expect(page.getByRole('table', { name: table })).toBeVisible()
  }
  await views.getByRole('link', { name: 'Drink first' }).click()
  await expect(page.getByRole('heading', { name: 'Drink these first' })).toBeVisible()
  await expectAxeClean(page)
  await views.getByRole('link', { name: 'Places' }).click()
  await expectAxeClean(page)

  const lot = await fullestLot(demo)
  await page.goto(`${demo.origin}/#/shelf/${lot.id}`)
  await expect(page.getByRole('heading', { name: 'Where it came from' })).toBeVisible()
  const picture = page.getByRole('list', { name: 'Lineage as a picture, from left to right' })
  const own = picture.getByRole('button', { name: new RegExp(`^Bottles: ${lot.name}`) }).first()
  await own.focus()
  await expect(page.getByText(new RegExp(`^Bottles: ${lot.name}: .* passed through`))).toBeVisible()
  await expectAxeClean(page)
  const others = page.getByRole('combobox', { name: /Compare with/ })
  await others.selectOption({ index: 2 })
  await expect(page.getByRole('table', { name: 'Both lots in numbers' })).toBeVisible()

  await page.getByRole('link', { name: 'Jars & pantry' }).click()
  await page.getByRole('button', { name: /used up/ }).click()
  await page
    .getByRole('link', { name: /^Where did it go\? ./ })
    .last()
    .click()
  await expect(page.getByRole('table', { name: 'Where the purchase is now' })).toBeVisible()
  await expectAxeClean(page)
})
