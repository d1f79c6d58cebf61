/** Back up, change the book, go back; the book of before stays. Then a damaged book, rescued. */
import { copyFileSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import { en } from '../../renderer/app/words/en.ts'
import { expect, test } from './cellar-test.ts'
import { startHost, type HostProcess } from './host-process.ts'

const buy = (key: string, massG: number) => ({
  key,
  moves: [
    {
      at: '2026-09-01T08:00:00Z',
      kind: 'buy',
      lotId: key,
      goods: { kind: 'fruit', fruitId: 'damson' },
      massG,
    },
  ],
})

/** A jar, and a first purchase. */
async function beginBook(ratafia: HostProcess): Promise<void> {
  await ratafia.call('jars.add', {
    jars: [{ id: 'j', name: 'Jar', shape: 'jar', capacityMl: 4000, isRetired: false }],
  })
  await ratafia.call('moves.record', buy('first', 1000))
}

async function backUp(ratafia: HostProcess): Promise<void> {
  await ratafia.call('backups.start', { jobId: 'b' })
  await expect
    .poll(() => ratafia.call('backups.job', { jobId: 'b' }), { timeout: 30_000 })
    .toMatchObject({ value: { state: 'done' } })
}

test('back up, change, go back, and the book of before is kept', async ({
  ratafia,
  page,
  folder,
}) => {
  page.setDefaultTimeout(15_000)
  test.setTimeout(90_000)
  await beginBook(ratafia)
  await page.goto(`${ratafia.origin}/#/safekeeping`)
  await page.getByRole('link', { name: 'Safekeeping' }).click()

  await test.step('a backup is made and verified', async () => {
    await page.getByRole('button', { name: 'Back up now' }).click()
    await expect(page.getByText(/opened again and found the same: 1 moves?/)).toBeVisible({
      timeout: 30_000,
    })
    expect(readdirSync(join(folder, 'backups'))).toHaveLength(1)
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])
  })

  await test.step('what is recorded after it is shown before anything happens', async () => {
    await ratafia.call('moves.record', buy('second', 2000))
    await expect(page.getByText('1 change since is in no backup yet.')).toBeVisible()
    await page.getByRole('button', { name: /Look into it: the backup of/ }).click()
    await expect(page.getByText(/1 move is in the present book only/)).toBeVisible({
      timeout: 30_000,
    })
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])
  })

  await test.step('the book goes back, and the other is beside it', async () => {
    const before = await ratafia.call('pantry.list')
    expect(before).toMatchObject({ ok: true, value: [{}, {}] })
    await page.getByRole('button', { name: 'Go back to this backup' }).click()
    await expect(page.getByText(/The book of before is kept as/)).toBeVisible({ timeout: 30_000 })
    expect(await ratafia.call('pantry.list')).toMatchObject({ value: [{ id: 'first' }] })
    const kept = readdirSync(folder).filter((name) => / kept .*\.ratafia$/.test(name))
    expect(kept).toHaveLength(1)
    const aside = await startHost(join(folder, kept[0] ?? ''))
    expect(await aside.call('pantry.list')).toEqual(before)
    await aside.stop()
  })
})

test('opened with a backup, an empty cellar shows what is in it, and takes it', async ({
  ratafia,
  page,
  folder,
}) => {
  page.setDefaultTimeout(15_000)
  test.setTimeout(90_000)
  await beginBook(ratafia)
  await backUp(ratafia)
  const [backup = ''] = readdirSync(join(folder, 'backups'))
  const archive = join(folder, '50 % #1.zip')
  copyFileSync(join(folder, 'backups', backup), archive)

  const there = await startHost(join(folder, 'there', 'cellar.ratafia'), {
    args: ['--no-open', archive],
  })
  await page.goto(there.link)
  await expect(page.getByText(archive)).toBeVisible()
  const preview = page.getByRole('region', { name: /^The backup of/ })
  await expect(preview).toBeVisible({ timeout: 30_000 })
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])
  await page.getByRole('button', { name: 'Leave it' }).click()
  await expect(page.getByRole('heading', { name: en.firstRun.title })).toBeVisible()
  expect(await there.call('pantry.list')).toMatchObject({ value: [] })

  // A second tab of the same launch.
  await page.goto('about:blank')
  await page.goto(there.link)
  await page.getByRole('button', { name: 'Go back to this backup' }).click({ timeout: 30_000 })
  await expect(page.getByText(/^The book is as it was/)).toBeVisible({ timeout: 30_000 })
  expect(await there.call('pantry.list')).toMatchObject({ value: [{ id: 'first' }] })
  await there.stop()
})

test('a damaged book is not opened, but gone back from', async ({ ratafia, page, folder }) => {
  page.setDefaultTimeout(15_000)
  test.setTimeout(90_000)
  await beginBook(ratafia)
  await backUp(ratafia)
  await ratafia.stop()
  const file = join(folder, 'cellar.ratafia')
  const bytes = readFileSync(file)
  bytes.fill(0xa5, 0, 8192)
  writeFileSync(file, bytes)

  const again = await startHost(file)
  await page.goto(again.link)
  await expect(page.getByRole('heading', { name: 'Your book cannot be opened' })).toBeVisible()
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([])
  expect(readFileSync(file).equals(bytes)).toBe(true)
  await page.getByRole('button', { name: /Look into it: the backup of/ }).click()
  await page.getByRole('button', { name: 'Go back to this backup' }).click({ timeout: 30_000 })
  await expect(page.getByRole('navigation', { name: 'Screens' })).toBeVisible({ timeout: 30_000 })
  expect(await again.call('pantry.list')).toMatchObject({ value: [{ id: 'first' }] })
  const kept = readdirSync(dirname(file)).find((name) => / kept .*\.ratafia$/.test(name)) ?? ''
  expect(readFileSync(join(folder, kept)).equals(bytes)).toBe(true)
  await again.stop()
})
