import { screen, waitFor, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { contents, liquid, summary } from '../cellar-fixture.ts'
import type { Answers } from '../fake-bridge.ts'
import { showApp } from '../show.tsx'
import { batchAnswers, page } from './batch-page-fixture.ts'
import { curveAnswer, fit, forecast, jarForecast, steepingCurve } from './steeping-fixture.ts'

async function showSteeping(answers: Answers = {}) {
  const shown = showApp('/batches/damson', {
    ...batchAnswers,
    'batches.curve': curveAnswer,
    'batches.forecast': forecast(),
    ...answers,
  })
  // The first test also waits for the screen's own chunk.
  await screen.findByRole('heading', { name: 'Hedge damson', level: 1 }, { timeout: 10_000 })
  await within(region('Curve')).findByRole('figure')
  return shown
}

const region = (name: string) => screen.getByRole('region', { name })
const whatIf = () => screen.getByRole('region', { name: 'What if' })
const lines = (name: string) =>
  region('Curve').querySelectorAll(`path.recharts-line-curve[name="${name}"]`)

describe('the curve of a steeping batch', () => {
  it('says where the lines stand now and where they go', async () => {
    await showSteeping()
    expect(within(region('Curve')).getByRole('figure').textContent).toMatch(
      /strength 56\.5\s% vol to 31\.4\s% vol, .*Forecast for 8 Jan 2027: 31\.0\s% vol, 184\sg\/L/,
    )
  })

  it('names readings that are not used or do not fit, and where it comes to rest', async () => {
    await showSteeping()
    const figure = within(region('Curve')).getByRole('figure')
    await within(figure).findByText('rests at 31.0 % vol ± 0.7')
    for (const words of ['outlier', 'not used', 'now, then forecast'])
      expect(within(figure).getAllByText(words)).toHaveLength(1)
  })

  it('shows a further quantity, and leaves the last one in sight', async () => {
    const { user } = await showSteeping()
    const toggle = (name: string) => within(region('Curve')).getByRole('checkbox', { name })
    expect(lines('Acid')).toHaveLength(0)
    await user.click(toggle('Acid'))
    expect(lines('Acid')).toHaveLength(2)
    for (const name of ['Acid', 'Sugar', 'Strength']) await user.click(toggle(name))
    expect(toggle('Strength')).toHaveProperty('checked', true)
    expect(lines('Sugar')).toHaveLength(0)
  })

  it('has a table twin with the band, and what each reading counts for', async () => {
    const { user } = await showSteeping()
    await user.click(within(region('Curve')).getByRole('button', { name: 'Show as table' }))
    const table = within(region('Curve')).getByRole('table', { name: 'The curve over time' })
    expect(within(table).getAllByRole('row')[1]?.textContent).toMatch(
      /56\.5\s% vol \(54\.5 – 58\.6\)/,
    )
    expect(within(table).getAllByRole('row').at(-1)?.textContent).toContain('forecast')
    const readings = within(region('Curve')).getByRole('table', { name: 'Readings' })
    within(readings).getByRole('row', { name: /41\.0.*it does not fit/ })
    within(readings).getByRole('row', { name: /28\.0.*not used until confirmed/ })
  })
})

describe('what if', () => {
  it('asks the curve when the slider moves, and tells what the jar would give', async () => {
    const { user, bridge } = await showSteeping()
    within(whatIf()).getByText('20 °C, as it is', { normalizer: plainSpaces })
    within(whatIf()).getByRole('slider', { name: 'Warmth' }).focus()
    await user.keyboard('{ArrowRight}{ArrowRight}{ArrowRight}')
    const table = await within(whatIf()).findByRole('table')
    await waitFor(() =>
      expect(bridge.requests('batches.curve').at(-1)?.whatIf).toEqual({
        since: 'start',
        temperatureC: 23,
      }),
    )
    expect(table.textContent).toMatch(/North jar.*as it is 31\.2\s% vol.*97%as it is 95%/)
    expect(within(region('Curve')).getAllByText('changed').length).toBeGreaterThan(0)
    expect(bridge.requests('moves.record')).toHaveLength(0)
  })

  it('puts together what is asked, from now on, and is cleared', async () => {
    const { user, bridge } = await showSteeping()
    const asked = () => bridge.requests('batches.curve').at(-1)?.whatIf
    await user.click(within(whatIf()).getByRole('radio', { name: 'daily' }))
    await user.click(within(whatIf()).getByRole('radio', { name: 'crushed' }))
    await user.click(within(whatIf()).getByRole('checkbox', { name: 'Pieces of half the size' }))
    await user.click(within(whatIf()).getByRole('radio', { name: 'from now on' }))
    await waitFor(() =>
      expect(asked()).toEqual({ since: 'now', turned: 'daily', cut: 'crushed', pieceScale: 0.5 }),
    )
    await user.click(within(whatIf()).getByRole('button', { name: 'Clear' }))
    expect(within(whatIf()).queryByRole('table')).toBeNull()
    expect(within(region('Curve')).queryByText('changed')).toBeNull()
  })

  it('draws off earlier by the slider, and forgets a day that lies before now', async () => {
    const { user, bridge } = await showSteeping()
    const asked = () => bridge.requests('batches.curve').at(-1)?.whatIf
    within(whatIf()).getByRole('slider', { name: 'Drawn off' }).focus()
    await user.keyboard('{Home}')
    await waitFor(() => expect(asked()?.drawOffAt).toBe('2026-09-11T08:00:00.000Z'))
    await user.click(within(whatIf()).getByRole('radio', { name: 'weekly' }))
    await user.click(within(whatIf()).getByRole('radio', { name: 'from now on' }))
    await waitFor(() => expect(asked()).toEqual({ since: 'now', turned: 'weekly' }))
  })
})

describe('the forecast', () => {
  it('tells when a jar settles, what a week changes, and what is out of the fruit', async () => {
    await showSteeping()
    const words = region('Forecast').textContent.replaceAll('\u00a0', ' ')
    expect(words).toContain('Now32.6 ± 0.6 % vol178 ± 9 g/L')
    expect(words).toContain('Comes to rest at31.0 ± 0.7 % vol184 ± 8 g/L')
    expect(words).toContain('Within 0.5 % vol of rest12 Dec (8 Dec – 20 Dec)')
    expect(words).toContain('One more week changes−0.3 % vol, +2 g/L')
    expect(words).toContain('Extract out of the fruit87% (80% – 93%) and 92% of the colour')
  })

  it('tells what the readings taught, and which one does not fit', async () => {
    await showSteeping()
    const words = region('What the readings say').textContent.replaceAll('\u00a0', ' ')
    expect(words).toContain(
      'Pace: 1.4 × the usual (0.90 – 2.1), from 3 readings; before: 0.30 – 2.9.',
    )
    expect(words).toContain('own juice is 102% of what the library expects (97% – 107%)')
    expect(words).toMatch(/The reading of 25 Oct in North jar does not fit .*: 41\.0 % vol\./)
  })

  it('says that the band is the library’s while there is no reading', async () => {
    await showSteeping({
      'batches.curve': steepingCurve({ readings: [] }),
      'batches.forecast': forecast({ fit: fit({ readingsUsed: 0 }) }),
    })
    expect(region('What the readings say').textContent).toContain('One reading of strength')
  })

  it('opens the sugar draw prefilled for a spent jar', async () => {
    const { user } = await showSteeping({
      'batches.forecast': forecast({
        jars: [
          jarForecast({
            sugarDraw: {
              sugarG: 283,
              draw: 1,
              heldMl: 760,
              heldEthanolMl: 236,
              outMl: 520,
              outStrengthPctVol: 26,
              recoveredEthanolMl: 135,
              valueMinor: 267,
            },
          }),
        ],
      }),
    })
    const words = region('Forecast').textContent.replaceAll('\u00a0', ' ')
    expect(words).toContain('A draw with 280 g of sugar brings 520 ml at 26.0 % vol: 135 ml')
    expect(words).toContain('that is €2.67.')
    await user.click(within(region('Forecast')).getByRole('button', { name: 'Cover with sugar' }))
    const form = await screen.findByRole('form', { name: 'Cover with sugar' })
    expect(within(form).getByLabelText(/^How much/)).toHaveProperty('value', '280')
    expect(within(form).getByRole('button', { name: 'What is this? Sugar draw' })).toBeTruthy()
  })

  it('offers no draw of fruit that still gives', async () => {
    await showSteeping({
      'batches.forecast': forecast({
        jars: [
          jarForecast({
            extractFraction: { value: 0.49, low: 0.3, high: 0.6 },
            sugarDraw: {
              sugarG: 280,
              draw: 1,
              heldMl: 760,
              heldEthanolMl: 0.2,
              outMl: 653,
              outStrengthPctVol: 0,
              recoveredEthanolMl: 0.1,
            },
          }),
        ],
      }),
    })
    expect(
      within(region('Forecast')).queryByRole('button', { name: 'Cover with sugar' }),
    ).toBeNull()
  })

  it('puts the book right with the fitted strength where the two differ', async () => {
    const strong = contents({ liquid: liquid({ strengthPctVol: 34.1 }) })
    const { user } = await showSteeping({
      'batches.page': page({ summary: summary({ jars: [strong] }) }),
    })
    const words = region('Forecast').textContent.replaceAll('\u00a0', ' ')
    expect(words).toContain('The book says 34.1 % vol. By readings')
    await user.click(within(region('Forecast')).getByRole('button', { name: 'Put the book right' }))
    const form = await screen.findByRole('form', { name: 'Correct' })
    expect(within(form).getByLabelText(/^Strength found/)).toHaveProperty('value', '32.6')
  })

  it('says nothing of the book where it lies within the band', async () => {
    await showSteeping()
    expect(within(region('Forecast')).queryByText(/The book says/)).toBeNull()
  })

  it('has nothing to forecast without fruit under spirit', async () => {
    await showSteeping({ 'batches.forecast': { jars: [] } })
    expect(region('Forecast').textContent).toContain('No fruit is under spirit now')
  })
})

describe('the jars', () => {
  it('show how much of the extract is out while they steep', async () => {
    const { user } = await showSteeping()
    await within(region('Jars')).findByRole('button', {
      name: /^North jar: steeping, 87% of the extract out, since /,
    })
    await user.click(within(region('Jars')).getByRole('button', { name: 'Show as table' }))
    expect(within(region('Jars')).getAllByRole('row').at(-1)?.textContent).toMatch(/87%$/)
  })
})

const plainSpaces = (text: string) => text.replaceAll('\u00a0', ' ').trim()
