/** The demo is written out in an open form, and brought into another book by hand: the same cellar. */
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import { expect, test } from './cellar-test.ts'
import { startHost } from './host-process.ts'

/** None of them goes on with the clock, as jars do that steep. */
const shown = ['pantry.list', 'bottles.list', 'cellar.balance', 'cellar.costs'] as const

test('the whole demo goes out, and comes in on another machine', async ({
  ratafia,
  page,
  folder,
}) => {
  page.setDefaultTimeout(20_000)
  test.setTimeout(120_000)
  await ratafia.call('cellar.openDemo')
  await page.reload()
  await page.getByRole('link', { name: 'Safekeeping' }).click()
  await page.getByRole('button', { name: 'Export the whole cellar' }).click()
  await expect(page.getByText(/brought in again for a trial, and found the same/)).toBeVisible({
    timeout: 60_000,
  })
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])
  const exports = join(folder, 'exports')
  expect(readdirSync(exports)).toEqual([expect.stringMatching(/^alder-end-demo.*\.cellar\.zip$/)])

  const other = await startHost(join(folder, 'other', 'cellar.ratafia'))
  await page.goto(other.link)
  await page.getByRole('button', { name: 'Choose an export' }).click()
  await page.getByRole('textbox', { name: 'Look in folder' }).fill(exports)
  await page.getByRole('button', { name: 'Look there' }).click()
  await page.getByRole('button', { name: /Look into it: the cellar/ }).click()
  const go = page.getByRole('button', { name: 'Bring in this cellar' })
  await expect(go).toBeVisible({ timeout: 60_000 })
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])
  await go.click()
  await expect(page.getByRole('navigation', { name: 'Screens' })).toBeVisible({ timeout: 60_000 })
  for (const channel of shown)
    expect(await other.call(channel)).toEqual(await ratafia.call(channel))
  await other.stop()
})
