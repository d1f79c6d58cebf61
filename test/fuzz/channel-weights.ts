/** How often each channel is called: what costs much, or makes all ids unknown, is called rarely. */
import type { Channel } from '../../shared/channels.ts'

/** Processes, threads, solvers, whole books. */
const rare: ReadonlySet<Channel> = new Set<Channel>([
  'season.startPlan',
  'backups.start',
  'backups.look',
  'backups.restore',
  'cellar.openDemo',
  'cellar.removeDemo',
  'exports.start',
  'exports.import',
  // It empties the cellar of what the others need.
  'moves.undo',
])

const often: ReadonlySet<Channel> = new Set<Channel>([
  'moves.record',
  'moves.amend',
  'moves.preview',
  'moves.previewAmend',
  // Where a demo is open by chance, the maker's own book comes back soon.
  'cellar.openOwn',
])

const ordinary = 40

const weightOf = (channel: Channel) =>
  rare.has(channel) ? 4 : often.has(channel) ? 5 * ordinary : ordinary

export function channelFor(channels: readonly Channel[], choice: number): Channel {
  const sum = channels.reduce((total, channel) => total + weightOf(channel), 0)
  let left = choice % sum
  for (const channel of channels) {
    left -= weightOf(channel)
    if (left < 0) return channel
  }
  throw new Error('no channel to choose from')
}
