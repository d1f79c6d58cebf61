/** Several hands that write to one book at once: they record, amend, take back, and back up. */
import { randomUUID } from 'node:crypto'
import { setTimeout as pause } from 'node:timers/promises'
import type { Move } from '../../shared/schemas/moves.ts'
import type { Asked } from './acknowledged.ts'
import { HostGone, type Hosted } from './hosted.ts'

export interface Load {
  /** Everything sent so far, in order. */
  readonly asked: Asked[]
  readonly counts: Record<'record' | 'amend' | 'undo' | 'backup', number>
  /** Resolves once every hand has found the host gone. */
  stopped: Promise<void>
}

const at = '2026-09-01T08:00:00Z'

/** Jars and a batch to write about; harmless when they are there already. */
export async function furnish(host: Hosted): Promise<void> {
  const jars = [0, 1, 2, 3].map((index) => ({
    id: `jar${index}`,
    name: `Jar ${index}`,
    shape: 'jar' as const,
    capacityMl: 9_000_000,
    isRetired: false,
  }))
  await host.ask('jars.add', { jars })
  for (const index of [0, 1, 2, 3])
    await host.ask('batches.open', {
      id: `batch${index}`,
      name: `Batch ${index}`,
      colour: '#7a1f3d',
      note: '',
      openedAt: at,
    })
}

export function workUpon(host: Hosted, hands: number, random: () => number): Load {
  const load = {
    asked: [] as Asked[],
    counts: { record: 0, amend: 0, undo: 0, backup: 0 },
  }
  const work = Array.from({ length: hands }, (_, hand) => oneHand(host, { ...load, hand, random }))
  return { ...load, stopped: Promise.all(work).then(() => undefined) }
}

interface AtWork extends Pick<Load, 'asked' | 'counts'> {
  readonly hand: number
  readonly random: () => number
}

async function oneHand(host: Hosted, { asked, counts, hand, random }: AtWork): Promise<void> {
  const batchId = `batch${hand}`
  const jarId = `jar${hand}`
  const water = (): Move => ({ at, kind: 'pourWater', batchId, jarId, volumeMl: 1 + 9 * random() })
  const sent = async (rows: number, send: (key: string) => Promise<unknown>) => {
    const one: Asked = { key: randomUUID(), rows, isAcknowledged: false }
    asked.push(one)
    await send(one.key)
    one.isAcknowledged = true
  }
  try {
    if (hand === 0) {
      counts.backup += 1
      await host.ask('backups.start', { jobId: randomUUID() })
    }
    for (;;) {
      let moveIds: readonly string[] = []
      await sent(3, async (key) => {
        ;({ moveIds } = await host.ask('moves.record', { key, moves: [water(), water(), water()] }))
      })
      counts.record += 1
      const [moveId] = moveIds
      if (moveId === undefined) throw new Error('a record without moves')
      if (random() < 0.5) {
        const amendment = { moveId, fromVersion: 1, move: random() < 0.3 ? null : water() }
        await sent(1, (key) => host.ask('moves.amend', { key, ...amendment }))
        counts.amend += 1
        if (random() < 0.5) {
          // What is taken back is this hand's own amendment: nobody else writes to its batch.
          await sent(1, (key) => host.ask('moves.undo', { key, batchId }))
          counts.undo += 1
        }
      }
      await pause(random() * 3)
    }
  } catch (error) {
    if (!(error instanceof HostGone)) throw error
  }
}
