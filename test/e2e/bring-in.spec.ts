/** A list of bottles from a spreadsheet: looked at, mended, brought in, and taken back at once. */
import { AxeBuilder } from '@axe-core/playwright'
import type { Answer } from '../../shared/channels.ts'
import { expect, test } from './cellar-test.ts'

const list = [
  'Nazwa;Owoc;Rozlano;Butelek;Pojemność (l);Moc %;Cukier g/l;Uwagi',
  'Sloe on rye;sloe;4.12.2019;6;0,5;31;160;from the hedge, frosted',
  'Sloe on rye;sloe;5.12.2020;8;0,5;32;155;',
  'Quince with honey;quince;19.11.2021;9;0,35;28;190;',
  'Raspberry;raspberry;2021;11;0,5;25;210;=1+1',
  'Raspberry;raspberry;2022;7;500 ml;25;210;',
  'Blackcurrant;blackcurrant;12.10.2022;12;0,5;26,5;200;',
  'Green walnut;green walnut;30.02.2020;4;0,5;40;120;no such day',
  'Damson;damson;15.12.2022;10;0,75;29;170;',
  'Damson;damson;16.12.2023;9;0,75;29;170;',
  'Cherry on stones;sour cherry;1.11.2022;seven;0,7;30;180;',
  'Elderflower;;2.8.2023;5;0,5;20;240;',
  'Aronia;;3.12.2023;6;0,5;30;150;',
].join('\r\n')

test('bottles come from a spreadsheet onto the shelf, and go again by one undo', async ({
  page,
  ratafia,
}) => {
  const lots = async () => {
    const reply = await ratafia.call('bottles.list', {})
    if (!reply.ok) throw new Error(reply.error.message)
    return reply.value as Answer<'bottles.list'>
  }
  await page.getByRole('link', { name: 'From a spreadsheet…' }).click()
  await expect(page.getByRole('heading', { name: 'From a spreadsheet', level: 1 })).toBeVisible()
  await page.getByLabel('CSV file').setInputFiles({
    name: 'butelki.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(list),
  })
  await expect(page.getByText('How it begins: 12 rows')).toBeVisible()
  expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([])
  await page.getByRole('button', { name: 'Go on to the columns' }).click()
  await expect(page.getByLabel('What “Pojemność (l)” is')).toHaveValue('size')
  expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([])
  await page.getByRole('button', { name: 'Look at the rows' }).click()

  await expect(page.getByText('10 rows ready: 83 bottles')).toBeVisible()
  await expect(page.getByText('2 to mend')).toBeVisible()
  await expect(page.getByText(/^Bottled: There is no such day/)).toBeVisible()
  expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([])
  await page.getByLabel('Row 11: Bottles', { exact: true }).fill('7')
  await page.keyboard.press('Enter')
  await expect(page.getByText('11 rows ready: 90 bottles')).toBeVisible()
  await page.getByText('8', { exact: true }).click()
  await expect(page.getByText('0 to mend')).toBeVisible()
  expect(await lots()).toEqual([])
  await page.getByRole('button', { name: 'Bring in 11 rows' }).click()
  await expect(page.getByText(/^Brought in: 90 bottles/)).toBeVisible()

  const brought = await lots()
  expect(brought.reduce((sum, { count }) => sum + count, 0)).toBe(90)
  const batches = await ratafia.call('batches.list', {})
  expect(batches.ok && (batches.value as unknown[]).length).toBe(8)

  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByText(/^Taken back: /)).toBeVisible()
  expect(await lots()).toEqual([])
  await page.getByRole('button', { name: 'Redo' }).click()
  await expect(page.getByText(/^Put back: /)).toBeVisible()
  expect(await lots()).toEqual(brought)
})
