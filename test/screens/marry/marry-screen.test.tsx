import { screen, waitFor, within } from '@testing-library/react'
import { beforeAll, describe, expect, it } from 'vitest'
import type { MarryReply, MendReply } from '../../../shared/schemas/marrying.ts'
import { liquid } from '../cellar-fixture.ts'
import type { Answers } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'

const priced = { minor: 1250, isComplete: true }

const reply = (changed: Partial<MarryReply> = {}): MarryReply => ({
  amounts: [
    {
      place: 'jar:north',
      unit: 'ml',
      amount: 1200,
      volumeMl: 1200,
      massG: 1224,
      isUsedUp: false,
      cost: priced,
    },
  ],
  liquid: liquid({ volumeMl: 1200, strengthPctVol: 30, sugarGPerL: 200 }),
  contractionMl: 4,
  undissolvedG: 0,
  cost: priced,
  broken: [],
  cutShort: [],
  bottles: [],
  restMl: 1200,
  ...changed,
})

const { bottles: _, restMl: __, ...blend } = reply()
const mended: MendReply = {
  ...blend,
  before: liquid(),
  costBefore: { minor: 900, isComplete: true },
  amounts: [{ ...reply().amounts[0]!, place: 'lot:spirit', amount: 60 }],
  liquid: liquid({ strengthPctVol: 35.5 }),
  trial: {
    sampleMl: 100,
    amounts: [{ place: 'lot:spirit', unit: 'ml', amount: 4 }],
    volumeMl: 104,
  },
  haze: { bentoniteG: { low: 0.75, high: 1.5 }, bentoniteWaterMl: { low: 11, high: 22 } },
}

const noPreview: Answers = {
  'moves.preview': { refusals: [], steps: [], warnings: [], breaks: [] },
  'moves.record': { groupId: 'g', moveIds: ['m'], warnings: [] },
}
const open = (path: string, answers: Answers = {}) =>
  showApp(path, { 'marry.solve': reply(), 'mend.solve': mended, ...noPreview, ...answers })
const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u00a0', ' ')

// The screen is fetched when it is first opened; here that would count against the first test.
beforeAll(async () => {
  await import('../../../renderer/screens/marry/marry-screen.tsx')
  await import('../../../renderer/screens/marry/mend/mend-screen.tsx')
})

describe('MarryScreen', () => {
  it('asks for something that goes in, and answers once it is ticked', async () => {
    const { user, bridge } = open('/marry')
    expect(await screen.findByText('Choose at least one thing that goes in.')).toBeTruthy()
    expect(bridge.requests('marry.solve')).toEqual([])
    // The region is there before it has an answer, so that what comes into it is read out.
    const answer = screen.getByRole('status', { name: 'The blend' })
    await user.click(await screen.findByRole('checkbox', { name: /North jar/ }))
    await waitFor(() => expect(plain(answer.textContent)).toContain('30.0 % vol'))
    expect(screen.getByRole('status', { name: 'The blend' })).toBe(answer)
    expect(bridge.requests('marry.solve').at(-1)?.parts).toContainEqual({ place: 'jar:north' })
  })

  it('follows a wish that is written', async () => {
    const { user, bridge } = open('/marry')
    await user.click(await screen.findByRole('checkbox', { name: /North jar/ }))
    const strength = screen.getByRole('textbox', { name: 'Strength, wished for' })
    await user.clear(strength)
    await user.type(strength, '27')
    await waitFor(() =>
      expect(bridge.requests('marry.solve').at(-1)?.wishes.strengthPctVol).toEqual({
        low: 27,
        high: 27,
      }),
    )
  })

  it('keeps the least, the most and what is kept back', async () => {
    const { user, bridge } = open('/marry')
    await user.click(await screen.findByRole('checkbox', { name: /North jar/ }))
    await user.click(screen.getByRole('button', { name: 'Limits for North jar' }))
    await user.type(screen.getByRole('textbox', { name: /Keep back/ }), '300')
    await waitFor(() =>
      expect(bridge.requests('marry.solve').at(-1)?.parts).toContainEqual({
        place: 'jar:north',
        keepBack: 300,
      }),
    )
  })

  it('says which wish breaks and what the parts can make', async () => {
    const { user } = open('/marry', {
      'marry.solve': reply({
        broken: [
          {
            wish: 'strengthPctVol',
            low: 60,
            high: 60,
            reached: 48,
            reason: 'beyondParts',
            reachable: { low: 20, high: 48 },
            places: [],
          },
        ],
      }),
    })
    await user.click(await screen.findByRole('checkbox', { name: /North jar/ }))
    const told = await screen.findByText(/cannot be/)
    expect(told.closest('[aria-live="polite"]')).toBeTruthy()
    expect(plain(told.textContent)).toBe(
      'Strength cannot be 60.0 % vol: these parts make 20.0 % vol to 48.0 % vol.',
    )
  })

  it('marks a vessel that would run over, and does not record into it', async () => {
    const { user } = open('/marry', {
      'marry.solve': reply({
        fill: { jarId: 'south', fillMl: 10_400, capacityMl: 10_000, safeMl: 9500 },
      }),
    })
    await user.click(await screen.findByRole('checkbox', { name: /North jar/ }))
    await user.selectOptions(await screen.findByRole('combobox', { name: /Pour into/ }), 'south')
    expect(plain((await screen.findByText(/run over/)).textContent)).toContain('400 ml')
    expect((screen.getByRole('button', { name: 'Record…' }) as HTMLButtonElement).disabled).toBe(
      true,
    )
  })

  it('shows the pour table with what is left over', async () => {
    const { user } = open('/marry', {
      'marry.solve': reply({
        bottles: [{ sizeMl: 500, count: 2 }],
        pourTable: {
          columns: [{ place: 'jar:north', unit: 'ml', total: 1001, remainder: 1 }],
          rows: [
            {
              sizeMl: 500,
              count: 2,
              amounts: [500],
              filledMl: 500,
              strengthPctVol: 30,
              sugarGPerL: 200,
            },
          ],
        },
      }),
    })
    await user.click(await screen.findByRole('checkbox', { name: /North jar/ }))
    const table = await screen.findByRole('table', { name: 'What goes into each bottle' })
    const rows = within(table)
      .getAllByRole('row')
      .map((row) => plain(row.textContent))
    expect(rows[1]).toContain('2 × 500 ml500 ml')
    expect(rows.at(-1)).toContain('Left over1 ml')
  })

  it('records one marriage into the chosen vessel', async () => {
    const { user, bridge } = open('/marry')
    await user.click(await screen.findByRole('checkbox', { name: /North jar/ }))
    await user.selectOptions(await screen.findByRole('combobox', { name: /Pour into/ }), 'south')
    await user.click(await screen.findByRole('button', { name: 'Record…' }))
    await user.click(await screen.findByRole('button', { name: 'Record it' }))
    expect(await screen.findByText('Recorded into Hedge damson.')).toBeTruthy()
    expect(bridge.requests('moves.record')[0]?.moves).toMatchObject([
      {
        kind: 'marry',
        batchId: 'damson',
        toJarId: 'south',
        parts: [{ jarId: 'north', volumeMl: 1200 }],
      },
    ])
  })
})

describe('MendScreen', () => {
  it('says what to add to 100 ml first and then to the jar', async () => {
    const { bridge } = open('/marry/mend/north')
    expect(await screen.findByText(/^Try on 100.ml first$/)).toBeTruthy()
    const { jarId, wishes, parts } = bridge.requests('mend.solve').at(-1)!
    expect([jarId, parts]).toEqual(['north', [{ place: 'lot:spirit' }]])
    expect(wishes).toEqual({
      strengthPctVol: { low: 35.5, high: 35.5 },
      sugarGPerL: { low: 180, high: 180 },
    })
    expect(plain(document.body.textContent)).toContain('It costs €3.50')
  })

  it('has no sum for a haze, but doses', async () => {
    const { user } = open('/marry/mend/north')
    await user.click(await screen.findByRole('radio', { name: 'Hazy' }))
    expect(plain((await screen.findByText(/for this jar/)).textContent)).toContain('0.8 g to 1.5 g')
  })
})
