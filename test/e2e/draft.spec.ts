/** A batch on paper by hand: begin, turn, print, start; then the batch's page follows the plan. */
import { AxeBuilder } from '@axe-core/playwright'
import { readFileSync } from 'node:fs'
import { expect, test } from './cellar-test.ts'

test('a draft is turned, printed and started, and its plan is followed', async ({
  ratafia,
  page,
}) => {
  page.setDefaultTimeout(10_000)
  await page.getByRole('textbox', { name: /How many: Jar of 5/ }).fill('4')
  await page.keyboard.press('Tab')
  await page.getByRole('button', { name: 'Start my cellar' }).click()

  await page.getByRole('link', { name: 'Draft', exact: true }).click()
  await page.getByLabel('Fruit', { exact: true }).selectOption('Sour cherry')
  await page.getByRole('button', { name: 'Draft it' }).click()
  await expect(page.getByText(/bottles at 32\.0\s% vol with 200\sg\/L sugar/)).toBeVisible()

  const strength = page.getByRole('slider', { name: 'Strength' })
  await strength.focus()
  await page.keyboard.press('ArrowLeft')
  await page.keyboard.press('ArrowLeft')
  await expect(page.getByText(/bottles at 31\.8\s% vol with 200\sg\/L sugar/)).toBeVisible()

  const fault = await new AxeBuilder({ page }).analyze()
  expect(fault.violations.map(({ id }) => id)).toEqual([])

  const downloading = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Print the plan' }).click()
  const download = await downloading
  expect(download.suggestedFilename()).toMatch(/^Sour cherry \d{4}-\d\d-\d\d\.pdf$/)
  expect(readFileSync(await download.path(), 'latin1').slice(0, 5)).toBe('%PDF-')

  await page.getByRole('button', { name: 'Start as a batch' }).click()
  await page.getByRole('button', { name: 'Start it' }).click()
  await expect(page.getByRole('heading', { name: 'Sour cherry', level: 1 })).toBeVisible()
  const plan = page.getByRole('region', { name: 'The plan' })
  await expect(plan).toContainText('Next by the plan: Charge fruit')
  await expect(plan.getByRole('row', { name: /Bottled Planned/ })).toContainText(/31\.8\s% vol/)

  // The form comes filled in as planned; what was really weighed replaces it.
  await plan.getByRole('button', { name: 'Log it as planned' }).click()
  const amount = page.getByRole('textbox', { name: 'How much', exact: true })
  await expect(amount).not.toHaveValue('')
  await ratafia.stop()
})
