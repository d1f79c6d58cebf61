/** What is wrong with a quantity, in words, with an example of how it could be written. */
import type { Words } from '../../app/words/use-words.ts'
import type { QuantityProblem } from './parse-quantity.ts'
import type { Quantities } from './use-quantities.ts'
import { usualRange, type Dimension } from './units.ts'

const example: Readonly<Record<Dimension, number>> = {
  volume: 750,
  mass: 1500,
  length: 8,
  strength: 42.5,
  sugar: 180,
  acid: 6.5,
  temperature: 18,
  money: 1250,
  count: 6,
  density: 1045,
  brix: 22.5,
  packing: 0.6,
  holding: 0.4,
}

export function problemWords(
  problem: QuantityProblem,
  dimension: Dimension,
  quantities: Quantities,
  t: Words,
): string {
  const say = (value: number) => quantities.text(value, dimension)
  switch (problem.code) {
    case 'empty':
    case 'notWhole':
      return t(`parts.quantity.problem.${problem.code}`)
    case 'notANumber':
      return t('parts.quantity.problem.notANumber', { example: say(example[dimension]) })
    case 'ambiguous':
      return t('parts.quantity.problem.ambiguous', {
        first: say(problem.readings[0]),
        second: say(problem.readings[1]),
      })
    case 'unknownUnit':
      return t('parts.quantity.problem.unknownUnit', {
        unit: problem.unit,
        known: problem.known.join(', '),
      })
    case 'outOfRange': {
      const { min, max } = problem.range
      const isPositiveOnly = usualRange[dimension].min > 0 && min === usualRange[dimension].min
      return t('parts.quantity.problem.outOfRange', {
        reading: say(problem.value),
        min: say(isPositiveOnly && dimension !== 'density' && dimension !== 'count' ? 0 : min),
        max: say(max),
      })
    }
    case 'askTemperatureUnit':
      return t('parts.quantity.problem.askTemperatureUnit', {
        celsius: `${problem.number}\u00a0°C`,
        fahrenheit: `${problem.number}\u00a0°F`,
      })
  }
}
