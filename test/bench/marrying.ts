/** How long a marriage takes to work out: twenty lots, by wishes and preference. */
import {
  composeSolution,
  marry,
  waterPart,
  type BlendPart,
  type MarryQuestion,
} from '../../main/engine/index.ts'
import { lpSolver } from '../../main/service/lp-solver.ts'
import { matterOf } from '../../shared/matter.ts'

const cost = { minor: 1000, isComplete: true }
const usual = { isEndless: false, cost } as const
const exactly = (value: number) => ({ low: value, high: value })

const extracts: BlendPart[] = Array.from({ length: 17 }, (_, i) => ({
  ...usual,
  place: `jar:${i}`,
  kind: 'extract',
  unit: 'ml',
  matter: matterOf(
    composeSolution({
      volumeMl: 1000 + 100 * i,
      strengthPctVol: 18 + 2 * i,
      sugarGPerL: (37 * i) % 300,
      acidGPerL: 3 + (i % 9),
    }),
  ),
}))

const pantry: BlendPart[] = [
  {
    ...usual,
    place: 'lot:spirit',
    kind: 'spirit',
    unit: 'ml',
    matter: matterOf(composeSolution({ volumeMl: 3000, strengthPctVol: 96, sugarGPerL: 0 })),
  },
  {
    ...usual,
    place: 'lot:sugar',
    kind: 'sweetener',
    unit: 'g',
    matter: matterOf({ sugarG: 5000 }),
  },
  waterPart(),
]

/** Three of the extracts in whole bottles, as older vintages. */
const withVintages: BlendPart[] = [
  ...extracts.map((part, i): BlendPart =>
    i < 3 ? { ...part, place: `bottles:${i}`, unit: 'bottles', count: 4 } : part,
  ),
  ...pantry,
]

const wishes = {
  strengthPctVol: exactly(30),
  sugarGPerL: exactly(200),
  acidGPerL: exactly(7),
}
const base = { parts: [...extracts, ...pantry], holds: 'composition', amount: 'most' } as const

const questions: readonly (readonly [string, MarryQuestion])[] = [
  ['as much as can be', { ...base, wishes, prefer: 'useUp' }],
  [
    'ten litres, cheapest',
    { ...base, wishes: { ...wishes, volumeMl: exactly(10_000) }, prefer: 'cheapest' },
  ],
  [
    'half-litre bottles, even shares',
    { ...base, wishes: { ...wishes, bottles: [{ sizeMl: 500 }] }, prefer: 'even' },
  ],
  [
    'stronger than any part',
    { ...base, wishes: { ...wishes, strengthPctVol: exactly(97) }, prefer: 'useUp' },
  ],
  [
    'two sizes of bottle, three vintages',
    {
      ...base,
      parts: withVintages,
      wishes: { ...wishes, bottles: [{ sizeMl: 500, count: 12 }, { sizeMl: 200 }] },
      prefer: 'useUp',
    },
  ],
]

export async function run(): Promise<void> {
  const started = performance.now()
  const solve = await lpSolver()
  console.log(
    `loading the solver, once${' '.repeat(20)} ${(performance.now() - started).toFixed(0)} ms`,
  )
  for (const [name, question] of questions) {
    marry(question, solve)
    const times: number[] = []
    for (let i = 0; i < 15; i += 1) {
      const start = performance.now()
      marry(question, solve)
      times.push(performance.now() - start)
    }
    times.sort((a, b) => a - b)
    const [median, worst] = [times[7] ?? 0, times.at(-1) ?? 0]
    console.log(
      `20 lots, ${name.padEnd(36)} ${median.toFixed(1).padStart(6)} ms, at worst ${worst.toFixed(1)} ms`,
    )
  }
}
