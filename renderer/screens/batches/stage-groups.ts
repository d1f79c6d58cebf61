/** Stages gathered as a maker looks for them. */
import type { Stage } from '../../../shared/schemas/cellar.ts'

export const stageGroups = ['fruitIn', 'settling', 'resting', 'done', 'notBegun'] as const
export type StageGroup = (typeof stageGroups)[number]

export function stageGroupOf(stage: Stage): StageGroup {
  switch (stage) {
    case 'empty':
      return 'notBegun'
    case 'layered':
    case 'steeping':
    case 'drawnOff':
    case 'sugarDraw':
      return 'fruitIn'
    case 'pressed':
    case 'married':
    case 'filtered':
      return 'settling'
    case 'resting':
      return 'resting'
    case 'finished':
      return 'done'
  }
}
