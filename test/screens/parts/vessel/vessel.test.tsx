import { screen } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { bottleBrimMl } from '../../../../renderer/parts/vessel/bottle-brim.ts'
import { Vessel } from '../../../../renderer/parts/vessel/vessel.tsx'
import { showPart } from '../../show.tsx'

const height = (name: RegExp) => Number(screen.getByRole('img', { name }).getAttribute('height'))

describe('Vessel', () => {
  it('says in words what it shows', () => {
    showPart(
      <Vessel
        shape="demijohn"
        capacityMl={10_000}
        fillMl={6400}
        liquidMl={5000}
        pulpMl={1200}
        bedMl={200}
        colour="#8e1b2f"
      />,
    )
    expect(screen.getByRole('img').getAttribute('aria-label')?.replaceAll('\u00a0', ' ')).toBe(
      'Demijohn of 10 L, filled to 6.40 L, 5.00 L of free liquid, fruit, undissolved sugar at the bottom',
    )
  })

  it('says that it is empty, or filled above the safe line', () => {
    showPart(
      <>
        <Vessel shape="jar" capacityMl={1000} />
        <Vessel shape="jar" capacityMl={2000} fillMl={1990} liquidMl={1990} colour="#8e1b2f" />
      </>,
    )
    expect(screen.getByRole('img', { name: /Jar of 1.L, empty/ })).toBeTruthy()
    expect(screen.getByRole('img', { name: /above the safe fill line/ })).toBeTruthy()
  })

  it('names a bottle by its size, and does not call a full one overfull', () => {
    showPart(<Vessel shape="bottle" capacityMl={bottleBrimMl(500)} fillMl={500} liquidMl={500} />)
    expect(screen.getByRole('img').getAttribute('aria-label')?.replaceAll('\u00a0', ' ')).toBe(
      'Bottle of 500 ml, filled to 500 ml, 500 ml of free liquid',
    )
  })

  it('draws a litre jar smaller than a demijohn of ten at one scale', () => {
    showPart(
      <>
        <Vessel shape="jar" capacityMl={1000} />
        <Vessel shape="demijohn" capacityMl={10_000} />
      </>,
    )
    expect(height(/Jar/) * 2).toBeLessThan(height(/Demijohn/))
  })

  it('is left out for those who listen when words beside it say the same', () => {
    showPart(<Vessel shape="jar" capacityMl={1000} isDecorative />)
    expect(screen.queryByRole('img')).toBeNull()
  })
})
