/** A draft logged to its end, not quite as it was planned: the plan keeps up with what really is. */
import { AxeBuilder } from '@axe-core/playwright'
import type { Locator, Page } from '@playwright/test'
import type { BatchPage as Told } from '../../shared/schemas/cellar.ts'
import type { FollowedPlan } from '../../shared/schemas/drafts.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import { batchPage } from './batch-page.ts'
import { expect, test } from './cellar-test.ts'
import type { HostProcess } from './host-process.ts'

const days = 86_400_000
const start = new Date(Date.now() - 300 * days)

async function asked<Value>({ call }: HostProcess, channel: string, request: unknown) {
  const reply = await call(channel, request)
  if (!reply.ok) throw new Error(reply.error.message)
  return reply.value as Value
}

/** What the maker did otherwise than planned, by the kind of the move. */
interface Deviation {
  readonly kind: Move['kind']
  readonly change: (form: Locator) => Promise<void>
  readonly daysLate?: number
}

test('a draft is logged with deviations to its last bottle, and its plan is done', async ({
  ratafia,
  page,
}) => {
  test.setTimeout(180_000)
  page.setDefaultTimeout(10_000)
  await drafted(page)
  const { batchId, plan } = await started(ratafia, page)
  const batch = batchPage(page)
  const follow = () => asked<FollowedPlan>(ratafia, 'plans.follow', { batchId })

  const deviations: Deviation[] = [
    {
      // A tenth less fruit than planned.
      kind: 'charge',
      change: (form) => form.getByLabel('How much', { exact: true }).fill('1800'),
    },
    {
      kind: 'pourSpirit',
      change: (form) => form.getByLabel('How much', { exact: true }).fill('1.2 L'),
      daysLate: 2,
    },
    {
      kind: 'drawOff',
      change: (form) => form.getByLabel('Measured amount').fill('1.1 L'),
      daysLate: 9,
    },
  ]
  let done = 0
  for (let next = (await follow()).next; next; next = (await follow()).next) {
    const kind = next.kind
    await test.step(`${done + 1}: ${kind}`, async () => {
      await plan.getByRole('button', { name: 'Log it as planned' }).click()
      const form = page.getByRole('form')
      const at = deviations.findIndex((deviation) => deviation.kind === kind)
      const [deviation] = at < 0 ? [] : deviations.splice(at, 1)
      await deviation?.change(form)
      const due = Date.parse(next?.at ?? '') + (deviation?.daysLate ?? 0) * days
      // Recorded a minute apart, so that what is done on one day keeps its order.
      await batch.record(form, new Date(due + 60_000))
    })
    done += 1
    expect(done).toBeLessThan(40)
  }
  expect(deviations).toEqual([])

  await expect(plan).toContainText('All that was planned is done.')
  const { stages } = await follow()
  for (const { key, planned, real } of stages) {
    expect(planned, key).toBeDefined()
    expect(real, key).toBeDefined()
  }
  const rows = plan.getByRole('row')
  await expect(rows).toHaveCount(1 + 2 * stages.length)
  await expect(plan.getByRole('row', { name: /As it was/ })).toHaveCount(stages.length)
  await expect(plan.getByRole('row', { name: /To be expected/ })).toHaveCount(0)
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])

  const { summary } = await asked<Told>(ratafia, 'batches.page', { batchId })
  expect(['resting', 'finished']).toContain(summary.stage)
  // What does not fill one more bottle stays where it stands.
  for (const { liquid } of summary.jars) expect(liquid?.volumeMl ?? 0).toBeLessThan(500)
  expect(summary.bottleLots[0]?.filledCount).toBeGreaterThan(0)
})

/** An empty cellar with four jars, and a draft of 2 kg of sour cherries begun 300 days ago. */
async function drafted(page: Page) {
  await page.getByRole('textbox', { name: /How many: Jar of 5/ }).fill('4')
  await page.keyboard.press('Tab')
  await page.getByRole('button', { name: 'Start my cellar' }).click()
  await page.getByRole('link', { name: 'Draft', exact: true }).click()
  await page.getByLabel('Fruit', { exact: true }).selectOption('Sour cherry')
  await page.getByRole('button', { name: 'Draft it' }).click()
  await expect(page.getByText(/bottles at 32\.0\s% vol/)).toBeVisible()
  await page.getByLabel('Begins').fill(start.toISOString().slice(0, 16))
}

async function started(ratafia: HostProcess, page: Page) {
  await page.getByRole('button', { name: 'Start as a batch' }).click()
  await page.getByRole('button', { name: 'Start it' }).click()
  await expect(page.getByRole('heading', { name: 'Sour cherry', level: 1 })).toBeVisible()
  const [found] = await asked<{ batch: { id: string } }[]>(ratafia, 'batches.list', {})
  return { batchId: found?.batch.id ?? '', plan: page.getByRole('region', { name: 'The plan' }) }
}
