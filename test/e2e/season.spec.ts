/** A season by hand on the demo: plan it, look at the jars, keep it, buy, and begin a batch on paper. */
import { AxeBuilder } from '@axe-core/playwright'
import { readFileSync } from 'node:fs'
import ICAL from 'ical.js'
import type { Page } from '@playwright/test'
import type { SeasonWishes } from '../../shared/schemas/season.ts'
import { expect, test } from './cellar-test.ts'

async function expectNoFault(page: Page) {
  const { violations } = await new AxeBuilder({ page }).analyze()
  expect(violations.map(({ id }) => id)).toEqual([])
}

async function makePlan(page: Page) {
  await page.getByRole('button', { name: /^Make the plan/ }).click()
  await expect(page.getByRole('progressbar')).toBeVisible()
  await expect(page.getByRole('button', { name: 'Keep this plan' })).toBeVisible({
    timeout: 120_000,
  })
}

test('next season is planned, kept, bought for and begun on paper', async ({ ratafia, page }) => {
  test.setTimeout(300_000)
  page.setDefaultTimeout(15_000)
  await page.getByRole('button', { name: 'Look round the demo' }).click()
  await expect(page.getByText(/Demo cellar/)).toBeVisible({ timeout: 120_000 })
  await page.getByRole('link', { name: 'Season', exact: true }).click()
  await expect(page.getByText(/No plan is made yet/)).toBeVisible()
  await makePlan(page)
  await expect(page.getByText(/^Lay down \d+ bottles \(/)).toBeVisible()
  await expectNoFault(page)

  const jars = page.getByRole('region', { name: 'Jars over the year' })
  await jars
    .getByRole('button', { name: /steeps, / })
    .first()
    .hover()
  await expect(jars.getByRole('paragraph').first()).toHaveText(/: .+, steeps, .+ \(\d+ weeks?\)/)
  await jars.getByRole('button', { name: 'Show as table' }).click()
  await expect(jars.getByRole('row', { name: /Steeping/ }).first()).toBeVisible()

  // A wish beyond what drinking asks for, kept as it is written; money that does not reach.
  await page.getByRole('link', { name: 'Wishes and limits' }).click()
  await page.getByRole('button', { name: 'Add a wish for Sour cherry' }).click()
  const wish = page.getByRole('group', { name: 'Wish for Sour cherry' })
  await wish.getByRole('textbox', { name: /At least/ }).fill('9')
  await wish.getByText('must', { exact: true }).click()
  await page.getByRole('textbox', { name: /Money for the season/ }).fill('25')
  await expect(page.getByText('Kept as you go.')).toBeVisible()
  await expect(page.getByText(/The wishes have changed since/)).toBeVisible()
  await expectNoFault(page)
  const reply = await ratafia.call('season.wishes')
  const wishes = (reply.ok ? reply.value : undefined) as SeasonWishes
  expect(wishes.limits.moneyMinor).toBe(2500)
  expect(wishes.wishes).toMatchObject([
    { kindId: 'sour_cherry', atLeastMl: 9000, priority: 'must' },
  ])

  await page.getByRole('link', { name: 'Plan', exact: true }).click()
  await page.getByText('10 s', { exact: true }).click()
  await makePlan(page)
  await expect(page.getByText(/less than wanted: the money does not reach\./)).toBeVisible()
  await expect(page.getByRole('region', { name: 'What stands in the way' })).toContainText(
    'Because the money does not reach',
  )
  await expectNoFault(page)
  await page.getByRole('button', { name: 'Keep this plan' }).click()
  await expect(page.getByText(/Kept \d/)).toBeVisible()

  await page.getByRole('link', { name: 'To buy' }).click()
  await expectNoFault(page)
  // What is to be bought stands in the calendar, by week and shop.
  await page.getByRole('link', { name: 'Set up the calendar' }).click()
  const calendar = page.getByRole('dialog', { name: 'What is to be done, in your calendar' })
  const savingCalendar = page.waitForEvent('download')
  await calendar.getByRole('button', { name: 'Save the calendar file' }).click()
  const ics = readFileSync(await (await savingCalendar).path(), 'utf8')
  const shopping = new ICAL.Component(ICAL.parse(ics) as string)
    .getAllSubcomponents('vevent')
    .map((found) => new ICAL.Event(found))
    .filter(({ summary }) => summary === 'Buy at the market')
  expect(shopping.some(({ description }) => /^Sour cherry, \d/m.test(description))).toBe(true)
  await calendar.getByRole('button', { name: 'Done' }).click()
  await expect(page).toHaveURL(/#\/today$/)
  await page.getByRole('link', { name: 'Season', exact: true }).click()
  await page.getByRole('link', { name: 'To buy' }).click()

  const tick = page.getByRole('button', { name: /^Bought: Sour cherry/ })
  await tick.click()
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('textbox', { name: /How much was bought/ }).fill('1.25')
  await dialog.getByRole('textbox', { name: /What it cost/ }).fill('7.50')
  await dialog.getByRole('button', { name: 'It is bought' }).click()
  await expect(dialog).toBeHidden()
  const bought = page.getByRole('row', { name: /Sour cherry .*bought/ })
  await expect(bought).toContainText(/1\.25\skg/)
  await expect(bought).toContainText('€7.50')

  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save as CSV' }).click()
  const saved = await saving
  expect(saved.suggestedFilename()).toMatch(/\.csv$/)
  expect(readFileSync(await saved.path(), 'utf8')).toContain('Sour cherry')
  const printing = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Print the list' }).click()
  const printed = await printing
  expect(readFileSync(await printed.path(), 'latin1').slice(0, 5)).toBe('%PDF-')

  await page.getByRole('link', { name: 'Jars & pantry' }).click()
  await expect(page.getByRole('row', { name: /Sour cherry.*1\.25\skg/ })).toBeVisible()

  await page.getByRole('link', { name: 'Season', exact: true }).click()
  await page.getByRole('link', { name: 'To buy' }).click()
  await page.getByRole('button', { name: /^Take it back: Sour cherry/ }).click()
  await expect(tick).toBeVisible()

  await page.getByRole('link', { name: 'Fruit calendar' }).click()
  await expect(page.getByRole('link', { name: /^Sour cherry: .*bought/ })).toBeVisible()
  await expectNoFault(page)
  await page.getByRole('link', { name: 'Last season' }).click()
  await expect(page.getByRole('row', { name: /Sour cherry/ })).toBeVisible()
  await expectNoFault(page)

  await page.getByRole('link', { name: 'Plan', exact: true }).click()
  await page
    .getByRole('button', { name: /^Open as a draft: Sour cherry/ })
    .first()
    .click()
  await expect(page.getByRole('heading', { name: /^Sour cherry 20\d\d$/, level: 1 })).toBeVisible()
  await expect(page.getByRole('button', { name: 'Start as a batch' })).toBeEnabled()
})
