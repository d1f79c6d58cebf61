/** A batch's page as the service tells it: a pour, a doubted reading, one jar in two stages. */
import { matterOf } from '../../../shared/matter.ts'
import type { BatchPage, LedgerStep } from '../../../shared/schemas/cellar.ts'
import type { BatchCurve } from '../../../shared/schemas/steeping.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import type { Answers } from '../fake-bridge.ts'
import { contents, liquid, summary } from '../cellar-fixture.ts'

export const step = (
  move: Move,
  changed: Partial<LedgerStep> = {},
  id = move.kind,
): LedgerStep => ({
  recorded: {
    id,
    seq: 1,
    groupId: `group-${id}`,
    recordedAt: move.at,
    version: 1,
    move,
  },
  transfers: [],
  after: [contents()],
  emptied: [],
  ...changed,
})

export const pour = step(
  {
    kind: 'pourSpirit',
    at: '2026-09-11T08:00:00Z',
    batchId: 'damson',
    jarId: 'north',
    lotId: 'spirit',
    volumeMl: 500,
  },
  {
    transfers: [
      { from: 'lot:spirit', to: 'jar:north', matter: matterOf({ ethanolG: 379, waterG: 24.5 }) },
    ],
  },
)

export const doubted = step(
  {
    kind: 'read',
    at: '2026-10-01T08:00:00Z',
    batchId: 'damson',
    jarId: 'north',
    reading: { instrument: 'alcoholometer', readingPctVol: 14, temperatureC: 20 },
  },
  { interpretation: { strengthPctVol: 14, doubts: ['instrumentMisledBySugar'] } },
)

export const page = (changed: Partial<BatchPage> = {}): BatchPage => ({
  summary: summary(),
  steps: [pour, doubted],
  bands: [
    { stage: 'layered', from: '2026-09-10T08:00:00Z', to: '2026-09-11T08:00:00Z' },
    { stage: 'steeping', from: '2026-09-11T08:00:00Z', to: '2026-11-25T12:00:00Z' },
  ],
  jarSpans: [
    {
      jarId: 'north',
      batchId: 'damson',
      stage: 'layered',
      from: '2026-09-10T08:00:00Z',
      to: '2026-09-11T08:00:00Z',
      isOpen: false,
      contents: contents({ liquid: liquid({ strengthPctVol: 0, sugarGPerL: 640, volumeMl: 300 }) }),
    },
    {
      jarId: 'north',
      batchId: 'damson',
      stage: 'steeping',
      from: '2026-09-11T08:00:00Z',
      to: '2026-11-25T12:00:00Z',
      isOpen: true,
      contents: contents(),
    },
  ],
  yield: {
    fruitG: 1000,
    sugarAddedG: 400,
    ethanolPouredMl: 480,
    ethanolRecoveredFraction: 0.714,
    liquidMl: 1500,
    bottledMl: 0,
  },
  cautions: [],
  ...changed,
})

const sample = (at: string, strengthPctVol: number, sugarGPerL: number) => ({
  at,
  strengthPctVol,
  sugarGPerL,
  acidGPerL: 6,
  volumeMl: 1500,
  ethanolInFruitMl: 90,
})

const points = [
  sample('2026-09-10T12:00:00Z', 0, 640),
  sample('2026-09-11T08:00:00Z', 52, 90),
  sample('2026-10-01T08:00:00Z', 33, 170),
  sample('2026-11-25T12:00:00Z', 32.4, 180),
]

export const curve: BatchCurve = {
  series: [
    { key: 'whole', points },
    { key: 'north', points },
  ],
  now: '2026-11-25T12:00:00Z',
  bands: page().bands,
  readings: [
    {
      moveId: 'read',
      jarId: 'north',
      at: '2026-10-01T08:00:00Z',
      interpretation: { strengthPctVol: 14, doubts: ['instrumentMisledBySugar'] },
      isUsed: false,
      isOutlier: false,
    },
  ],
}

export const noDifferences = { batches: [], jars: [], bottles: [], opened: [], pantry: [] }

export const batchAnswers: Answers = {
  'batches.page': page(),
  'batches.curve': curve,
  'batches.forecast': { jars: [] },
  'moves.preview': ({ moves }) => ({
    refusals: [],
    steps: moves.map((move) =>
      step(move, {
        after: [contents({ liquid: liquid({ strengthPctVol: 41.2, volumeMl: 2000 }) })],
      }),
    ),
    warnings: [],
    breaks: [],
  }),
  'moves.record': { groupId: 'g', moveIds: ['m'], warnings: [] },
  'moves.undo': {
    groupId: 'u',
    undoes: 'g',
    changes: [{ moveId: pour.recorded.id, before: pour.recorded.move, after: null }],
  },
  'moves.amend': {
    groupId: 'g',
    moveIds: ['m'],
    warnings: [],
    changes: [{ moveId: 'm', before: pour.recorded.move, after: pour.recorded.move }],
  },
  'moves.previewAmend': {
    refusals: [],
    steps: [],
    warnings: [],
    breaks: [],
    differences: noDifferences,
  },
  'moves.previewTasks': [],
  'moves.history': [{ version: 1, recordedAt: pour.recorded.recordedAt, move: pour.recorded.move }],
  'jars.add': {},
  'batches.change': page().summary.batch,
}
