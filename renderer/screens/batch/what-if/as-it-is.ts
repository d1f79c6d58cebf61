/** How the batch is handled as it is: what a question about it departs from. */
import type { LedgerStep } from '../../../../shared/schemas/cellar.ts'
import { usualTemperatureC } from '../../../../shared/usual-keeping.ts'

/** As its moves last said. */
export function keptTemperatureC(steps: readonly LedgerStep[]): number {
  const said = steps
    .flatMap(({ recorded: { move } }) => (move.kind === 'keep' ? [move] : []))
    .filter(({ temperatureC }) => temperatureC !== undefined)
    .sort((a, b) => a.at.localeCompare(b.at))
  return said.at(-1)?.temperatureC ?? usualTemperatureC
}

/** When liquid was first drawn off the fruit; undefined while it all stands on it. */
export const firstDrawAt = (steps: readonly LedgerStep[]): string | undefined =>
  steps
    .flatMap(({ recorded: { move } }) => (move.kind === 'drawOff' ? [move.at] : []))
    .sort()
    .at(0)
