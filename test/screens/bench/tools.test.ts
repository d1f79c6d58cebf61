import { describe, expect, it } from 'vitest'
import { measure } from '../../../main/engine/bench/measure.ts'
import { startOf, requestOf, usualFinenessOf } from '../../../renderer/screens/bench/entries.ts'
import { toolGroups, toolOf, tools } from '../../../renderer/screens/bench/tools.ts'
import type { BenchInstrument } from '../../../shared/schemas/bench.ts'
import { sampleRequests } from '../../engine/bench/sample-requests.ts'

/** The numbers of a plain use of an instrument, as a form would hold them. */
const numbersOf = (instrument: BenchInstrument): Record<string, number> =>
  Object.fromEntries(
    Object.entries(sampleRequests[instrument]).filter(([, value]) => typeof value === 'number'),
  ) as Record<string, number>

const modes = tools.flatMap((tool) => tool.modes.map((mode) => ({ tool, mode })))

describe('tools', () => {
  it('has each instrument of the contract once, and each tool in the list once', () => {
    const instruments = modes.map(({ mode }) => mode.instrument)
    expect(instruments.toSorted()).toEqual(Object.keys(sampleRequests).toSorted())
    const listed = toolGroups.flatMap((group) => group.tools)
    expect(listed.toSorted()).toEqual(tools.map(({ id }) => id).toSorted())
  })

  it('begins with the first tool where a path names none', () => {
    expect(toolOf(undefined).id).toBe('reduce')
    expect(toolOf('divining-rod').id).toBe('reduce')
  })

  it.each(modes)('$mode.instrument shows the fineness that is taken', ({ tool, mode }) => {
    const numbers = numbersOf(mode.instrument)
    const entries = { ...startOf(tool), numbers, liquid: 'other' as const }
    const request = requestOf(mode, entries)
    if (!request) throw new Error('the form is not complete')
    const { inputs } = measure(request)
    for (const spec of mode.fine) {
      const taken = inputs.find(({ name }) => name === spec.name)
      // A scale's last digit is taken as it is; the others as uncertainties of their number.
      const uncertainty = spec.name === 'scaleStepG' ? taken?.value : taken?.uncertainty
      expect(uncertainty, spec.name).toBeCloseTo(usualFinenessOf(spec, numbers) as number, 12)
    }
  })

  it.each(modes)(
    '$mode.instrument sends a finer instrument with the question',
    ({ tool, mode }) => {
      const numbers = numbersOf(mode.instrument)
      const fineness = Object.fromEntries(mode.fine.map(({ name }) => [name, 0.01]))
      const request = requestOf(mode, { ...startOf(tool), numbers, fineness, liquid: 'other' })
      expect(request?.fineness).toEqual(fineness)
    },
  )

  it.each(modes)('$mode.instrument asks nothing while a number is missing', ({ tool, mode }) => {
    const [first] = mode.numbers
    const numbers = { ...numbersOf(mode.instrument), [first!.name]: undefined }
    expect(requestOf(mode, { ...startOf(tool), numbers })).toBeUndefined()
  })
})
