/** The browser host as a maker or a script meets it: a process, a link, a book on disk. */
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { expect, test } from './cellar-test.ts'
import { startHost } from './host-process.ts'

const jar = {
  id: 'north-shelf',
  name: 'North shelf',
  shape: 'jar',
  capacityMl: 3000,
  isRetired: false,
}

test('says which host it is, then prints the link, and nothing else', async ({ ratafia }) => {
  const lines = ratafia.output().trimEnd().split('\n')
  expect(lines).toEqual(['Ratafia opens in a browser.', `Ratafia is open at ${ratafia.link}`])
  expect(ratafia.link).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/#[\w-]{43}$/)
})

test('stops on SIGTERM within 2 s, even with a window open', async ({ ratafia, page }) => {
  await expect.poll(() => page.evaluate(() => sessionStorage.getItem('ratafia.token'))).toBeTruthy()
  const { exitCode, ms } = await ratafia.stop()
  expect(exitCode).toBe(0)
  expect(ms).toBeLessThan(2000)
})

test('shows the same state after a restart', async ({ folder }) => {
  const book = join(folder, 'kept.ratafia')
  const first = await startHost(book)
  expect(await first.call('jars.add', { jars: [jar] })).toEqual({ ok: true, value: {} })
  const before = await first.call('jars.list')
  expect(before).toMatchObject({ ok: true, value: [{ jar }] })
  expect((await first.stop()).exitCode).toBe(0)

  const second = await startHost(book)
  expect(second.token).not.toBe(first.token)
  expect(await second.call('jars.list')).toEqual(before)
  await second.stop()
})

test('hides the secret from the address and survives a reload', async ({ ratafia, page }) => {
  await expect.poll(() => page.url()).toBe(`${ratafia.origin}/#/`)
  await page.reload()
  expect(await page.evaluate(() => sessionStorage.getItem('ratafia.token'))).toBe(ratafia.token)
  expect(await page.context().cookies()).toEqual([])
})

test('runs no script but its own', async ({ ratafia, page }) => {
  await page.goto(ratafia.link)
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
})

test('answers another program on this machine nothing', async ({ ratafia }) => {
  const ask = (headers: Record<string, string>) =>
    fetch(`${ratafia.origin}/rpc/jars.list`, {
      method: 'POST',
      body: '{}',
      headers: { 'content-type': 'application/json', ...headers },
    }).then((response) => response.status)
  expect(await ask({})).toBe(401)
  const authorization = `Bearer ${ratafia.token}`
  expect(await ask({ authorization, origin: 'http://evil.example' })).toBe(403)
  expect(await ask({ authorization })).toBe(200)
})

test('answers what the contract does not know as data', async ({ ratafia }) => {
  expect(await ratafia.call('no.such')).toMatchObject({ error: { code: 'unknownChannel' } })
  expect(await ratafia.call('jars.list', { extra: 1 })).toMatchObject({
    error: { code: 'badInput' },
  })
})

test('ends 5 s after its last window is closed, when it opens windows', async ({
  folder,
  page,
}) => {
  test.skip(process.platform !== 'linux', 'only there a window can be kept from opening')
  // Without a display nothing opens, so the window is the one of this test.
  const noDisplay = { DISPLAY: '', WAYLAND_DISPLAY: '' }
  const host = await startHost(join(folder, 'cellar.ratafia'), { args: [], env: noDisplay })
  const hasStream = page.waitForResponse((response) => response.url().endsWith('/events'))
  await page.goto(host.link)
  await hasStream
  const hasAgain = page.waitForResponse((response) => response.url().endsWith('/events'))
  await page.reload()
  await hasAgain
  const closed = performance.now()
  await page.close()
  await host.ended
  const seconds = (performance.now() - closed) / 1000
  expect(seconds).toBeGreaterThan(4.5)
  expect(seconds).toBeLessThan(10)
})

test('says clearly when the port is taken, and ends with 1', async ({ ratafia, folder }) => {
  const { port } = new URL(ratafia.origin)
  const args = ['main/node24.mjs', 'main/start.ts', '--no-open', '--port', port]
  const child = spawn(process.execPath, [...args, '--cellar', join(folder, 'other.ratafia')])
  let said = ''
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    said += text
  })
  const [exitCode] = (await once(child, 'exit')) as [number]
  expect(exitCode).toBe(1)
  expect(said).toContain(`Port ${port} of 127.0.0.1 cannot be used`)
  expect(said).not.toContain('    at ')
})
