/** A maker's own fruit: a copy edited, a kind added, and both where fruit is bought. */
import { AxeBuilder } from '@axe-core/playwright'
import { expect, test } from './cellar-test.ts'

test('a copy of a fruit edited, a fruit of one’s own added and bought', async ({
  ratafia,
  page,
}) => {
  page.setDefaultTimeout(5000)
  await page.getByRole('textbox', { name: /How many: Jar of 5/ }).fill('1')
  await page.keyboard.press('Tab')
  await page.getByRole('button', { name: 'Start my cellar' }).click()
  await page.getByRole('link', { name: 'Fruit', exact: true }).click()

  await test.step('the library’s sloe becomes a copy', async () => {
    await page.getByRole('searchbox').fill('tarnina')
    await page.getByRole('link', { name: 'Sloe' }).click()
    await page.getByRole('button', { name: 'Edit' }).click()
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toBeFocused()
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])
    const held = page.getByRole('group', { name: 'Held after draining' })
    await held.getByLabel('Typical').fill('0.5')
    await page.getByRole('button', { name: 'Save' }).click()
    await expect(page.getByText('your copy', { exact: true })).toBeVisible()
    const row = page.getByRole('row', { name: /Held after draining/ })
    await expect(row).toContainText('library: 0.6')
    await expect(row).toContainText('from the maker of this cellar')
  })

  await test.step('a bullace like it', async () => {
    await page.getByRole('button', { name: 'Add one like it' }).click()
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Bullace')
    await page.getByRole('button', { name: 'Add it' }).click()
    await expect(page.getByRole('heading', { name: 'Bullace', level: 1 })).toBeVisible()
    await expect(page.getByText('taken over from a similar fruit: sloe').first()).toBeVisible()
    await page.getByRole('link', { name: 'All fruit' }).click()
    await page.getByRole('radio', { name: 'Yours 2' }).check({ force: true })
    await expect(page.getByRole('row')).toHaveCount(3)
  })

  await test.step('the bullace is bought, and stays', async () => {
    await page.getByRole('link', { name: 'Jars & pantry' }).click()
    await page.getByRole('button', { name: 'Buy goods' }).click()
    await page.getByLabel('Which fruit').selectOption('Bullace')
    await page.getByLabel('Mass').fill('3')
    await page.getByRole('button', { name: 'Put in the pantry' }).click()
    await expect(page.getByRole('row', { name: /Bullace/ })).toContainText('3.00')
    const origins = await ratafia.call('fruits.origins')
    if (!origins.ok) throw new Error(origins.error.message)
    const own = (origins.value as { fruitId: string; origin: string }[]).find(
      ({ origin }) => origin === 'own',
    )
    expect(await ratafia.call('fruits.reset', { fruitId: own?.fruitId })).toMatchObject({
      ok: false,
      error: { code: 'stillInUse' },
    })
  })
})
