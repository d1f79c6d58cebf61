import { describe, expect, it, vi } from 'vitest'
import * as z from 'zod'
import { channels, type Channel } from '../../shared/channels.ts'
import { trial, withPantry } from './with-service.ts'

describe('the contract', () => {
  const names = Object.keys(channels) as Channel[]

  it.each(names)('%s can be told as JSON Schema', (name) => {
    const { request, reply } = channels[name]
    expect(z.toJSONSchema(request, { io: 'input' })).toHaveProperty('$schema')
    expect(z.toJSONSchema(reply, { io: 'output' })).toHaveProperty('$schema')
  })

  it.each(names)('%s refuses what its schema does not know, by field', async (name) => {
    const t = await trial()
    for (const request of [undefined, null, 7, [], { nobodyKnowsThis: 1 }]) {
      const error = await t.service.dispatch(name, request)
      expect(error).toMatchObject({ ok: false, error: { code: 'badInput' } })
    }
    t.service.close()
  })

  it('answers an unknown channel as data', async () => {
    const t = await trial()
    for (const name of ['nope', 'toString', '__proto__', ''])
      expect(await t.service.dispatch(name, {})).toMatchObject({
        error: { code: 'unknownChannel' },
      })
    t.service.close()
  })

  it('tells listeners after a write, not after a read or a refused write', async () => {
    const t = await trial()
    const listener = vi.fn<() => void>()
    const stop = t.service.onChange(listener)
    await t.ask('jars.list', {})
    await t.refusal('moves.undo', { key: 'u' })
    expect(listener).not.toHaveBeenCalled()
    await withPantry(t)
    expect(listener).toHaveBeenCalledTimes(3)
    stop()
    await t.ask('cellar.changeSettings', { units: 'us' })
    expect(listener).toHaveBeenCalledTimes(3)
    t.service.close()
  })

  it('keeps settings, and only those that were given', async () => {
    const t = await trial()
    await t.ask('cellar.changeSettings', { locale: 'pl-PL' })
    const error = await t.refusal('cellar.changeSettings', { locale: 'not a locale' })
    expect(error.code).toBe('badInput')
    const settings = await t.ask('cellar.changeSettings', { theme: 'dark' })
    expect(settings).toEqual({
      locale: 'pl-PL',
      units: 'metric',
      temperature: 'celsius',
      strength: 'pctVol',
      theme: 'dark',
      currency: 'EUR',
      reminders: false,
    })
    t.service.close()
  })
})

describe('jars.change', () => {
  it('renames a jar, and refuses to retire one that is not empty', async () => {
    const t = await trial()
    await withPantry(t)
    const north = {
      id: 'north',
      name: 'By the window',
      shape: 'jar',
      capacityMl: 4200,
      isRetired: false,
    } as const
    expect(await t.ask('jars.change', north)).toEqual(north)
    const water = {
      at: '2026-09-02T08:00:00Z',
      kind: 'pourWater',
      batchId: 'damson',
      jarId: 'north',
      volumeMl: 5,
    } as const
    await t.ask('moves.record', { key: 'w', moves: [water] })
    expect((await t.refusal('jars.change', { ...north, isRetired: true })).code).toBe('stillInUse')
    expect((await t.refusal('jars.change', { ...north, id: 'none' })).code).toBe('notFound')
    t.service.close()
  })
})
