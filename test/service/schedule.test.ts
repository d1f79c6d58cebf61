import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { trial, withPantry, type Trial } from './with-service.ts'

const inJar = { batchId: 'damson', jarId: 'north' }

/** Damsons that went in on the first of September, under spirit the next morning. */
async function steeping(change: Parameters<typeof trial>[0] = {}) {
  const t = await trial({ timeZone: 'UTC', ...change })
  await withPantry(t)
  await t.ask('moves.record', {
    key: 'begin',
    moves: [
      {
        at: '2026-09-01T18:00:00Z',
        kind: 'charge',
        ...inJar,
        lotId: 'damsons',
        massG: 1500,
        cut: 'whole',
      },
      { at: '2026-09-02T08:00:00Z', kind: 'pourSpirit', ...inJar, lotId: 'spirit', volumeMl: 1200 },
    ],
  })
  return t
}

const ids = (tasks: readonly { id: string }[]) => tasks.map(({ id }) => id)
const drawId = 'damson.drawOff.north.1'

const drawOff = (t: Trial) =>
  t.ask('moves.record', {
    key: 'draw',
    moves: [
      {
        at: '2026-11-20T17:00:00Z',
        kind: 'drawOff',
        batchId: 'damson',
        fromJarId: 'north',
        toJarId: 'south',
      },
    ],
  })

describe('today.list', () => {
  it('tells what wants hands, and no more of it once its move is logged', async () => {
    const t = await steeping()
    const before = await t.ask('today.list', {})
    expect(before.day).toBe('2026-11-20')
    const draw = before.now.find(({ id }) => id === drawId)
    expect(draw).toMatchObject({ kind: 'drawOff', loss: 'stones', log: { jarIds: ['north'] } })
    expect(before.batches.map(({ batch }) => batch.id)).toEqual(['damson'])
    await drawOff(t)
    const after = await t.ask('today.list', {})
    expect(ids(after.now)).not.toContain(drawId)
    expect(ids(after.now)).toContain('damson.coverWithSugar.north.1')
    // Taken back, it is to be done again.
    await t.ask('moves.undo', { key: 'undo', batchId: 'damson' })
    expect(ids((await t.ask('today.list', {})).now)).toContain(drawId)
  })

  it('says when the next thing comes where nothing is due', async () => {
    const t = await steeping()
    t.setNow('2026-09-02T09:00:00Z')
    const today = await t.ask('today.list', {})
    expect(today.now).toEqual([])
    expect(ids(today.week)).toEqual(['damson.turn.north.2'])
    t.setNow('2026-09-03T09:00:00Z')
    expect(ids((await t.ask('today.list', {})).now)).toEqual(['damson.turn.north.2'])
  })

  it('looks at the day of the maker’s own time zone', async () => {
    const t = await steeping({ timeZone: 'Pacific/Auckland' })
    t.setNow('2026-11-20T12:00:00Z')
    expect((await t.ask('today.list', {})).day).toBe('2026-11-21')
  })
})

describe('schedule.list', () => {
  it('has the whole road of one batch, its ids those that Today tells', async () => {
    const t = await steeping()
    const tasks = await t.ask('schedule.list', { batchId: 'damson' })
    expect(tasks.find(({ id }) => id === drawId)?.isWaiting).toBe(false)
    expect(tasks.filter(({ isWaiting }) => isWaiting).map(({ kind }) => kind)).toEqual([
      'coverWithSugar',
      'pourOffSugarDraw',
      'press',
      'clearJar',
      'marry',
      'rack',
      'filter',
      'bottle',
      'taste',
    ])
    expect(await t.refusal('schedule.list', { batchId: 'nobody' })).toMatchObject({
      code: 'notFound',
    })
  })

  it('dates drawing off by the steeping forecast', async () => {
    const t = await steeping()
    t.setNow('2026-09-10T09:00:00Z')
    const draw = await t.ask('schedule.task', { taskId: drawId })
    expect(draw?.from).toBe('forecast')
    const { jars } = await t.ask('batches.forecast', { batchId: 'damson' })
    // Asked on another day the forecast still sees the same hour, give or take its own hour.
    const settled = Date.parse(jars[0]?.settledAt.typical ?? '')
    expect(Math.abs(Date.parse(draw?.early ?? '') - settled)).toBeLessThan(2 * 3_600_000)
  })

  it('knows a task that is done no more', async () => {
    const t = await steeping()
    await drawOff(t)
    expect(await t.ask('schedule.task', { taskId: drawId })).toBeNull()
  })
})

describe('an opened spirit', () => {
  const cautionsOf = async (t: Trial) =>
    (await t.ask('today.list', {})).cautions.filter(({ code }) => code === 'openedSpirit')

  it('is asked about on Today, until it is said to be shut; that is taken back as well', async () => {
    const t = await steeping()
    t.setNow('2026-09-20T09:00:00Z')
    expect(await cautionsOf(t)).toEqual([])
    t.setNow('2026-11-20T18:00:00Z')
    const [asked] = await cautionsOf(t)
    expect(asked).toMatchObject({ lotId: 'spirit', since: '2026-09-02T08:00:00.000Z' })
    expect(asked?.value).toBeCloseTo(800, 0)
    await t.ask('pantry.sayShut', { lotId: 'spirit', isShut: true })
    expect(await cautionsOf(t)).toEqual([])
    await t.ask('pantry.sayShut', { lotId: 'spirit', isShut: false })
    expect(await cautionsOf(t)).toEqual([asked])
    // A pour that is taken back opened nothing.
    await t.ask('moves.undo', { key: 'undo', batchId: 'damson' })
    expect(await cautionsOf(t)).toEqual([])
    expect(await t.refusal('pantry.sayShut', { lotId: 'rum', isShut: true })).toMatchObject({
      code: 'notFound',
    })
  })
})

describe('the next step of a batch', () => {
  it('is the task that Today tells, on the same days, in list and page alike', async () => {
    const t = await steeping()
    t.setNow('2026-10-20T09:00:00Z')
    await t.ask('schedule.putOff', { taskId: drawId, until: '2026-10-22' })
    const nextOnes = async () => {
      const [listed] = await t.ask('batches.list', {})
      const { summary } = await t.ask('batches.page', { batchId: 'damson' })
      const told = (await t.ask('today.list', {})).batches[0]
      expect([summary.next, told?.next]).toEqual([listed?.next, listed?.next])
      return listed?.next
    }
    const next = await nextOnes()
    expect(next).toEqual(await t.ask('schedule.task', { taskId: drawId }))
    expect(next).toMatchObject({ from: 'forecast', putOff: { until: '2026-10-22' } })
    t.setNow('2026-11-20T18:00:00Z')
    await drawOff(t)
    expect(await nextOnes()).toMatchObject({ id: 'damson.coverWithSugar.north.1' })
  })
})

describe('putting off', () => {
  it('hides a task until its day, and gives it back', async () => {
    const t = await steeping()
    t.setNow('2026-10-20T09:00:00Z')
    expect(ids((await t.ask('today.list', {})).now)).toContain(drawId)
    const put = (until: string) => t.ask('schedule.putOff', { taskId: drawId, until })
    expect(await put('2026-10-22')).toEqual({ before: null })
    const today = await t.ask('today.list', {})
    expect(ids(today.now)).not.toContain(drawId)
    expect(today.putOff.map(({ id, putOff }) => [id, putOff?.until])).toEqual([
      [drawId, '2026-10-22'],
    ])
    expect(await put('2026-10-25')).toEqual({ before: '2026-10-22' })
    expect(await t.ask('schedule.bringBack', { taskId: drawId })).toEqual({ before: '2026-10-25' })
    expect(ids((await t.ask('today.list', {})).now)).toContain(drawId)
  })

  it('does not keep quiet past the day from which it loses', async () => {
    const t = await steeping()
    t.setNow('2026-10-20T09:00:00Z')
    await t.ask('schedule.putOff', { taskId: drawId, until: '2026-12-24' })
    t.setNow('2026-10-30T09:00:00Z')
    const back = (await t.ask('today.list', {})).now.find(({ id }) => id === drawId)
    expect(back).toMatchObject({ state: 'late', putOff: { until: '2026-12-24', isBack: true } })
  })

  it('refuses what is no task, no day, or no id', async () => {
    const t = await steeping()
    const put = (taskId: string, until: string) => t.refusal('schedule.putOff', { taskId, until })
    expect(await put('damson.bottle.9', '2026-12-01')).toMatchObject({ code: 'notFound' })
    expect(await put(drawId, '2026-02-30')).toMatchObject({ code: 'badInput' })
    expect(await put('damson; DROP', '2026-12-01')).toMatchObject({ code: 'badInput' })
  })
})

describe('today.remind', () => {
  it('reminds once a day, and only where that is wished', async () => {
    const t = await steeping()
    expect(await t.ask('today.remind', {})).toBeNull()
    await t.ask('cellar.changeSettings', { reminders: true })
    const reminder = await t.ask('today.remind', {})
    expect(reminder?.batchNames).toEqual(['Damson'])
    expect(await t.ask('today.remind', {})).toBeNull()
    t.setNow('2026-11-21T09:00:00Z')
    expect(await t.ask('today.remind', {})).toEqual(reminder)
  })

  it('counts a round of turning once', async () => {
    const t = await steeping()
    const south = { batchId: 'damson', jarId: 'south' }
    await t.ask('moves.record', {
      key: 'more',
      moves: [
        {
          at: '2026-09-02T08:00:00Z',
          kind: 'charge',
          ...south,
          lotId: 'damsons',
          massG: 900,
          cut: 'cut',
        },
        {
          at: '2026-09-02T08:10:00Z',
          kind: 'pourSpirit',
          ...south,
          lotId: 'spirit',
          volumeMl: 700,
        },
      ],
    })
    await t.ask('cellar.changeSettings', { reminders: true })
    t.setNow('2026-09-03T09:00:00Z')
    const { now } = await t.ask('today.list', {})
    expect(now.map(({ kind }) => kind)).toEqual(['turn', 'turn'])
    expect((await t.ask('today.remind', {}))?.count).toBe(1)
  })

  it('wakes nobody at night', async () => {
    const t = await steeping({ timeZone: 'Europe/Warsaw' })
    await t.ask('cellar.changeSettings', { reminders: true })
    t.setNow('2026-11-21T06:59:00Z')
    expect(await t.ask('today.remind', {})).toBeNull()
    t.setNow('2026-11-21T07:01:00Z')
    expect(await t.ask('today.remind', {})).not.toBeNull()
  })

  it('says nothing on a day without work, and still may later that day', async () => {
    const t = await steeping()
    await t.ask('cellar.changeSettings', { reminders: true })
    t.setNow('2026-09-02T09:00:00Z')
    expect(await t.ask('today.remind', {})).toBeNull()
    t.setNow('2026-09-03T09:00:00Z')
    expect(await t.ask('today.remind', {})).not.toBeNull()
  })
})

describe('calendar.file', () => {
  const eventsOf = async (t: Trial) => {
    const { ics } = await t.ask('calendar.file', {})
    const calendar = new ICAL.Component(ICAL.parse(ics) as string)
    return new Map(
      calendar.getAllSubcomponents('vevent').map((found) => {
        const event = new ICAL.Event(found)
        const status = String(found.getFirstPropertyValue('status'))
        return [
          event.uid,
          {
            day: event.startDate.toString(),
            sequence: event.sequence,
            status,
            summary: event.summary,
          },
        ]
      }),
    )
  }
  const uid = `${drawId}@ratafia`

  it('keeps the version while nothing changes, and tells a newer one when the day does', async () => {
    const t = await steeping()
    t.setNow('2026-09-10T09:00:00Z')
    const first = (await eventsOf(t)).get(uid)
    expect(first).toMatchObject({ sequence: 0, status: 'CONFIRMED', summary: 'Draw off: Damson' })
    expect((await eventsOf(t)).get(uid)).toEqual(first)
    await t.ask('schedule.putOff', { taskId: drawId, until: '2026-12-24' })
    expect((await eventsOf(t)).get(uid)).toMatchObject({ day: '2026-12-24', sequence: 1 })
  })

  it('cancels what is done, and confirms it again when that is undone', async () => {
    const t = await steeping()
    await eventsOf(t)
    await drawOff(t)
    expect((await eventsOf(t)).get(uid)).toMatchObject({ status: 'CANCELLED', sequence: 1 })
    await t.ask('moves.undo', { key: 'undo', batchId: 'damson' })
    expect((await eventsOf(t)).get(uid)).toMatchObject({ status: 'CONFIRMED', sequence: 2 })
  })

  it('forgets a cancellation after two months, but never its number', async () => {
    const t = await steeping()
    await eventsOf(t)
    await drawOff(t)
    await eventsOf(t)
    t.setNow('2027-02-20T09:00:00Z')
    expect((await eventsOf(t)).has(uid)).toBe(false)
    await t.ask('moves.undo', { key: 'undo', batchId: 'damson' })
    expect((await eventsOf(t)).get(uid)?.sequence).toBe(2)
  })

  it('has days of the maker’s own calendar', async () => {
    const day = async (timeZone: string) => {
      const t = await steeping({ timeZone })
      t.setNow('2026-09-10T09:00:00Z')
      return (await eventsOf(t)).get(`damson.taste.1@ratafia`)?.day ?? ''
    }
    const [west, east] = [await day('Pacific/Pago_Pago'), await day('Pacific/Kiritimati')]
    expect(Date.parse(east) - Date.parse(west)).toBe(86_400_000)
  })

  it('carries a hostile name of a batch', async () => {
    const t = await steeping()
    const name = `Plum\\n, "x"; 🍒 ${'é'.repeat(80)}`
    await t.ask('batches.change', { id: 'damson', name })
    expect((await eventsOf(t)).get(uid)?.summary).toBe(`Draw off: ${name}`)
  })
})

describe('the calendar’s address', () => {
  it('is served to who knows its secret, until it is closed or renewed', async () => {
    const t = await steeping()
    const secretOf = (path: string | null) =>
      /^\/calendar\/([\w-]{43})\.ics$/.exec(path ?? '')?.[1] ?? ''
    expect(await t.ask('calendar.feed', {})).toEqual({ path: null })
    expect(await t.refusal('calendar.serve', { secret: '' })).toMatchObject({ code: 'notFound' })
    const { path } = await t.ask('calendar.openFeed', {})
    const secret = secretOf(path)
    expect(await t.ask('calendar.feed', {})).toEqual({ path })
    expect((await t.ask('calendar.serve', { secret })).ics).toContain('BEGIN:VCALENDAR')
    expect(await t.refusal('calendar.serve', { secret: `${secret}x` })).toMatchObject({
      code: 'notFound',
    })
    const renewed = secretOf((await t.ask('calendar.openFeed', {})).path)
    expect(renewed).not.toBe(secret)
    expect(await t.refusal('calendar.serve', { secret })).toMatchObject({ code: 'notFound' })
    await t.ask('calendar.closeFeed', {})
    expect(await t.refusal('calendar.serve', { secret: renewed })).toMatchObject({
      code: 'notFound',
    })
  })
})
