/** The list of all moves on the demo: found, amended with all that follows in sight, struck and put back. */
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { MovePage } from '../../shared/schemas/all-moves.ts'
import { expect, test } from './cellar-test.ts'
import { startHost } from './host-process.ts'

// It fills a demo cellar first.
test.describe.configure({ timeout: 120_000 })

test('moves that name no batch are amended, struck and put back from the list of all moves', async ({
  folder,
  page,
}) => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
  const total = async (filter: object) => {
    const reply = await host.call('moves.list', { filter, from: 0, count: 1 })
    if (!reply.ok) throw new Error(reply.error.message)
    return (reply.value as MovePage).total
  }
  await page.goto(host.link)
  await page.getByRole('link', { name: 'Safekeeping', exact: true }).click()
  await page.getByRole('link', { name: 'All moves…' }).click()
  await expect(page.getByRole('heading', { name: 'All moves', level: 1 })).toBeVisible()
  await expect(page.getByText(/^[\d,]+ moves$/)).toBeVisible()
  const table = page.getByRole('table', { name: 'Moves, newest first' })
  await expect(table.getByRole('button', { name: /^Change: / }).first()).toBeVisible()
  expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([])

  // The end of a long list is read when it is gone to.
  await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight))
  await expect(table.getByText(/2021/).first()).toBeVisible()
  await page.evaluate(() => window.scrollTo(0, 0))

  await page.getByLabel('What', { exact: true }).selectOption({ label: 'Buy' })
  const bought = await total({ kind: 'buy' })
  await expect(page.getByText(`${bought} moves match`)).toBeVisible()
  await table
    .getByRole('button', { name: /^Change: Bought .* of Sour cherry/ })
    .last()
    .click()
  await page.getByRole('menuitem', { name: 'Amend…' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('textbox', { name: /^Bought/ }).fill('2.5 kg')
  await expect(dialog.getByRole('row', { name: /^Sour cherry/ })).toContainText('→')
  expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([])
  await dialog.getByRole('button', { name: 'Amend', exact: true }).click()
  await expect(dialog).toBeHidden()
  await expect(page.getByText(/^Changed: Bought 2\.50\skg of Sour cherry/)).toBeVisible()

  await page.getByLabel('What', { exact: true }).selectOption({ label: 'Draw a bottle' })
  const drawn = await total({ kind: 'drawBottle' })
  await expect(page.getByText(`${drawn} moves match`)).toBeVisible()
  await table
    .getByRole('button', { name: /^Change: Drew / })
    .first()
    .click()
  await page.getByRole('menuitem', { name: 'Strike…' }).click()
  await expect(dialog.getByText(/\d bottles? → \d+ bottles?/)).toBeVisible()
  await dialog.getByRole('button', { name: 'Strike it' }).click()
  await expect(page.getByText(`${drawn - 1} moves match`)).toBeVisible()

  await page.getByText('Struck ones instead').last().click()
  await expect(page.getByText('1 move struck or taken back')).toBeVisible()
  await table.getByRole('button', { name: /^Change: Drew / }).click()
  await page.getByRole('menuitem', { name: 'Put back…' }).click()
  await dialog.getByRole('button', { name: 'Put it back' }).click()
  await expect(page.getByText(/^Put back: Drew /)).toBeVisible()
  expect(await total({ kind: 'drawBottle' })).toBe(drawn)
  await host.stop()
})
