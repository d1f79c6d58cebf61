import { screen, waitFor, within } from '@testing-library/react'
import { beforeAll, describe, expect, it } from 'vitest'
import { measure } from '../../../main/engine/bench/measure.ts'
import { DomainError } from '../../../main/engine/domain-error.ts'
import { refused, type Answers } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'

/** The engine itself behind the fake bridge. */
const measured: Answers = {
  'bench.measure': (request) => {
    try {
      return measure(request)
    } catch (error) {
      if (error instanceof DomainError) return refused(error.code, { ...error.details })
      throw error
    }
  },
}
const open = (path: string, answers: Answers = {}) => showApp(path, { ...measured, ...answers })
/** The region of the answer, once it has one. */
async function answer() {
  const region = await screen.findByRole('status', { name: 'Answer' })
  await waitFor(() => expect(region.textContent).toMatch(/\d/))
  return region
}
const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u00a0', ' ')
const box = (name: RegExp) => screen.getByRole('textbox', { name })

// The screen is fetched when it is first opened; here that would count against the first test.
beforeAll(() => import('../../../renderer/screens/bench/bench-screen.tsx'))

describe('BenchScreen', () => {
  it('answers at once for what can be begun with, with how sure it is', async () => {
    open('/bench')
    expect(plain((await answer()).textContent)).toContain('1.471 ± 0.016 L')
    const picture = plain(screen.getByRole('img', { name: /contract|less than both/ }).ariaLabel)
    expect(picture).toContain('71 ml less than both together')
  })

  it('follows what is typed', async () => {
    const { user } = open('/bench/alcoholometer')
    expect(await screen.findByText(/the answer stands here/)).toBeTruthy()
    // The region is there before it speaks, so that what comes into it is read out.
    const region = screen.getByRole('status', { name: 'Answer' })
    await user.type(box(/It shows/), '40')
    expect(await answer()).toBe(region)
    await user.clear(box(/Temperature/))
    await user.type(box(/Temperature/), '10')
    expect(plain((await screen.findByText(/^44\.0/)).textContent)).toContain('44.0 ± 0.5 % vol')
  })

  it('takes a finer instrument at its word', async () => {
    const { user } = open('/bench/alcoholometer')
    await user.type(await screen.findByRole('textbox', { name: /It shows/ }), '40')
    await user.click(screen.getByRole('button', { name: 'How fine does it read?' }))
    const scale = box(/Its scale ±/)
    expect((scale as HTMLInputElement).value).toBe('0.5')
    await user.clear(scale)
    await user.type(scale, '0.1')
    const finer = await answer()
    await waitFor(() => expect(plain(finer.textContent)).toBe('Strength40.0 ± 0.2 % vol'))
  })

  it('asks whether 68 is °C or °F, and measures nothing meanwhile', async () => {
    const { user, bridge } = open('/bench/alcoholometer')
    await user.type(await screen.findByRole('textbox', { name: /It shows/ }), '40')
    await answer()
    await user.clear(box(/Temperature/))
    await user.type(box(/Temperature/), '68')
    await user.tab()
    expect(await screen.findByText(/°C or °F\?/)).toBeTruthy()
    expect(screen.getByRole('status', { name: 'Answer' }).textContent).not.toMatch(/\d/)
    const asked = bridge.requests('bench.measure').map((request) => JSON.stringify(request))
    expect(asked.some((text) => text.includes(':68'))).toBe(false)
  })

  it('names quantity, value and range where the table ends', async () => {
    const { user } = open('/bench/alcoholometer')
    await user.type(await screen.findByRole('textbox', { name: /It shows/ }), '40')
    await user.clear(box(/Temperature/))
    await user.type(box(/Temperature/), '55 °C')
    expect(plain((await screen.findByRole('alert')).textContent)).toBe(
      'The temperature is 55 °C. It must lie from -20 °C to 40 °C.',
    )
  })

  it('says by how much two readings miss every mixture', async () => {
    const { user } = open('/bench/two-instruments')
    await user.type(await screen.findByRole('textbox', { name: /Hydrometer shows/ }), '950')
    await user.type(box(/Refractometer shows/), '10')
    expect(plain((await screen.findByRole('alert')).textContent)).toContain(
      'the nearest shows 14.4 °Bx, which is 4.4 °Bx away',
    )
  })

  it('shows the caution of boil-off before any number, and only once', async () => {
    open('/bench/boil-off')
    expect(await screen.findByText('The vapour burns')).toBeTruthy()
    expect(screen.getAllByText(/never boil it dry/)).toHaveLength(1)
  })

  it('explains how it is computed, with what was taken', async () => {
    const { user } = open('/bench/reduce')
    await user.click(await screen.findByRole('button', { name: 'How is this computed?' }))
    expect(screen.getByText(/Ethanol is kept by weight/)).toBeTruthy()
    expect(screen.getAllByText(/OIML R 22 \(1975\)/).length).toBeGreaterThan(0)
  })

  it('draws the two readings as lines, and as a table for those who read', async () => {
    const { user } = open('/bench/two-instruments')
    await user.type(await screen.findByRole('textbox', { name: /Hydrometer shows/ }), '1000.47')
    await user.type(box(/Refractometer shows/), '20.41')
    await user.click(await screen.findByRole('button', { name: 'Show as table' }))
    const table = screen.getByRole('table', { name: 'Where the two readings agree' })
    expect(within(table).getAllByRole('row')).toHaveLength(16)
  })

  it('records the raw reading into a batch and leads there', async () => {
    const { user, bridge } = open('/bench/boil-off', {
      'moves.record': { groupId: 'g', moveIds: ['m'], warnings: [] },
      'moves.preview': { refusals: [], steps: [], warnings: [], breaks: [] },
    })
    await user.type(await screen.findByRole('textbox', { name: /before boiling/ }), '0.98542')
    await user.type(box(/Hydrometer after/), '1.03665')
    await user.click(await screen.findByRole('button', { name: 'Record into a batch…' }))
    await user.selectOptions(await screen.findByRole('combobox', { name: /Batch/ }), 'damson')
    await user.click(screen.getByRole('button', { name: 'Record the reading' }))
    expect((await screen.findByText(/^Recorded into/)).textContent).toContain('Hedge damson')
    expect(bridge.requests('moves.record')[0]?.moves).toMatchObject([
      {
        kind: 'read',
        batchId: 'damson',
        jarId: 'north',
        reading: {
          instrument: 'boilOff',
          densityBeforeKgPerM3: 985.42,
          densityAfterKgPerM3: 1036.65,
          temperatureC: 20,
        },
      },
    ])
    const link = screen.getByRole('link', { name: 'Go to the batch' })
    expect(link.getAttribute('href')).toBe('#/batches/damson')
  })

  it('keeps what was written into one instrument while another is looked at', async () => {
    const { user } = open('/bench/apparent')
    const sugar = await screen.findByRole('textbox', { name: /Sugar/ })
    await user.clear(sugar)
    await user.type(sugar, '55')
    await user.click(screen.getByRole('link', { name: 'Sweeten' }))
    await screen.findByRole('textbox', { name: /Sugar wanted/ })
    await user.click(screen.getByRole('link', { name: 'Alcoholometer in a liqueur' }))
    const again = await screen.findByRole('textbox', { name: /^Sugar/ })
    expect((again as HTMLInputElement).value).toBe('55')
  })
})
