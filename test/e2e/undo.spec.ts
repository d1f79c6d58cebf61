/** Undo and redo across screens, by keys and by the button of the notice, on the demo. */
import { join } from 'node:path'
import type { ShelfLots } from '../../shared/schemas/shelf.ts'
import { batchPage } from './batch-page.ts'
import { expect, test } from './cellar-test.ts'
import { startHost } from './host-process.ts'

// It fills a demo cellar first.
test.describe.configure({ timeout: 120_000 })

test('what was done on several screens is taken back in its order, and put back', async ({
  folder,
  page,
}) => {
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
  await page.goto(host.link)
  const told = page.getByRole('status', { name: 'What was done last' })

  await page.getByRole('link', { name: 'Shelf', exact: true }).click()
  const draw = page.getByRole('button', { name: /^Draw: / }).first()
  await draw.click()
  await page.getByRole('dialog').getByRole('button', { name: 'Draw' }).click()
  await expect(told).toHaveText(/^Recorded: Drew 1 bottle of /)
  const bottles = async () => {
    const reply = await host.call('shelf.lots', { withGone: true })
    if (!reply.ok) throw new Error(reply.error.message)
    return (reply.value as ShelfLots).lots.reduce((sum, { lot }) => sum + lot.count, 0)
  }
  const drawn = await bottles()

  await page.getByRole('link', { name: 'Batches', exact: true }).click()
  await page.getByRole('row', { name: /Plum 2026/ }).click()
  const batch = batchPage(page)
  const note = await batch.open('Note')
  await note.getByRole('textbox', { name: /^What you saw/ }).fill('Smells of almonds')
  await note.getByRole('button', { name: 'Record' }).click()
  await expect(note).toBeHidden()
  await expect(batch.lastStep).toContainText('Smells of almonds')

  await page.keyboard.press('Control+z')
  await expect(told).toHaveText(/^Taken back: /)
  await expect(page.getByText('Smells of almonds')).toBeHidden()
  await page.keyboard.press('Control+z')
  await expect(told).toHaveText(/^Taken back: Drew 1 bottle of /)
  expect(await bottles()).toBe(drawn + 1)

  await page.keyboard.press('Control+Shift+z')
  await expect(told).toHaveText(/^Put back: Drew 1 bottle of /)
  expect(await bottles()).toBe(drawn)
  await page.keyboard.press('Control+y')
  await expect(batch.lastStep).toContainText('Smells of almonds')

  // In a field the key belongs to what is being written.
  const next = await batch.open('Note')
  await next.getByRole('textbox', { name: /^What you saw/ }).fill('Not yet')
  await page.keyboard.press('Control+z')
  await expect(page.getByRole('region', { name: 'Ledger' })).toContainText('Smells of almonds')
  await next.getByRole('button', { name: 'Leave it' }).click()

  await page.getByRole('button', { name: 'Undo', exact: true }).click()
  await expect(page.getByText('Smells of almonds')).toBeHidden()
  await page.getByRole('button', { name: 'Redo', exact: true }).click()
  await expect(batch.lastStep).toContainText('Smells of almonds')
  await host.stop()
})
