/** Marrying and mending by hand in a browser: real service, real solver, real book. */
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import type { Jar, JarContents } from '../../shared/schemas/cellar.ts'
import { expect, test } from './cellar-test.ts'
import type { HostProcess } from './host-process.ts'

const at = '2026-01-10T08:00:00Z'
const batch = { id: 'sloe', name: 'Winter sloe', colour: '#3a2250', note: '', openedAt: at }
const jar = (id: string, name: string) => ({
  id,
  name,
  shape: 'jar',
  capacityMl: 3000,
  isRetired: false,
})

/** A strong liquid in one jar, a weak one in another, an empty jar, spirit and sugar. */
async function fillCellar({ call }: HostProcess) {
  const bought = { at, kind: 'buy' }
  const into = (jarId: string) => ({ at, batchId: 'sloe', jarId })
  const jars = [jar('strong', 'Top shelf'), jar('weak', 'Window sill'), jar('big', 'Empty one')]
  expect(await call('jars.add', { jars })).toMatchObject({ ok: true })
  expect(await call('batches.open', batch)).toMatchObject({ ok: true })
  const moves = [
    {
      ...bought,
      lotId: 's',
      goods: { kind: 'spirit', strengthPctVol: 60 },
      volumeMl: 3000,
      priceMinor: 4500,
    },
    {
      ...bought,
      lotId: 'z',
      goods: { kind: 'sweetener', sweetenerId: 'sugar' },
      massG: 1000,
      priceMinor: 150,
    },
    { ...into('strong'), kind: 'pourSpirit', lotId: 's', volumeMl: 1500 },
    { ...into('weak'), kind: 'pourSpirit', lotId: 's', volumeMl: 400 },
    { ...into('weak'), kind: 'pourWater', volumeMl: 1200 },
  ]
  expect(await call('moves.record', { key: 'fill', moves })).toMatchObject({ ok: true })
}

async function expectAxeClean(page: Page) {
  const { violations } = await new AxeBuilder({ page }).analyze()
  expect(
    violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.target).join(' ')}`),
  ).toEqual([])
}

const plain = (text: string) => text.replace(/\s+/g, ' ')

test.beforeEach(({ ratafia }) => fillCellar(ratafia))

test('marries two jars to a strength and sweetness, records it, and mends what it made', async ({
  ratafia,
  page,
}) => {
  await page.getByRole('link', { name: 'Marry', exact: true }).click()
  for (const name of [/Top shelf/, /Window sill/, /^Sugar/])
    await page.getByRole('checkbox', { name }).check()
  await page.getByText('Whole bottles', { exact: true }).click()
  const blend = page.getByRole('status', { name: 'The blend' })
  await expect(blend).toContainText('30.0')
  await expect(page.getByRole('table', { name: 'What goes into each bottle' })).toBeVisible()

  await page.getByText('A volume', { exact: true }).click()
  await page.getByRole('textbox', { name: 'Volume', exact: true }).fill('2 L')
  await page.getByRole('combobox', { name: /Pour into/ }).selectOption('big')
  await expect.poll(async () => plain(await blend.innerText())).toContain('2.00 L')
  await expectAxeClean(page)

  await page.getByRole('textbox', { name: 'Strength, wished for' }).fill('75')
  await expect(page.getByText(/Strength cannot be/)).toContainText('60.0')
  await page.getByRole('textbox', { name: 'Strength, wished for' }).fill('28')
  await expect(blend).toContainText('28.0')

  await page.getByRole('button', { name: 'Record…' }).click()
  await expect(page.getByRole('dialog')).toContainText('After it, Empty one')
  await page.getByRole('button', { name: 'Record it' }).click()
  await expect(page.getByText('Recorded into Winter sloe.')).toBeVisible()

  await page.goto(`${ratafia.origin}/#/marry/mend/big`)
  await page.getByText('Too weak', { exact: true }).click()
  await expect(page.getByRole('heading', { name: /^Try on 100.ml first$/ })).toBeVisible()
  await expectAxeClean(page)

  // Acid that the pantry lacks is bought with it: powder in the jar, the rest in the pantry.
  await page.getByText('Too flat', { exact: true }).click()
  await expect(page.getByRole('checkbox', { name: /^Citric acid/ })).toBeChecked()
  await page.getByRole('button', { name: 'Record…' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('textbox', { name: /^Bought/ }).fill('100 g')
  await dialog.getByRole('textbox', { name: /^Price/ }).fill('2.50')
  await expectAxeClean(page)
  await dialog.getByRole('button', { name: 'Record it' }).click()
  await expect(page.getByText('Recorded into Winter sloe.')).toBeVisible()
  await page.getByRole('link', { name: 'Jars & pantry' }).click()
  const pantry = page.getByRole('table', { name: 'Pantry' })
  await expect(pantry.getByRole('row', { name: /Citric acid/ })).toContainText('2.50')
  const jars = await ratafia.call('jars.list')
  if (!jars.ok) throw new Error(jars.error.message)
  const big = (jars.value as { jar: Jar; contents?: JarContents }[]).find(
    (one) => one.jar.id === 'big',
  )
  // Once the sugar at the bottom has dissolved, as it was reckoned.
  expect(big?.contents?.resting?.acidGPerL).toBeCloseTo(1.5, 1)
})
