/** The Bench by hand in a browser: real service, real engine, real book. */
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, test } from './cellar-test.ts'
import type { HostProcess } from './host-process.ts'

const at = '2026-01-10T08:00:00Z'
const batch = { id: 'sloe', name: 'Winter sloe', colour: '#3a2250', note: '', openedAt: at }

/** A litre and a half of something sweet in one jar, in a batch of its own. */
async function fillCellar({ call }: HostProcess) {
  const inJar = { at, batchId: 'sloe', jarId: 'shelf' }
  const bought = { at, kind: 'buy' }
  const jar = { id: 'shelf', name: 'Top shelf', shape: 'jar', capacityMl: 3000, isRetired: false }
  expect(await call('jars.add', { jars: [jar] })).toMatchObject({ ok: true })
  expect(await call('batches.open', batch)).toMatchObject({ ok: true })
  const moves = [
    { ...bought, lotId: 's', goods: { kind: 'spirit', strengthPctVol: 60 }, volumeMl: 1000 },
    { ...bought, lotId: 'z', goods: { kind: 'sweetener', sweetenerId: 'sugar' }, massG: 300 },
    { ...inJar, kind: 'pourSpirit', lotId: 's', volumeMl: 1000 },
    { ...inJar, kind: 'pourWater', volumeMl: 400 },
    { ...inJar, kind: 'sugar', lotId: 'z', massG: 300 },
    { ...inJar, kind: 'stir' },
  ]
  expect(await call('moves.record', { key: 'fill', moves })).toMatchObject({ ok: true })
}

async function open({ origin }: HostProcess, page: Page, tool: string) {
  // The window follows the book from the first run to Today by itself; only then it stays put.
  await page.waitForURL(/#\/(today|bench)/)
  await page.goto(`${origin}/#/bench/${tool}`)
  await expect(page.getByRole('heading', { name: 'Bench', exact: true })).toBeVisible()
}

/** What stands in the answer, with plain spaces. */
const answerOf = async (page: Page) =>
  (await page.getByRole('status', { name: 'Answer' }).innerText()).replace(/\s+/g, ' ')
const box = (page: Page, name: string) => page.getByRole('textbox', { name })

async function expectAxeClean(page: Page) {
  const { violations } = await new AxeBuilder({ page }).analyze()
  expect(
    violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.target).join(' ')}`),
  ).toEqual([])
}

test.beforeEach(({ ratafia }) => fillCellar(ratafia))

test('reduces spirit while typing, and draws it to scale', async ({ ratafia, page }) => {
  await open(ratafia, page, 'reduce')
  await expect.poll(() => answerOf(page)).toContain('1.471 ± 0.016 L')
  await box(page, 'Strength wanted').fill('30')
  await expect.poll(() => answerOf(page)).toContain('2.28 ± 0.02 L')
  await expect(page.getByRole('img', { name: /less than both together/ })).toBeVisible()
  await expect(page.getByText('Keep it from flames')).toBeVisible()
  await box(page, 'Strength wanted').fill('99')
  await expect(page.getByRole('alert')).toContainText('The strength wanted is 99.0 % vol')
})

test('finds a liqueur by boil-off, and says how it was computed', async ({ ratafia, page }) => {
  await open(ratafia, page, 'boil-off')
  await expect(page.getByText(/never boil it dry/)).toBeVisible()
  await box(page, 'Hydrometer before boiling').fill('985.4')
  await box(page, 'Hydrometer after, made up').fill('1036.7')
  await expect.poll(() => answerOf(page)).toBe('Strength 40.0 ± 0.9 % vol Sugar 100 ± 3 g/L')
  await page.getByRole('button', { name: 'How is this computed?' }).click()
  await expect(page.getByText('Sucrose by ICUMSA (SPS-4)', { exact: false })).toBeVisible()
  await box(page, 'Hydrometer before boiling').fill('1060')
  await expect(page.getByRole('alert')).toContainText('No liqueur has these two densities')
})

test('crosses two instruments, and records them into a batch', async ({ ratafia, page }) => {
  await open(ratafia, page, 'two-instruments')
  await box(page, 'Hydrometer shows').fill('1.0307')
  await box(page, 'Refractometer shows').fill('30.0')
  await expect
    .poll(() => answerOf(page))
    .toMatch(/^Strength 3[45]\.\d ± 0\.\d % vol Sugar (199|20\d) ± \d g\/L$/)
  await expect(page.getByText('Shaded: how fine each instrument reads.')).toBeVisible()
  await page.getByRole('button', { name: 'Record into a batch…' }).click()
  await page.getByRole('combobox', { name: 'Batch' }).selectOption({ label: 'Winter sloe' })
  await expect(page.getByText(/^In this batch it means/)).toBeVisible()
  await page.getByRole('button', { name: 'Record the reading' }).click()
  await expect(page.getByText('Recorded into Winter sloe.')).toBeVisible()
  await page.getByRole('link', { name: 'Go to the batch' }).click()
  await expect(page).toHaveURL(/#\/batches\/sloe$/)
  const reply = await ratafia.call('batches.page', { batchId: 'sloe' })
  if (!reply.ok) throw new Error(reply.error.message)
  const { steps } = reply.value as { steps: { recorded: { move: unknown } }[] }
  expect(steps.at(-1)?.recorded.move).toMatchObject({
    kind: 'read',
    jarId: 'shelf',
    reading: {
      instrument: 'hydrometerAndRefractometer',
      densityKgPerM3: 1030.7,
      brix: 30,
      temperatureC: 20,
    },
  })
})

test('goes from one instrument to the next by keyboard alone', async ({ ratafia, page }) => {
  await open(ratafia, page, 'reduce')
  await page.getByRole('link', { name: 'Alcoholometer', exact: true }).focus()
  await page.keyboard.press('Enter')
  await expect(page.getByRole('heading', { name: 'Alcoholometer' })).toBeVisible()
  await box(page, 'It shows').focus()
  await page.keyboard.type('40')
  await page.keyboard.press('Tab')
  await page.keyboard.type('68')
  await page.keyboard.press('Tab')
  await expect(page.getByText('°C or °F? Write the unit', { exact: false })).toBeVisible()
  await page.keyboard.press('Enter')
  await expect(box(page, 'Its scale ±')).toHaveValue('0.5')
})

for (const colorScheme of ['light', 'dark'] as const)
  test(`has nothing for axe to find with all unfolded, ${colorScheme}`, async ({
    ratafia,
    page,
  }) => {
    test.setTimeout(90_000)
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    for (const tool of ['reduce', 'boil-off', 'two-instruments', 'weighing', 'glass']) {
      await open(ratafia, page, tool)
      if (tool === 'two-instruments') {
        await box(page, 'Hydrometer shows').fill('1000.5')
        await box(page, 'Refractometer shows').fill('20.4')
        await answerOf(page)
      }
      // Question marks beside terms open over the page, and are looked at by their own test.
      const folded = page.getByRole('button', { expanded: false }).filter({ hasNotText: /^\?$/ })
      while ((await folded.count()) > 0) await folded.first().click()
      await expectAxeClean(page)
    }
  })

test('has nothing for axe to find in a narrow window, nor while recording', async ({
  ratafia,
  page,
}) => {
  await page.setViewportSize({ width: 800, height: 1000 })
  await open(ratafia, page, 'alcoholometer')
  await expect(page.getByRole('combobox', { name: 'Instrument' })).toHaveValue('alcoholometer')
  await box(page, 'It shows').fill('38')
  await page.getByRole('button', { name: 'Record into a batch…' }).click()
  await page.getByRole('combobox', { name: 'Batch' }).selectOption({ label: 'Winter sloe' })
  await expect(page.getByText('Sugar misleads this instrument', { exact: false })).toBeVisible()
  await expectAxeClean(page)
  const width = await page.evaluate(() => document.documentElement.scrollWidth)
  expect(width).toBeLessThanOrEqual(800)
})
