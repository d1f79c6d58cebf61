/** What a hostile program on this machine, or a page elsewhere, may send to the browser host. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { deepestNesting } from '../../shared/json-depth.ts'
import { HttpRefusal } from '../../main/hosts/browser/http-refusal.ts'
import { wrongGuesses } from '../../main/hosts/browser/wrong-guesses.ts'
import { calendarSecret } from './fake-service.ts'
import { sendRaw } from './raw-socket.ts'
import { runningServer, token } from './running-server.ts'

const requestLimitMs = 400
let server: Awaited<ReturnType<typeof runningServer>>
beforeEach(async () => {
  server = await runningServer({ requestLimitMs })
})
afterEach(() => server.close())

const wrong = { authorization: `Bearer ${'U'.repeat(43)}` }
const call = (headers: Record<string, string> = {}) => server.rpc('echo', '{}', headers)
const host = () => new URL(server.origin).host

describe('guessing the secret', () => {
  it('is told to wait after 20 tries, while the right one goes on passing', async () => {
    for (let tried = 0; tried < 20; tried += 1) expect((await call(wrong)).status).toBe(401)
    const refused = await call(wrong)
    expect(refused.status).toBe(429)
    expect(Number(refused.headers.get('retry-after'))).toBeGreaterThan(0)
    expect(Number(refused.headers.get('retry-after'))).toBeLessThanOrEqual(60)
    expect((await call()).status).toBe(200)
    expect((await fetch(`${server.origin}/calendar/${calendarSecret}.ics`)).status).toBe(200)
  })

  it('counts the calendar’s address and the token together', async () => {
    const guess = () => fetch(`${server.origin}/calendar/wrong.ics`)
    for (let tried = 0; tried < 20; tried += 1) expect((await guess()).status).toBe(404)
    expect((await guess()).status).toBe(429)
    expect((await call(wrong)).status).toBe(429)
    expect((await call()).status).toBe(200)
  })

  it('is counted anew after a minute', () => {
    let nowMs = 5_000_000
    const guesses = wrongGuesses(() => nowMs)
    const own = new HttpRefusal(401, 'no')
    for (let tried = 0; tried < 20; tried += 1) expect(guesses.refusal(own)).toBe(own)
    expect(guesses.refusal(own)).toMatchObject({ status: 429, headers: { 'Retry-After': '60' } })
    nowMs += 59_000
    expect(guesses.refusal(own)).toMatchObject({ status: 429, headers: { 'Retry-After': '1' } })
    nowMs += 1000
    expect(guesses.refusal(own)).toBe(own)
  })
})

describe('JSON', () => {
  const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth)

  it('is taken as deep as may be, and refused one deeper', async () => {
    expect((await server.rpc('echo', nested(deepestNesting))).status).toBe(200)
    expect((await server.rpc('echo', nested(deepestNesting + 1))).status).toBe(400)
    expect((await server.rpc('echo', JSON.stringify('['.repeat(1000)))).status).toBe(200)
  })

  it('a million deep is refused at once, and the host goes on', async () => {
    const response = await server.rpc('echo', '['.repeat(1_000_000))
    expect(response.status).toBe(400)
    expect(await response.text()).toBe('This is nested too deep.')
    expect((await call()).status).toBe(200)
  })

  it('with names that mean something to the language changes nothing', async () => {
    const hostile = '{"__proto__":{"owned":1},"constructor":{"prototype":{"owned":1}}}'
    expect((await server.rpc('echo', hostile)).status).toBe(200)
    expect(({} as Record<string, unknown>)['owned']).toBeUndefined()
  })
})

describe('a request that never ends', () => {
  it('is let go while its head is still coming', async () => {
    const slow = Array.from({ length: 100 }, (_, index) => `X-${index}: slow\r\n`)
    const { statuses } = await sendRaw(
      server.origin,
      [`GET / HTTP/1.1\r\nHost: ${host()}\r\n`, ...slow],
      50,
    )
    expect(statuses).toEqual([408])
  })

  it('is let go while its body is still coming', async () => {
    const head =
      `POST /rpc/echo HTTP/1.1\r\nHost: ${host()}\r\nAuthorization: Bearer ${token}\r\n` +
      'Content-Type: application/json\r\nContent-Length: 1000\r\n\r\n'
    const { statuses } = await sendRaw(server.origin, [head, ...'x'.repeat(100)], 50)
    expect(statuses).toEqual([408])
    expect((await call()).status).toBe(200)
  })
})

describe('a head that is no head', () => {
  it.each([
    ['a line of 20,000 signs', () => `GET /${'a'.repeat(20_000)} HTTP/1.1\r\n\r\n`, 431],
    ['20,000 signs of headers', () => `GET / HTTP/1.1\r\nX: ${'a'.repeat(20_000)}\r\n\r\n`, 431],
    ['no HTTP at all', () => '\u0016\u0003\u0001\u0002\u0000\r\n\r\n', 400],
    ['no Host', () => 'GET / HTTP/1.1\r\nConnection: close\r\n\r\n', 400],
    [
      'two Hosts',
      () => `GET / HTTP/1.1\r\nHost: ${host()}\r\nHost: evil.example\r\nConnection: close\r\n\r\n`,
      421,
    ],
    [
      'two lengths',
      () =>
        `POST /rpc/echo HTTP/1.1\r\nHost: ${host()}\r\nContent-Length: 2\r\nContent-Length: 40\r\n\r\n{}`,
      400,
    ],
    [
      'a length and chunks',
      () =>
        `POST /rpc/echo HTTP/1.1\r\nHost: ${host()}\r\nContent-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`,
      400,
    ],
    [
      'a header split in two',
      () => `GET / HTTP/1.1\r\nHost: ${host()}\r\nX: a\u0000b\r\nConnection: close\r\n\r\n`,
      400,
    ],
  ])('such as %s is refused by one answer, and the host goes on', async (_what, head, status) => {
    const { statuses } = await sendRaw(server.origin, [head()])
    expect(statuses).toEqual([status])
    expect((await call()).status).toBe(200)
  })
})

describe('every answer', () => {
  const paths = ['/', '/assets/page.js', '/nothing', '/contract', '/rpc/echo', '/calendar/x.ics']

  it.each(paths)('to %s lets no other site read it, frame it or guess its type', async (path) => {
    for (const method of ['GET', 'POST', 'OPTIONS', 'PUT']) {
      const { headers } = await fetch(server.origin + path, {
        method,
        headers: { origin: server.origin, 'access-control-request-method': 'POST' },
      })
      const names = [...headers.keys()]
      expect(names.filter((name) => name.startsWith('access-control'))).toEqual([])
      expect(names).not.toContain('set-cookie')
      expect(names).not.toContain('x-powered-by')
      expect(headers.get('x-content-type-options')).toBe('nosniff')
      expect(headers.get('x-frame-options')).toBe('DENY')
      expect(headers.get('referrer-policy')).toBe('no-referrer')
      expect(headers.get('cross-origin-opener-policy')).toBe('same-origin')
      expect(headers.get('cross-origin-resource-policy')).toBe('same-origin')
      expect(headers.get('cache-control')).toBe('no-store')
      const policy = headers.get('content-security-policy') ?? ''
      expect(policy).toContain("default-src 'none'")
      expect(policy).toContain("script-src 'self';")
      expect(policy).toContain("connect-src 'self';")
      expect(policy).toContain("frame-ancestors 'none'")
    }
  })

  it.each([
    '/%2e%2e%2fsecret.json',
    '/%252e%252e%252fsecret.json',
    '/..%252fsecret.json',
    '/assets/%2e%2e/%2e%2e/secret.json',
    '/assets//../../secret.json',
    '/assets/..%5c..%5csecret.json',
    '/C:%5cWindows%5cwin.ini',
    '//etc/passwd',
    '/%2fetc%2fpasswd',
    '/file:///etc/passwd',
    '/secret.json%00.js',
    `/${'a/'.repeat(5000)}`,
    '/.git/config',
    '/assets/',
  ])('to %s is that there is no such page', async (path) => {
    const { status, text } = await server.raw(path, { host: host() })
    expect(status).toBe(404)
    expect(text).toBe('There is no such page.')
  })
})
