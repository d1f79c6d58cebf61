/** A batch's page as a maker uses it: choose a move, fill its form in, look at what it will do, record. */
import { expect, type Locator, type Page } from '@playwright/test'

export interface BatchPage {
  /** Opens the form of a move, such as `Pour spirit`. */
  open: (move: string) => Promise<Locator>
  /** Fills in when it was done, records, and waits until the page has told it. */
  record: (form: Locator, at: Date) => Promise<void>
  /** The jars as they will be, beside the form. */
  preview: Locator
  /** The newest line of the ledger. */
  lastStep: Locator
  told: Locator
}

export function batchPage(page: Page): BatchPage {
  const panel = page.getByRole('region', { name: 'Log a move' })
  const told = page.getByRole('status', { name: 'What was done last' })
  const preview = page.getByRole('region', { name: 'After this' })
  const ledger = page.getByRole('region', { name: 'Ledger' })
  return {
    told,
    preview,
    lastStep: ledger.getByRole('row').nth(1),
    open: async (move) => {
      const button = panel.getByRole('button', { name: move, exact: true })
      if (!(await button.isVisible()))
        await panel.getByRole('button', { name: 'More moves' }).click()
      await button.click()
      return page.getByRole('form', { name: move })
    },
    record: async (form, at) => {
      await form.getByLabel('When', { exact: true }).fill(localInput(at))
      await expect(
        preview.getByRole('img').or(preview.getByText('No vessel changes.')).first(),
      ).toBeVisible()
      await form.getByRole('button', { name: 'Record' }).click()
      await expect(form).toBeHidden()
      await expect(told).toContainText('Recorded')
    },
  }
}

/** What a date-and-time input takes; the tests run in UTC. */
const localInput = (at: Date) => at.toISOString().slice(0, 16)
