import { expect, it } from 'vitest'
import {
  dateFormat,
  listFormat,
  numberFormat,
} from '../../../../renderer/parts/formatters/formatters.ts'

it('makes each formatter once, and another one for other options or another locale', () => {
  const tenth = numberFormat('pl', { maximumFractionDigits: 1 })
  expect(numberFormat('pl', { maximumFractionDigits: 1 })).toBe(tenth)
  expect(tenth.format(1.25)).toBe('1,3')
  expect(numberFormat('en-GB', { maximumFractionDigits: 1 }).format(1.25)).toBe('1.3')
  expect(numberFormat('pl', { maximumFractionDigits: 2 }).format(1.25)).toBe('1,25')
  expect(numberFormat('pl').format(1.25)).toBe('1,25')
})

it('does not mix the kinds up', () => {
  expect(listFormat('en-GB').format(['a', 'b'])).toBe('a and b')
  expect(dateFormat('en-GB').format(new Date(2026, 10, 25))).toBe('25/11/2026')
})
