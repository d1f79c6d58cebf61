/** What the maker's batches taught of a fruit, quantity by quantity. */
import type { FruitLearned, Learned } from '../../../shared/schemas/fruits.ts'
import type { FactFigure } from './facts.ts'

export const learnedQuantities = ['drainedLPerKg', 'pressedLPerKg', 'yieldLPerKg', 'pace'] as const
export type LearnedQuantity = (typeof learnedQuantities)[number]

export interface LearnedLine {
  readonly quantity: LearnedQuantity
  readonly learned: Learned
  readonly figure: (value: number) => FactFigure
}

const times = (value: number): FactFigure => ({ as: 'number', value, unit: 'times' })
const held = (value: number): FactFigure => ({ as: 'quantity', value, dimension: 'holding' })

export const learnedLines = (learned: FruitLearned | undefined): LearnedLine[] =>
  learnedQuantities.flatMap((quantity) => {
    const found = learned?.[quantity]
    if (!found) return []
    return [{ quantity, learned: found, figure: quantity === 'pace' ? times : held }]
  })
