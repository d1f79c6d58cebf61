/** Words of the shared parts: fields, vessels, times, failures. */
import type { QuantityProblemCode } from '../../../parts/quantity/parse-quantity.ts'

const quantityProblem = {
  empty: 'Fill this in.',
  notANumber: 'Not a number. Write it like {{example}}.',
  ambiguous: 'This can be {{first}} or {{second}}. Write the one you mean.',
  unknownUnit: '“{{unit}}” is not a unit for this. Known here: {{known}}.',
  outOfRange: '{{reading}} is out of range: {{min}} to {{max}}.',
  notWhole: 'Whole numbers only.',
  askTemperatureUnit: '°C or °F? Write the unit: {{celsius}} or {{fahrenheit}}.',
} as const satisfies Record<QuantityProblemCode, string>

export const parts = {
  loading: 'Reading the book…',
  tryAgain: 'Try again',
  showMore_one: 'Show {{count}} more',
  showMore_other: 'Show {{count}} more',
  reload: 'Open again',
  close: 'Close',
  any: 'any',
  cancel: 'Cancel',
  optional: 'optional',
  quantity: {
    reading: '= {{reading}}',
    problem: quantityProblem,
    strength: 'Strength',
    sugar: 'Sugar',
  },
  bottles_one: '{{count}} bottle',
  bottles_other: '{{count}} bottles',
  time: {
    useNow: 'Now',
    problem: { notATime: 'Not a date and time.', inTheFuture: 'That has not come yet.' },
  },
  vessel: {
    empty: '{{kind}} of {{capacity}}, empty',
    filled: '{{kind}} of {{capacity}}, filled to {{fill}}',
    liquid: '{{liquid}} of free liquid',
    fruit: 'fruit',
    bed: 'undissolved sugar at the bottom',
    overfull: 'above the safe fill line',
    bottle: 'Bottle',
  },
  place: {
    theJar: 'the jar',
    thePantryLot: 'the pantry lot',
    theBottles: 'the bottles',
    theOpened: 'the opened bottle',
    theShelf: 'a place on the shelf',
    noShelf: 'no place',
    theOutside: 'the outside',
    jar: 'the jar “{{name}}”',
    pantry: '{{name}} in the pantry',
    bottle: 'the bottles of {{name}}',
  },
  goods: { spirit: 'Spirit {{strength}}', sugar: 'Sugar', honey: 'Honey', acid: 'Citric acid' },
  cost: { atLeast: 'at least {{cost}}', unknown: 'no price' },
  batchUnknown: 'another batch',
  kindUnknown: 'another kind',
} as const
