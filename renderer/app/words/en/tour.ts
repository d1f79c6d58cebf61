/** Words of the walk round the demo. */
import type { StopId } from '../../tour/stops.ts'

const stop = {
  today: {
    title: 'Today: what wants your hands',
    text: 'Each line is a move that is due, what waiting loses, and where it stands. Press one: the form is filled in, and one more press writes it.',
  },
  batches: {
    title: 'Batches: what is in every jar',
    text: 'Strength, sugar and volume are worked out from what went in and out, through fruit that drinks spirit and gives juice. Open one to see its curve, its log and what comes next.',
  },
  draft: {
    title: 'Draft: before you begin',
    text: 'Say how strong, how sweet and how many bottles; the draft says what fruit, spirit, sugar and water it takes. Started, it becomes a batch and its plan.',
  },
  marry: {
    title: 'Marry: extracts into one liqueur',
    text: 'Choose jars and what you want to come out; the shares and what to add are worked out, with the order to pour in.',
  },
  shelf: {
    title: 'Shelf: bottles that grow old',
    text: 'When each lot is at its best, where it stands, what is running low and what to drink first.',
  },
  season: {
    title: 'Season: next year’s shopping',
    text: 'From what you drink, give away and wish for, back to fruit by week, spirit, sugar and bottles, with the jars you own.',
  },
  bench: {
    title: 'Bench: instruments',
    text: 'A hydrometer lies in a sweet liquid. Here two measurements tell the truth, with how sure it is.',
  },
  safekeeping: {
    title: 'Safekeeping: the book outlives the laptop',
    text: 'Backups are checked the moment they are made. Say once where they should lie, a stick or a synced folder.',
  },
} as const satisfies Record<StopId, { title: string; text: string }>

export const tour = {
  begin: 'Show me round',
  name: 'A walk round',
  stop,
  next: 'Next',
  back: 'Back',
  end: 'Leave the walk',
  done: 'Done',
  count: '{{at}} of {{count}}',
} as const
