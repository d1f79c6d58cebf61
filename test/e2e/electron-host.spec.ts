/** The really built main and preload bundles on the Electron double. */
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test as plain, type Page } from '@playwright/test'
import { en } from '../../renderer/app/words/en.ts'
import { hostWords } from '../../main/hosts/words/host-words.ts'
import type { Bridge } from '../../shared/channels.ts'
import { launch, type Launched, type LaunchOptions } from '../double/launch.ts'

const { title, waits, problem } = hostWords()

const test = plain.extend<{ launched: (options?: LaunchOptions) => Promise<Launched> }>({
  launched: async ({ browser }, use) => {
    const running: Launched[] = []
    await use(async (options) => {
      const electron = await launch(browser, options)
      running.push(electron)
      return electron
    })
    for (const electron of running) await electron.quit()
  },
})

const newFolder = () => mkdtempSync(join(tmpdir(), 'ratafia-double-'))
const jar = { id: 'jar-1', name: 'First', shape: 'jar', capacityMl: 3000, isRetired: false }

/** A call as the page makes it. */
const callIn = (page: Page, name: string, request: unknown) =>
  page.evaluate(
    ([called, asked]) =>
      (window as unknown as { ratafia: Bridge }).ratafia.call(called as string, asked),
    [name, request] as const,
  )

test('opens one sandboxed, isolated window without Node', async ({ launched }) => {
  const electron = await launched()
  await electron.page()
  expect(electron.calls('BrowserWindow')).toHaveLength(1)
  expect(electron.calls('BrowserWindow')[0]?.[0]).toMatchObject({ show: false })
  // All there is: nothing weakens the page's own guards, and no webview is allowed.
  const [[asked] = []] = electron.calls('BrowserWindow') as [{ webPreferences: object }][]
  expect(asked?.webPreferences).toEqual({
    preload: expect.stringMatching(/preload\.cjs$/),
    sandbox: true,
    contextIsolation: true,
    nodeIntegration: false,
    spellcheck: false,
  })
  await expect.poll(() => electron.calls('BrowserWindow.show')).toHaveLength(1)
  expect(electron.calls('protocol.registerSchemesAsPrivileged')).toEqual([
    [[{ scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } }]],
  ])
  expect(electron.control.errors).toEqual([])
})

test('gives the page the bridge and nothing else', async ({ launched }) => {
  const page = await (await launched()).page()
  expect(await page.evaluate(() => Object.keys((window as { ratafia?: object }).ratafia!))).toEqual(
    ['call', 'onChange'],
  )
  expect(await page.evaluate(() => 'require' in window || 'process' in window)).toBe(false)
})

test('answers calls from the page, good and bad, and keeps what was written', async ({
  launched,
}) => {
  const cellarFile = join(newFolder(), 'cellar.ratafia')
  const first = await launched({ cellarFile })
  const page = await first.page()
  expect(await callIn(page, 'cellar.status', {})).toMatchObject({
    ok: true,
    value: { host: 'electron', version: '0.0.0-double', isDemo: false },
  })
  expect(await callIn(page, 'no.such', {})).toMatchObject({ error: { code: 'unknownChannel' } })
  expect(await callIn(page, 'jars.list', { x: 1 })).toMatchObject({ error: { code: 'badInput' } })
  expect(await callIn(page, 'jars.add', { jars: [jar] })).toEqual({ ok: true, value: {} })
  await first.quit()

  const second = await launched({ cellarFile })
  expect(await callIn(await second.page(), 'jars.list', {})).toMatchObject({ value: [{ jar }] })
})

test('tells the page of every write until it stops listening', async ({ launched }) => {
  const page = await (await launched()).page()
  // The window keeps the language that it first guesses: that write is over before any is counted.
  await expect
    .poll(() => callIn(page, 'cellar.status', {}))
    .toMatchObject({ value: { settings: { language: 'en' } } })
  const told = () => page.evaluate(() => (window as unknown as { told: number }).told)
  await page.evaluate(() => {
    const { ratafia } = window as unknown as { ratafia: Bridge }
    const counted = window as unknown as { told: number; stop: () => void }
    counted.told = 0
    counted.stop = ratafia.onChange(() => void counted.told++)
  })
  await callIn(page, 'jars.add', { jars: [jar] })
  await expect.poll(told).toBe(1)
  await page.evaluate(() => (window as unknown as { stop: () => void }).stop())
  await callIn(page, 'jars.change', { ...jar, name: 'Renamed' })
  await callIn(page, 'jars.list', {})
  expect(await told()).toBe(1)
})

test('answers no other page and no frame', async ({ launched }) => {
  const electron = await launched()
  await electron.page()
  const ask = async (frame: Parameters<Launched['invokeFrom']>[0]) =>
    electron.invokeFrom(frame, 'jars.list', {})
  await expect(ask({ url: 'https://evil.example/', parent: null })).rejects.toThrow('not for this')
  await expect(ask({ url: 'app://ratafia/', parent: {} })).rejects.toThrow('not for this')
  await expect(ask(null)).rejects.toThrow('not for this')
  expect(await ask({ url: 'app://ratafia/#/shelf', parent: null })).toMatchObject({ ok: true })
})

test('stays on its page, opens no window, and hands no link to the system', async ({
  launched,
}) => {
  const electron = await launched()
  const page = await electron.page()
  const address = page.url()
  await page.evaluate(() => {
    location.href = 'https://evil.example/'
  })
  await expect
    .poll(() => electron.calls('will-navigate'))
    .toEqual([['https://evil.example/', true]])
  expect(page.url()).toBe(address)

  for (const url of ['https://example.org/oiml', 'http://example.org/', 'file:///etc/passwd'])
    await page.evaluate((target) => void window.open(target), url)
  await expect
    .poll(() => electron.calls('window.open'))
    .toEqual([
      ['https://example.org/oiml', 'deny'],
      ['http://example.org/', 'deny'],
      ['file:///etc/passwd', 'deny'],
    ])
  expect(electron.calls('shell.openExternal')).toEqual([])
  expect(electron.control.errors).toEqual([])
})

test('serves its own files only, under the strict policy', async ({ launched }) => {
  const electron = await launched()
  const page = await electron.page()
  const violated = await page.evaluate(
    () =>
      new Promise<string>((done) => {
        document.addEventListener('securitypolicyviolation', (event) =>
          done(event.violatedDirective),
        )
        const script = document.createElement('script')
        script.textContent = 'window.owned = true'
        document.head.append(script)
      }),
  )
  expect(violated).toMatch(/^script-src/)
  expect(await page.evaluate(() => 'owned' in window)).toBe(false)
  const scheme = electron.control.schemes.get('app')
  const statusOf = async (url: string) => (await scheme?.(new Request(url)))?.status
  expect(await statusOf('app://ratafia/index.html')).toBe(200)
  expect(await statusOf('app://ratafia/..%2fmain%2felectron.js')).toBe(404)
  expect(await statusOf('app://elsewhere/index.html')).toBe(404)
})

test('denies every permission', async ({ launched }) => {
  const electron = await launched()
  await electron.page()
  const handlerOf = <Handler>(api: string) => electron.calls(api)[0]?.[0] as Handler
  type OnRequest = (contents: null, name: string, answer: (isGranted: boolean) => void) => void
  const granted = await new Promise((done) =>
    handlerOf<OnRequest>('session.setPermissionRequestHandler')(null, 'media', done),
  )
  expect(granted).toBe(false)
  expect(handlerOf<() => boolean>('session.setPermissionCheckHandler')()).toBe(false)
  expect(handlerOf<() => boolean>('session.setDevicePermissionHandler')()).toBe(false)
})

test('has the standard menus, and shows where the book is', async ({ launched }) => {
  const folder = newFolder()
  const electron = await launched({ cellarFile: join(folder, 'mine.ratafia') })
  await electron.page()
  const standard = ['fileMenu', 'editMenu', 'viewMenu', 'windowMenu', 'help']
  expect(electron.control.menu?.roles).toEqual(
    process.platform === 'darwin' ? ['appMenu', ...standard] : standard,
  )
  const click = electron.control.menu?.item('show-book')?.click as () => void
  click()
  expect(electron.calls('shell.showItemInFolder')).toEqual([[join(folder, 'mine.ratafia')]])
})

test('a second instance opens nothing and touches no book', async ({ launched }) => {
  const cellarFile = join(newFolder(), 'cellar.ratafia')
  const electron = await launched({ cellarFile, getsLock: false })
  expect(electron.calls('app.quit')).toHaveLength(1)
  expect(electron.calls('BrowserWindow')).toEqual([])
  expect(existsSync(cellarFile)).toBe(false)
})

test('opens the book it is started with, and no file that is none', async ({ launched }) => {
  const folder = newFolder()
  const file = join(folder, 'mine.ratafia')
  const first = await launched({ cellarFile: file })
  await first.page()
  await first.quit()

  const electron = await launched({ fileToOpen: file })
  expect(await callIn(await electron.page(), 'cellar.status', {})).toMatchObject({
    value: { file },
  })
  await electron.quit()

  const letter = join(folder, 'letter.txt')
  writeFileSync(letter, 'Dear aunt')
  const refusing = await launched({ fileToOpen: letter })
  await expect.poll(() => refusing.calls('app.exit')).toEqual([[1]])
  expect(refusing.calls('dialog.showErrorBox')).toEqual([
    [title.cannotStart, problem.isNoBook(letter)],
  ])
  expect(readFileSync(letter, 'utf8')).toBe('Dear aunt')
})

test('a file opened while a book is open has to wait, and says so', async ({ launched }) => {
  const folder = newFolder()
  const cellarFile = join(folder, 'cellar.ratafia')
  const other = join(folder, 'other.ratafia')
  const made = await launched({ cellarFile: other })
  await made.page()
  await made.quit()

  const electron = await launched({ cellarFile })
  await electron.page()
  const { app } = electron.control
  app.emit('second-instance', {}, ['ratafia', '.', 'cellar.ratafia'], folder)
  expect(electron.calls('dialog.showErrorBox')).toEqual([])
  app.emit('second-instance', {}, ['ratafia', '.', 'other.ratafia'], folder)
  app.emit('open-file', { preventDefault: () => undefined }, join(folder, 'none.ratafia'))
  expect(electron.calls('dialog.showErrorBox')).toEqual([
    [title.otherBookOpen, waits(other)],
    [title.otherBookOpen, problem.isUnreadable(join(folder, 'none.ratafia'))],
  ])
  expect(electron.calls('BrowserWindow')).toHaveLength(1)
})

test('an archive opened while a book is open is looked into', async ({ launched }) => {
  const folder = newFolder()
  const archive = join(folder, 'old one.zip')
  writeFileSync(archive, 'PK\u0003\u0004 and no more')
  const electron = await launched({ cellarFile: join(folder, 'cellar.ratafia') })
  const page = await electron.page()
  electron.control.app.emit('second-instance', {}, ['ratafia', '.', 'old one.zip'], folder)
  await expect(page.getByRole('heading', { name: en.safekeeping.lookInto.title })).toBeVisible()
  await expect(page.getByText(archive)).toBeVisible()
  await expect(page.getByText(en.safekeeping.backups.problem.cutShort)).toBeVisible()
  expect(electron.calls('dialog.showErrorBox')).toEqual([])
})

test('a Mac hands over a book before Electron is ready', async ({ launched }) => {
  const file = join(newFolder(), 'mine.ratafia')
  const first = await launched({ cellarFile: file })
  await first.page()
  await first.quit()
  const electron = await launched({ openedOnMac: file })
  expect(await callIn(await electron.page(), 'cellar.status', {})).toMatchObject({
    value: { file },
  })
})

test('the first instance comes forward when a second is started', async ({ launched }) => {
  const electron = await launched()
  await electron.page()
  const [window] = electron.control.windows
  window?.minimize()
  electron.control.app.emit('second-instance', {}, [], '')
  expect(electron.calls('BrowserWindow.restore')).toHaveLength(1)
  expect(electron.calls('BrowserWindow.focus')).toHaveLength(1)
  expect(electron.calls('BrowserWindow')).toHaveLength(1)
})

test('opens where it was closed, but not from a spoilt note or off the screen', async ({
  launched,
}) => {
  const userDataFolder = newFolder()
  const note = join(userDataFolder, 'window.json')
  const openedAt = async () => {
    const electron = await launched({ userDataFolder })
    await electron.page()
    return { electron, options: electron.calls('BrowserWindow')[0]?.[0] }
  }
  const first = await openedAt()
  expect(first.options).not.toHaveProperty('x')
  const [window] = first.electron.control.windows
  window?.moveTo({ x: 60, y: 40, width: 900, height: 700 })
  window?.maximize()
  await first.electron.quit()
  expect(JSON.parse(readFileSync(note, 'utf8'))).toMatchObject({ isMaximised: true })

  const second = await openedAt()
  expect(second.options).toMatchObject({ x: 60, y: 40, width: 900, height: 700 })
  expect(second.electron.calls('BrowserWindow.maximize')).toHaveLength(1)
  await second.electron.quit()

  writeFileSync(note, '{"bounds":{"x":90000,"y":0,"width":900,"height":700},"isMaximised":false}')
  const third = await openedAt()
  expect(third.options).not.toHaveProperty('x')
})

test('says in a dialog why it cannot start, and ends', async ({ launched }) => {
  const folder = newFolder()
  const cellarFile = join(folder, 'photo.ratafia')
  writeFileSync(cellarFile, 'this is not a cellar book, '.repeat(100))
  const before = readFileSync(cellarFile)
  const electron = await launched({ cellarFile })
  await expect.poll(() => electron.calls('app.exit')).toEqual([[1]])
  expect(electron.calls('dialog.showErrorBox')[0]).toEqual([
    title.cannotStart,
    problem.bookForeign(cellarFile),
  ])
  expect(electron.calls('BrowserWindow')).toEqual([])
  expect(readFileSync(cellarFile)).toEqual(before)
})

const daysAgo = (days: number) => new Date(Date.now() - days * 86_400_000).toISOString()

test('reminds once a day on the desktop, where that is wished', async ({ launched }) => {
  // Three launches in one test.
  test.setTimeout(120_000)
  const cellarFile = join(newFolder(), 'cellar.ratafia')
  const first = await launched({ cellarFile })
  const page = await first.page()
  const batch = { id: 'b', name: 'Plum', colour: '#5a1f45', note: '' }
  const inJar = { batchId: 'b', jarId: jar.id }
  const goods = { kind: 'fruit', fruitId: 'damson' }
  await callIn(page, 'jars.add', { jars: [jar] })
  await callIn(page, 'batches.open', { ...batch, openedAt: daysAgo(4) })
  await callIn(page, 'moves.record', {
    key: 'k',
    moves: [
      { at: daysAgo(4), kind: 'buy', lotId: 'lot', goods, massG: 1000 },
      { at: daysAgo(4), kind: 'charge', ...inJar, lotId: 'lot', massG: 1000, cut: 'whole' },
    ],
  })
  // Nobody asked for notices yet.
  expect(first.calls('Notification.show')).toEqual([])
  await callIn(page, 'cellar.changeSettings', { reminders: true })
  await first.quit()

  const second = await launched({ cellarFile })
  await second.page()
  const isNight = new Date().getHours() < 8
  const told = isNight ? [] : [[{ title: 'One thing wants your hands', body: 'Plum' }]]
  await expect.poll(() => second.calls('Notification.show')).toEqual(told)
  second.control.windows[0]?.minimize()
  second.control.notices[0]?.emit('click')
  expect(second.calls('BrowserWindow.restore')).toHaveLength(told.length)
  await second.quit()

  const third = await launched({ cellarFile })
  await third.page()
  expect(third.calls('Notification.show')).toEqual([])
})

test('quits with the last window and closes the book', async ({ launched }) => {
  test.skip(process.platform === 'darwin', 'on a Mac the program stays')
  const cellarFile = join(newFolder(), 'cellar.ratafia')
  const electron = await launched({ cellarFile })
  const page = await electron.page()
  await callIn(page, 'jars.add', { jars: [jar] })
  electron.control.windows[0]?.close()
  await expect.poll(() => electron.calls('app.quit')).toHaveLength(1)
  // A cleanly closed book leaves no write-ahead log behind.
  expect(existsSync(`${cellarFile}-wal`)).toBe(false)
})

test('the double finds a top-level wait for readiness', async ({ launched }) => {
  await expect(launched({ entry: 'test/double/deadlock.fixture.js' })).rejects.toThrow(
    'did not run through',
  )
})
