/** What must hold of a book whatever was asked of it. */
import type { Answer } from '../../shared/channels.ts'
import { massOf } from '../../shared/matter.ts'
import type { Asks } from './begun-cellar.ts'

/** The ledger adds up, SQLite finds the file sound, and what is derived is as the moves say. */
export async function mustAddUp(ask: Asks, complain: (told: string) => void): Promise<void> {
  const { missing, ...columns } = (await ask('cellar.balance', {})) as Answer<'cellar.balance'>
  const turnedOverG = Object.values(columns).reduce((sum, each) => sum + Math.abs(massOf(each)), 0)
  const missingG = Math.max(...Object.values(missing).map(Math.abs))
  if (!(missingG <= 1e-3 + 1e-9 * turnedOverG))
    complain(`${missingG} g of ${turnedOverG} g are missing: ${JSON.stringify(missing)}`)
  const checked = (await ask('cellar.check', {})) as Answer<'cellar.check'>
  const { integrity, lotsDiffering, bottleLotsDiffering, refusedMoves } = checked
  if (integrity !== 'ok') complain(integrity)
  if (lotsDiffering.length + bottleLotsDiffering.length + refusedMoves.length > 0)
    complain(JSON.stringify(checked))
}

/** All that the lists tell, to be held against what a program started anew tells. */
export async function stateOf(ask: Asks): Promise<Record<string, string>> {
  const lists = [
    'cellar.balance',
    'cellar.costs',
    'jars.list',
    'pantry.list',
    'bottles.list',
    'shelves.list',
    'batches.list',
    'fruits.list',
    'recipes.list',
    'drafts.list',
    'labels.sheets',
    'season.wishes',
  ] as const
  const told: Record<string, string> = {}
  for (const channel of lists) told[channel] = JSON.stringify(await ask(channel, {}))
  return told
}
