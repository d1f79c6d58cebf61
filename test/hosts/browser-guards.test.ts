/** Tries to get past each guard of the browser host. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { calendarSecret } from './fake-service.ts'
import { runningServer, token } from './running-server.ts'

let server: Awaited<ReturnType<typeof runningServer>>
beforeEach(async () => {
  server = await runningServer()
})
afterEach(() => server.close())

const asPost = { method: 'POST' }
const textOfBytes = (bytes: number) => `"${'x'.repeat(bytes - 2)}"`

describe('the Host guard', () => {
  it.each(['ratafia.example', 'localhost', '127.0.0.1', '127.0.0.1:1', '[::1]'])(
    'answers 421 to Host %s, even for a page',
    async (host) => {
      expect(await server.raw('/', { host })).toMatchObject({ status: 421 })
      const headers = { host, authorization: `Bearer ${token}` }
      expect(await server.raw('/contract', headers)).toMatchObject({ status: 421 })
    },
  )
})

describe('the Origin guard', () => {
  it.each(['http://evil.example', 'null', 'http://127.0.0.1:1', 'https://127.0.0.1'])(
    'answers 403 to Origin %s, even with the token',
    async (origin) => {
      expect((await server.rpc('echo', '{}', { origin })).status).toBe(403)
    },
  )

  it('lets our own origin through', async () => {
    expect((await server.rpc('echo', '{}', { origin: server.origin })).status).toBe(200)
  })
})

describe('the token guard', () => {
  it.each([
    ['none', ''],
    ['a wrong one', `Bearer ${'U'.repeat(43)}`],
    ['half of it', `Bearer ${token.slice(0, 20)}`],
    ['more than it', `Bearer ${token}x`],
    ['another scheme', `Basic ${token}`],
    ['the bare token', token],
  ])('answers 401 to %s on calls, events and contract', async (_what, authorization) => {
    expect((await server.rpc('echo', '{}', { authorization })).status).toBe(401)
    for (const path of ['/events', '/contract'])
      expect((await fetch(server.origin + path, { headers: { authorization } })).status).toBe(401)
  })

  it('takes it from no cookie and no query', async () => {
    const { status } = await fetch(`${server.origin}/contract?token=${token}`, {
      headers: { cookie: `token=${token}` },
    })
    expect(status).toBe(401)
  })
})

describe('the calendar’s address', () => {
  const path = `/calendar/${calendarSecret}.ics`

  it('is read without a token by who knows it, and says so to no other site', async () => {
    const response = await fetch(server.origin + path)
    expect(response.status).toBe(200)
    expect(response.headers.get('content-type')).toBe('text/calendar; charset=utf-8')
    expect(response.headers.get('access-control-allow-origin')).toBeNull()
    expect(response.headers.get('cross-origin-resource-policy')).toBe('same-origin')
    expect(await response.text()).toBe('BEGIN:VCALENDAR\r\n')
    expect((await fetch(server.origin + path, { method: 'HEAD' })).status).toBe(200)
  })

  it.each([
    '/calendar/wrong.ics',
    `/calendar/${calendarSecret}`,
    `/calendar/${calendarSecret}x.ics`,
    `/calendar/${calendarSecret.toLowerCase()}.ics`,
    `/calendar/${'C'.repeat(201)}.ics`,
    '/calendar/.ics',
    '/calendar/',
    `/calendar/%2e%2e/${calendarSecret}.ics`,
  ])('answers 404 to %s', async (wrong) => {
    expect(await server.raw(wrong)).toMatchObject({ status: 404 })
  })

  it('is guarded like every other: its own Host only, no other site, read only', async () => {
    expect(await server.raw(path, { host: 'ratafia.example' })).toMatchObject({ status: 421 })
    expect(await server.raw(path, { origin: 'http://evil.example' })).toMatchObject({ status: 403 })
    for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS'])
      expect(await server.raw(path, {}, method)).toMatchObject({ status: 405 })
  })

  it('asks to come back when the book is busy, and tells nothing', async () => {
    const busy = await server.raw('/calendar/busy.ics')
    expect(busy).toEqual({ status: 503, text: 'The calendar cannot be read just now.' })
  })

  it('opens nothing else', async () => {
    const headers = { authorization: `Bearer ${calendarSecret}` }
    expect((await fetch(`${server.origin}/contract`, { headers })).status).toBe(401)
  })
})

describe('the body guard', () => {
  it.each(['text/plain', 'application/x-www-form-urlencoded', 'application/jsonp'])(
    'answers 415 to %s',
    async (type) => {
      expect((await server.rpc('echo', '{}', { 'content-type': type })).status).toBe(415)
    },
  )

  it('takes JSON with a charset', async () => {
    const type = 'Application/JSON; charset=utf-8'
    expect((await server.rpc('echo', '{}', { 'content-type': type })).status).toBe(200)
  })

  it.each(['', '{', 'undefined', "{'a':1}"])('answers 400 to %j', async (body) => {
    expect((await server.rpc('echo', body)).status).toBe(400)
  })

  it('answers 400 to bytes that are not UTF-8', async () => {
    const response = await fetch(`${server.origin}/rpc/echo`, {
      ...asPost,
      body: new Uint8Array([0x22, 0xff, 0x22]),
      headers: { authorization: `Bearer ${token}`, 'content-type': 'application/json' },
    })
    expect(response.status).toBe(400)
  })

  it('takes 5 MB and answers 413 to one byte more', async () => {
    expect((await server.rpc('echo', textOfBytes(5_000_000))).status).toBe(200)
    expect((await server.rpc('echo', textOfBytes(5_000_001))).status).toBe(413)
  })

  it('answers 413 to 6 MB whose length was not announced', async () => {
    const part = new Uint8Array(1_000_000).fill(0x20)
    let sent = 0
    const body = new ReadableStream({
      pull: (controller) => {
        if (sent++ < 6) controller.enqueue(part)
        else controller.close()
      },
    })
    const response = await fetch(`${server.origin}/rpc/echo`, {
      ...asPost,
      body,
      duplex: 'half',
      headers: { authorization: `Bearer ${token}`, 'content-type': 'application/json' },
    } as RequestInit)
    expect(response.status).toBe(413)
  })
})

describe('the paths', () => {
  it.each([
    '/..%2fsecret.json',
    '/%2e%2e/secret.json',
    '/../secret.json',
    '/assets/..%2f..%2fsecret.json',
    '/..%5csecret.json',
    '/%00',
    '/%e0%a4',
    '//secret.json',
    '/assets',
    '/assets/',
    '/.',
    '/index.html/',
    '/rpc',
    '/rpc/',
    '/nothing.js',
    '/constructor',
  ])('answer 404 to %s', async (path) => {
    const { status, text } = await server.raw(path, { host: new URL(server.origin).host })
    expect(text).not.toContain('outside')
    // '/.' is the page itself.
    expect(status).toBe(path === '/.' ? 200 : 404)
  })

  it.each(['http://evil.example/', '*', 'x'])('answer 400 to the target %s', async (target) => {
    const { status } = await server.raw(target, { host: new URL(server.origin).host })
    expect(status).toBe(400)
  })

  it('answer 405 to GET on a call and to POST on a page', async () => {
    expect((await fetch(`${server.origin}/rpc/echo`)).status).toBe(405)
    expect((await fetch(`${server.origin}/index.html`, asPost)).status).toBe(405)
    expect((await fetch(`${server.origin}/events`, asPost)).status).toBe(405)
    expect((await fetch(`${server.origin}/contract`, { method: 'DELETE' })).status).toBe(405)
  })

  it('answer 400 to a call whose name is no text', async () => {
    expect((await server.rpc('%e0%a4', '{}')).status).toBe(400)
  })
})
