/** Today by hand, on the demo: a task done by its form, one put off, the calendar as file and address. */
import { AxeBuilder } from '@axe-core/playwright'
import { copyFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import ICAL from 'ical.js'
import type { Page } from '@playwright/test'
import { expect as plainExpect, test as plain } from './cellar-test.ts'
import { startHost, type HostProcess } from './host-process.ts'

interface Worker {
  /** The demo's file, made once for all tests of this file. */
  demoFile: string
}

const test = plain.extend<{ demo: HostProcess }, Worker>({
  demoFile: [
    // Playwright reads what a fixture needs from this pattern.
    // oxlint-disable-next-line no-empty-pattern
    async ({}, use) => {
      const folder = mkdtempSync(join(tmpdir(), 'ratafia-demo-'))
      const host = await startHost(join(folder, 'cellar.ratafia'))
      await host.call('cellar.openDemo')
      await host.stop()
      await use(join(folder, demoName))
      rmSync(folder, { recursive: true })
    },
    { scope: 'worker', timeout: 180_000 },
  ],
  demo: async ({ folder, demoFile, page }, use) => {
    page.setDefaultTimeout(30_000)
    copyFileSync(demoFile, join(folder, demoName))
    const host = await startHost(join(folder, 'cellar.ratafia'), { args: ['--no-open', '--demo'] })
    await page.goto(host.link)
    await page.getByRole('region', { name: 'Wants hands' }).waitFor()
    await use(host)
    await host.stop()
  },
})

const demoName = 'alder-end-demo.ratafia'

// No test is a stopwatch.
test.describe.configure({ timeout: 120_000 })
const expect = plainExpect.configure({ timeout: 30_000 })

const pressing = (page: Page) => page.getByRole('region', { name: 'Wants hands' })
const countOf = async (page: Page) =>
  Number(/^\d+/.exec((await page.getByText(/things? wants? your hands/).textContent()) ?? '')?.[0])

/** Events of a calendar by UID, read by a parser that is not ours. */
function eventsOf(ics: string) {
  const calendar = new ICAL.Component(ICAL.parse(ics) as string)
  return calendar.getAllSubcomponents('vevent').map((found) => ({
    summary: new ICAL.Event(found).summary,
    sequence: new ICAL.Event(found).sequence,
    status: String(found.getFirstPropertyValue('status')),
  }))
}

test('a task opens its form filled in, and is gone once that is logged', async ({ demo, page }) => {
  const before = await countOf(page)
  expect(await pressing(page).getByRole('listitem').count()).toBe(before)
  const line = pressing(page).getByRole('listitem').filter({ hasText: 'Marry the extracts' })
  const name = await line
    .locator('span')
    .filter({ hasText: /\d{4}$/ })
    .last()
    .textContent()
  await line.getByRole('link', { name: 'Marry the extracts' }).click()

  const form = page.getByRole('form', { name: 'Marry' })
  await expect(form).toBeVisible()
  expect(await form.getByRole('checkbox', { checked: true }).count()).toBeGreaterThan(1)
  await form.getByRole('button', { name: 'Record' }).click()
  await expect(form).toBeHidden()
  await expect(page.getByRole('status', { name: 'What was done last' })).toContainText('Recorded')
  await expect(page).toHaveURL(/#\/batches\/[^/]+$/)

  await page.getByRole('link', { name: 'Today', exact: true }).click()
  await expect(pressing(page)).toBeVisible()
  await expect(pressing(page).getByRole('link', { name: 'Marry the extracts' })).toBeHidden()
  expect(await countOf(page)).toBe(before - 1)
  expect(name).toMatch(/\d{4}$/)
  expect(demo.output()).toContain('Ratafia is open')
})

test('a task is put off by keyboard, brought back by its undo', async ({ demo, page }) => {
  const before = await countOf(page)
  // Due by days, not by the hour at which the demo is made.
  const task = pressing(page).getByRole('link', { name: 'Marry the extracts' })
  await task.focus()
  await page.keyboard.press('p')
  await expect(page.getByRole('menuitem', { name: /^Until tomorrow/ })).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(page.getByText(/^Put off until .*: Marry the extracts/)).toBeVisible()
  await expect(task).toBeHidden()
  expect(await countOf(page)).toBe(before - 1)
  await expect(page.getByRole('region', { name: 'Put off' })).toContainText('Marry the extracts')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(task).toBeVisible()
  expect(await countOf(page)).toBe(before)
  expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([])
  expect(demo.output()).toContain('Ratafia is open')
})

test('a round of turning is logged at once', async ({ demo, page }) => {
  const line = pressing(page)
    .getByRole('listitem')
    .filter({ hasText: /^Turn \d+ jars/ })
  await line.getByRole('button', { name: 'Log as turned' }).click()
  await expect(page.getByText(/^Recorded: .*, and \d+ more\.$/)).toBeVisible()
  await expect(line).toBeHidden()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(line).toBeVisible()
  expect(demo.output()).toContain('Ratafia is open')
})

test('the calendar is saved as a file, and served at an address until that is closed', async ({
  demo,
  page,
}) => {
  await page.getByRole('button', { name: 'Calendar' }).click()
  const dialog = page.getByRole('dialog')
  const saved = async () => {
    const downloading = page.waitForEvent('download')
    await dialog.getByRole('button', { name: 'Save the calendar file' }).click()
    const download = await downloading
    expect(download.suggestedFilename()).toBe('ratafia-demo.ics')
    return eventsOf(readFileSync(await download.path(), 'utf8'))
  }
  const first = await saved()
  expect(first.length).toBeGreaterThan(20)
  expect(first.every(({ status, sequence }) => status === 'CONFIRMED' && sequence === 0)).toBe(true)
  expect(first.some(({ summary }) => summary.startsWith('Pour the spirit: '))).toBe(true)

  await dialog.getByRole('button', { name: 'Serve it at an address' }).click()
  const address = await dialog.getByLabel('Address for the calendar program').inputValue()
  expect(address.startsWith(`${demo.origin}/calendar/`)).toBe(true)
  const served = await fetch(address)
  expect(served.headers.get('content-type')).toBe('text/calendar; charset=utf-8')
  expect(eventsOf(await served.text())).toHaveLength(first.length)
  expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([])

  await dialog.getByRole('button', { name: 'Make a new address' }).click()
  await expect(dialog.getByLabel('Address for the calendar program')).not.toHaveValue(address)
  expect((await fetch(address)).status).toBe(404)
  const renewed = await dialog.getByLabel('Address for the calendar program').inputValue()
  await dialog.getByRole('button', { name: 'Close the address' }).click()
  await expect(dialog.getByRole('button', { name: 'Serve it at an address' })).toBeVisible()
  expect((await fetch(renewed)).status).toBe(404)
})
