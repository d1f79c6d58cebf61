import { describe, expect, it } from 'vitest'
import { spread } from '../../../renderer/charts/spread.ts'

const plot = { from: 0, to: 100 }

describe('spread', () => {
  it('leaves labels that have room where they are', () => {
    expect(spread([10, 50, 90], 18, plot)).toEqual([10, 50, 90])
  })

  it('moves three that stand on one another 18 px apart, in their order', () => {
    expect(spread([50, 49, 51], 18, plot)).toEqual([67, 49, 85])
  })

  it('keeps them inside the plot', () => {
    expect(spread([99, 100, 98], 18, plot)).toEqual([82, 100, 64])
  })
})
