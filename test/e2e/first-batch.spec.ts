/** The whole of a first batch by hand, from an empty cellar to a bottle on the table. */
import { AxeBuilder } from '@axe-core/playwright'
import type { Balance } from '../../shared/schemas/cellar.ts'
import { batchPage } from './batch-page.ts'
import { expect, test } from './cellar-test.ts'

const hours = 3_600_000
const days = 24 * hours
const start = Date.now() - 150 * days
const after = (ms: number) => new Date(start + ms)

test('a first batch, from two jars of fruit to the bottle drawn', async ({ ratafia, page }) => {
  test.setTimeout(120_000)
  page.setDefaultTimeout(10_000)

  await test.step('the cellar: two jars of 5 L and a demijohn of 5 L', async () => {
    await page.getByRole('textbox', { name: /How many: Jar of 5/ }).fill('2')
    await page.getByRole('textbox', { name: /How many: Demijohn of 5/ }).fill('1')
    await page.keyboard.press('Tab')
    await page.getByRole('button', { name: 'Start my cellar' }).click()
  })

  await test.step('a new batch', async () => {
    await page.getByRole('button', { name: 'New batch' }).click()
    await page.getByRole('textbox', { name: 'Name' }).fill('Sour cherry')
    await page.getByRole('button', { name: 'Open the batch' }).click()
    await page
      .getByRole('link', { name: 'Sour cherry' })
      .or(page.getByRole('heading', { name: 'Sour cherry' }))
      .first()
      .click()
    await expect(page.getByRole('heading', { name: 'Sour cherry', level: 1 })).toBeVisible()
  })

  const batch = batchPage(page)
  const showsAComposition = async () => {
    await expect(batch.lastStep).toContainText(/\d+\.\d\s% vol/)
    await expect(batch.lastStep).toContainText(/\d+\sg\/L/)
    await expect(batch.lastStep).toContainText(/\d+(\.\d+)?\s(ml|L)/)
  }

  await test.step('fruit in portions, layered with sugar, both bought on the way', async () => {
    const fruit = await batch.open('Charge fruit')
    await fruit.getByRole('checkbox', { name: /Jar 1/ }).check({ force: true })
    await fruit.getByRole('checkbox', { name: /Jar 2/ }).check({ force: true })
    await fruit.getByLabel('Kind of fruit').selectOption('Sour cherry')
    await fruit.getByLabel('Bought', { exact: false }).first().fill('3.2 kg')
    await fruit.getByLabel(/^Price/).fill('12.80')
    await fruit.getByLabel('How much into each').fill('1000')
    await batch.record(fruit, after(0))
    await expect(batch.told).toContainText(
      'Charged Jar 1 with 1.00 kg of Sour cherry, whole, and 1 more',
    )

    const sugar = await batch.open('Add sugar')
    await sugar.getByLabel(/^Bought/).fill('3 kg')
    await sugar.getByLabel('How much into each').fill('300 g')
    await batch.record(sugar, after(10 * 60_000))

    const more = await batch.open('Charge fruit')
    await more.getByRole('button', { name: 'All of it, shared: 600 g each' }).click()
    await batch.record(more, after(20 * 60_000))
  })

  await test.step('next day: sugar, water, spirit in two portions each', async () => {
    const sugar = await batch.open('Add sugar')
    await sugar.getByLabel('How much into each').fill('200')
    await batch.record(sugar, after(days))
    await showsAComposition()

    const water = await batch.open('Pour water')
    await water.getByLabel('How much into each').fill('0.2 l')
    await batch.record(water, after(days + hours))
    await showsAComposition()

    const spirit = await batch.open('Pour spirit')
    await spirit.getByLabel('Strength on the label').fill('96')
    await spirit.getByLabel(/^Bought/).fill('2.5 L')
    await spirit.getByLabel('How much into each').fill('500')
    await expect(batch.preview).toContainText('Strong spirit')
    await batch.record(spirit, after(days + 2 * hours))
    await showsAComposition()
  })

  await test.step('a refusal says what is there, what was asked, and the nearest', async () => {
    const spirit = await batch.open('Pour spirit')
    await spirit.getByLabel('How much into each').fill('2 l')
    await expect(batch.preview).toContainText('holds 1.50 L; you asked for 2.00 L')
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])
    await batch.preview.getByRole('button', { name: 'Use the nearest: 750 ml' }).click()
    await expect(spirit.getByLabel('How much into each')).toHaveValue('750')
    await expect(batch.preview).not.toContainText('This can’t be')
    await spirit.getByLabel('How much into each').fill('500')
    await batch.record(spirit, after(days + 3 * hours))
    await showsAComposition()
  })

  await test.step('the curve: a quantity more, a question asked of it, nothing written', async () => {
    const curve = page.getByRole('region', { name: 'Curve' })
    await curve.getByRole('checkbox', { name: 'Acid' }).check({ force: true })
    await expect(curve.getByText('Acid, g/L')).toBeVisible()
    const whatIf = page.getByRole('region', { name: 'What if' })
    const rows = page.getByRole('region', { name: 'Ledger' }).getByRole('row')
    // Seven moves in two jars, and the head of the table.
    await expect(rows).toHaveCount(15)
    await whatIf.getByRole('slider', { name: 'Warmth' }).focus()
    for (let degree = 0; degree < 6; degree += 1) await page.keyboard.press('ArrowRight')
    await expect(whatIf).toContainText('26 °C')
    await expect(whatIf.getByRole('row', { name: /Jar 1/ })).toContainText(
      /as it is \d+\.\d\s% vol/,
    )
    await expect(curve.getByRole('figure').getByText('changed')).toBeVisible()
    await expect(rows).toHaveCount(15)
    await expect(page.getByRole('region', { name: 'Forecast' })).toContainText('Comes to rest at')
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])
    await whatIf.getByRole('button', { name: 'Clear' }).click()
    await expect(whatIf.getByRole('table')).toBeHidden()
  })

  await test.step('compared from its first day', async () => {
    await page.getByRole('link', { name: 'Compare with others' }).click()
    await expect(page.getByRole('figure', { name: /^Strength of Sour cherry/ })).toBeVisible()
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])
    await page.getByRole('link', { name: 'Sour cherry' }).click()
    await expect(page.getByRole('heading', { name: 'Sour cherry', level: 1 })).toBeVisible()
  })

  await test.step('four months later: drawn off into the demijohn', async () => {
    const drawOff = await batch.open('Draw off')
    await expect(drawOff.getByRole('radio', { name: /Demijohn/ })).toBeChecked()
    await batch.record(drawOff, after(121 * days))
    await showsAComposition()
  })

  await test.step('the fruit crushed and covered with sugar', async () => {
    const crush = await batch.open('Crush')
    await batch.record(crush, after(121 * days + hours))
    const cover = await batch.open('Cover with sugar')
    await cover.getByLabel('How much into each').fill('300')
    await batch.record(cover, after(121 * days + 2 * hours))
  })

  await test.step('two days later: poured off into a vessel bought for it', async () => {
    const drawOff = await batch.open('Draw off')
    await drawOff.getByRole('button', { name: 'New vessel…' }).click()
    await drawOff.getByLabel('Name of the vessel').fill('Small flask')
    await drawOff.getByLabel('Shape').selectOption('Flask')
    await drawOff.getByLabel('Holds to the brim').fill('2 L')
    await drawOff.getByRole('button', { name: 'Add the vessel' }).click()
    await expect(drawOff.getByRole('radio', { name: /Small flask/ })).toBeChecked()
    await batch.record(drawOff, after(123 * days))
    await showsAComposition()
  })

  await test.step('the extracts married', async () => {
    const marry = await batch.open('Marry')
    await expect(
      marry
        .getByRole('group', { name: 'Liquids to marry' })
        .getByRole('checkbox', { checked: true }),
    ).toHaveCount(2)
    await batch.record(marry, after(124 * days))
    await expect(batch.lastStep).toContainText('Small flask stands empty')
    await showsAComposition()
  })

  await test.step('filtered with a loss', async () => {
    const filter = await batch.open('Filter')
    await filter.getByLabel('Lost in the filter').fill('100')
    await batch.record(filter, after(130 * days))
    await showsAComposition()
    await expect(batch.lastStep).toContainText('losing 100 ml')
  })

  await test.step('bottled', async () => {
    const bottle = await batch.open('Bottle')
    await batch.record(bottle, after(131 * days))
    await expect(batch.lastStep).toContainText(/Filled \d+ bottles of 500\sml from Demijohn/)
    await showsAComposition()
  })

  await test.step('a bottle drawn', async () => {
    const draw = await batch.open('Draw a bottle')
    await batch.record(draw, after(149 * days))
    await expect(batch.lastStep).toContainText('Drew 1 bottle of Sour cherry')
  })

  await test.step('the page of a finished batch is accessible', async () => {
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])
  })

  await test.step('all that was bought is somewhere', async () => {
    const reply = await ratafia.call('cellar.balance')
    if (!reply.ok) throw new Error(reply.error.message)
    const { missing, drunk, bought } = reply.value as Balance
    for (const grams of Object.values(missing)) expect(Math.abs(grams)).toBeLessThan(1e-6)
    expect(drunk.ethanolG).toBeGreaterThan(50)
    expect(bought.ethanolG).toBeCloseTo(2500 * 0.96 * 0.78924, -1)
  })
})
