/** The trade's terms and our own, each in a few sentences: beside where they stand, and in the handbook. */
import type { TermId } from '../../../parts/term/terms.ts'

export const terms = {
  strength: {
    name: 'Strength, % vol',
    text: 'How much of the volume is pure alcohol, at 20 °C. A litre of 30 % vol would hold 300 ml of alcohol, were it taken out and measured alone.',
  },
  apparent: {
    name: 'Apparent strength',
    text: 'What an alcoholometer shows in a sweet liquid. Sugar lifts the float, so it shows far too little: 40 % vol with a little sugar may show 37, a liqueur nothing at all.',
  },
  proof: {
    name: 'Proof',
    text: 'American proof is twice the strength by volume, counted at 60 °F instead of 20 °C.',
  },
  contraction: {
    name: 'Shrinking on mixing',
    text: 'Spirit and water together take up less room than apart: half a litre of each makes 965 ml. That is why volumes alone do not add up, and weights do.',
  },
  sugar: {
    name: 'Sugar, g/L',
    text: 'Grams of all sugars in a litre of the finished liquid: what was added and what the fruit brought.',
  },
  brix: {
    name: 'Degrees Brix, °Bx',
    text: 'Grams of sugar in 100 g of syrup. A refractometer marked in °Bx is right in juice and syrup; in a liqueur the alcohol counts as well, and it shows far more.',
  },
  density: {
    name: 'Density',
    text: 'The mass of a volume, in kilograms in a cubic metre, or grams in a litre. Spirit is lighter than water, sugar makes it heavier: a liqueur can have the density of water.',
  },
  acid: {
    name: 'Acid, g/L',
    text: 'Fruit acids in a litre, as citric acid without its water. They balance sweetness: 200 g/L of sugar tastes cloying with little acid and lively with enough.',
  },
  steeping: {
    name: 'Steeping',
    text: 'Fruit lies in spirit: alcohol goes into the fruit while juice, colour and aroma come out, until both are alike. Cut fruit takes days, whole fruit with a waxy skin many weeks.',
  },
  held: {
    name: 'Held by the fruit',
    text: 'Liquid inside the fruit and clinging to it. It has the strength of the jar but does not pour off: sugar or pressing brings some of it out.',
  },
  bed: {
    name: 'Sugar at the bottom',
    text: 'Sugar that has not dissolved yet. Strong spirit dissolves little of it; turning the jar helps.',
  },
  drawOff: {
    name: 'Draw off',
    text: 'Pour the liquid off the fruit. What comes is the first extract, the finest part.',
  },
  sugarDraw: {
    name: 'Sugar draw',
    text: 'Drained fruit, often crushed, is covered with sugar, which dissolves in the spirit the fruit still holds. The syrup poured off after some days is the draw; it may be done again.',
  },
  press: {
    name: 'Press',
    text: 'Squeeze the fruit by hand or in a press for the last of what it holds. It comes cloudy, and needs more filtering.',
  },
  marry: {
    name: 'Marry',
    text: 'Pour extracts together in chosen shares, so that every bottle is the same.',
  },
  rack: {
    name: 'Rack',
    text: 'Pour or siphon a liquid that has settled off what lies at the bottom.',
  },
  lees: {
    name: 'Lees',
    text: 'What settles at the bottom while a liquid clears. About three parts in a hundred are lost with them at each racking.',
  },
  delle: {
    name: 'Delle number',
    text: 'A tenth of the sugar in g/L, plus four and a half times the strength in % vol. Below 75 yeast may start to ferment the liquid; above 85 it keeps.',
  },
  window: {
    name: 'Window',
    text: 'From when on a liqueur has come together until it begins to fade, by its fruit, strength, sugar, warmth and light, and by your own tastings.',
  },
  band: {
    name: 'Band',
    text: 'What lies between a low and a high value: nine times in ten the true one is inside. A wide band means that little is known yet.',
  },
  yield: {
    name: 'Yield',
    text: 'Litres of finished liqueur from a kilogram of fruit. It begins with what is usual for the fruit and moves to your own with every batch you finish.',
  },
  lot: {
    name: 'Lot',
    text: 'Bottles filled together from the same liquid, or goods bought together.',
  },
  vintage: {
    name: 'Vintage',
    text: 'The year in which the first fruit of the liqueur was put in.',
  },
  opened: {
    name: 'Opened bottle',
    text: 'An uncorked bottle meets air: aroma goes first. It is best drunk within a few months, the weaker the sooner.',
  },
  lineage: {
    name: 'Lineage',
    text: 'Where everything in a bottle came from, through every jar, and where everything that was bought has gone.',
  },
  halfTime: {
    name: 'Half-time',
    text: 'The days in which half of what is still to come out of the fruit does so. After four of them some 94 parts in a hundred are out.',
  },
  learned: {
    name: 'Learned',
    text: 'Worked out from your own batches, and mixed with the usual value as long as they are few.',
  },
  gap: {
    name: 'Gap of a plan',
    text: 'How far the plan may at most be from the best there is. Nothing means it is proven best.',
  },
} as const satisfies Record<TermId, { name: string; text: string }>

/** Round the explanation of a term. */
export const termHelp = {
  ask: 'What is this? {{name}}',
  more: 'All terms in the handbook',
} as const
