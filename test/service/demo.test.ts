import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it, vi } from 'vitest'
import { trial, withPantry } from './with-service.ts'

describe('the demo', () => {
  it("never touches the maker's own book", async () => {
    const t = await trial()
    await withPantry(t)
    const own = await t.ask('pantry.list', {})
    expect(await t.ask('cellar.openDemo', {})).toMatchObject({ isDemo: true, hasDemo: true })
    const before = readFileSync(t.options.ownFile)
    expect((await t.ask('jars.list', {})).map(({ jar }) => jar.id)).toEqual(['demo-jar'])
    await t.ask('jars.add', {
      jars: [{ id: 'x', name: 'X', shape: 'jar', capacityMl: 1000, isRetired: false }],
    })
    expect(readFileSync(t.options.ownFile).equals(before)).toBe(true)
    expect(await t.ask('cellar.openOwn', {})).toMatchObject({ isDemo: false, hasDemo: true })
    expect(await t.ask('pantry.list', {})).toEqual(own)
    t.service.close()
  })

  it('is kept until it is removed, and removed with its file', async () => {
    const t = await trial()
    await t.ask('cellar.openDemo', {})
    await t.ask('cellar.openOwn', {})
    expect(existsSync(t.options.demoFile)).toBe(true)
    await t.ask('cellar.openDemo', {})
    expect(await t.ask('cellar.removeDemo', {})).toMatchObject({ isDemo: false, hasDemo: false })
    expect(existsSync(t.options.demoFile)).toBe(false)
    t.service.close()
  })

  it('cut short while being made is made again, not taken for whole', async () => {
    const logged = vi.spyOn(console, 'error').mockImplementation(() => undefined)
    let isFailing = true
    const t = await trial({
      fillDemo: async () => {
        if (isFailing) throw new Error('cut short')
      },
    })
    expect((await t.refusal('cellar.openDemo', {})).code).toBe('internal')
    expect(await t.ask('cellar.status', {})).toMatchObject({ isDemo: false, hasDemo: false })
    expect(logged).toHaveBeenCalledOnce()
    logged.mockRestore()
    isFailing = false
    expect(await t.ask('cellar.openDemo', {})).toMatchObject({ isDemo: true })
    t.service.close()
  })

  it('open in a program whose book is in the same folder is said to be open there, and stays', async () => {
    const first = await trial({ startWithDemo: true })
    const { demoFile } = first.options
    const second = await trial({ demoFile })
    expect(await second.refusal('cellar.openDemo', {})).toMatchObject({ code: 'demoBusy' })
    expect(await second.refusal('cellar.removeDemo', {})).toMatchObject({ code: 'demoBusy' })
    expect(await second.ask('cellar.status', {})).toMatchObject({ isDemo: false, hasDemo: true })
    await expect(trial({ demoFile, startWithDemo: true })).rejects.toMatchObject({
      code: 'demoBusy',
    })
    first.service.close()
    expect(await second.ask('cellar.openDemo', {})).toMatchObject({ isDemo: true })
    second.service.close()
  })

  it('being made by another program is not made a second time meanwhile', async () => {
    const { promise: told, resolve: tell } = Promise.withResolvers<undefined>()
    const first = await trial({ fillDemo: () => told })
    const making = first.ask('cellar.openDemo', {})
    const second = await trial({ demoFile: first.options.demoFile })
    expect(await second.refusal('cellar.openDemo', {})).toMatchObject({ code: 'demoBusy' })
    tell(undefined)
    expect(await making).toMatchObject({ isDemo: true })
    second.service.close()
    first.service.close()
  })

  it('damaged is told apart from a damaged book', async () => {
    const t = await trial()
    writeFileSync(t.options.demoFile, 'this is not a cellar book')
    expect(await t.refusal('cellar.openDemo', {})).toMatchObject({ code: 'demoSpoilt' })
    expect(await t.ask('cellar.status', {})).toMatchObject({ isDemo: false })
    t.service.close()
  })

  it('can be opened first, without a book of the maker being made', async () => {
    const t = await trial({ startWithDemo: true })
    expect(await t.ask('cellar.status', {})).toMatchObject({ isDemo: true })
    expect(existsSync(t.options.ownFile)).toBe(false)
    t.service.close()
  })
})
