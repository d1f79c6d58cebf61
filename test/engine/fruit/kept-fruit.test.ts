import { describe, expect, it } from 'vitest'
import { keptFruit } from '../../../main/engine/fruit/kept-fruit.ts'
import { fruitLibrary, fruitOf } from '../../../main/engine/index.ts'

const sloe = fruitOf('sloe')

describe('keptFruit', () => {
  it.each([...fruitLibrary.values()])(
    'tells the sources of an unchanged $id as they were',
    (fruit) => {
      expect(keptFruit(fruit, fruit).sources).toEqual(fruit.sources)
    },
  )

  it('names the maker for what was changed, whatever the caller says', () => {
    const changed = {
      ...sloe,
      nameEn: 'Sloe of the lane',
      drainedLPerKg: 0.5,
      composition: { ...sloe.composition, sugarPct: sloe.composition.sugarPct + 1 },
      sources: { ...sloe.sources, sugarPct: 'U:1' },
    }
    const { sources } = keptFruit(changed, sloe)
    expect(sources).toEqual({
      ...sloe.sources,
      drainedLPerKg: 'own',
      'composition.sugarPct': 'own',
    })
  })

  it('drops the source of a fact that was taken out, and has one for a fact put in', () => {
    const { mediterraneanShiftWeeks: _, ...others } = sloe
    const { sources } = keptFruit({ ...others, hazards: [...sloe.hazards, 'Thorns.'] }, sloe)
    expect(sources).not.toHaveProperty('mediterraneanShiftWeeks')
    expect(sources[`hazards.${sloe.hazards.length}`]).toBe('own')
  })

  it('takes a changed range for a changed figure', () => {
    const wider = { typical: sloe.drainedLPerKg, low: 0.1, high: 0.9 }
    expect(keptFruit({ ...sloe, drainedRangeLPerKg: wider }, sloe).sources['drainedLPerKg']).toBe(
      'own',
    )
  })

  it('reads the same fact from keys in any order, and a changed one from a part of it', () => {
    const { typical, low, high } = sloe.steepingWeeks ?? { typical: 0, low: 0, high: 0 }
    const turned = keptFruit({ ...sloe, steepingWeeks: { high, low, typical } }, sloe)
    expect(turned.sources).toEqual(sloe.sources)
    const longer = keptFruit({ ...sloe, steepingWeeks: { high: high + 1, low, typical } }, sloe)
    expect(longer.sources['steepingWeeks']).toBe('own')
  })

  it('asks for no source of a fact that is left undefined, and takes a new press yield for its own', () => {
    const pressed = { ...sloe, pressedLPerKg: sloe.pressedLPerKg + 0.05, pace: undefined } as never
    const { sources } = keptFruit(pressed, sloe)
    expect(sources).not.toHaveProperty('pace')
    expect(sources['pressedLPerKg']).toBe('own')
  })

  it('believes known codes of a fruit with nothing to compare, and no others', () => {
    const { sources } = keptFruit(
      { ...sloe, id: 'wild', sources: { season: 'S3', preparation: 'nonsense' } },
      undefined,
    )
    expect(sources['season']).toBe('S3')
    expect(sources['preparation']).toBe('own')
    expect(sources['composition.waterPct']).toBe('own')
  })
})
