/** Everything the screens say, in Polish. */
import type { en } from './en.ts'
import { amending } from './pl/amending.ts'
import { batch } from './pl/batch.ts'
import { bench } from './pl/bench.ts'
import { codes } from './pl/codes.ts'
import { compare } from './pl/compare.ts'
import { draft } from './pl/draft.ts'
import { exportWords } from './pl/exports.ts'
import { finder } from './pl/finder.ts'
import { fruits } from './pl/fruits.ts'
import { handbook } from './pl/handbook.ts'
import { labels } from './pl/labels.ts'
import { marry } from './pl/marry.ts'
import { moves } from './pl/moves.ts'
import { parts } from './pl/parts.ts'
import { safekeeping } from './pl/safekeeping.ts'
import { screens } from './pl/screens.ts'
import { season } from './pl/season.ts'
import { sheets } from './pl/sheets.ts'
import { shelf } from './pl/shelf.ts'
import { shell } from './pl/shell.ts'
import { termHelp, terms } from './pl/terms.ts'
import { today } from './pl/today.ts'
import { tour } from './pl/tour.ts'
import { undo } from './pl/undo.ts'
import type { Translated } from './translated.ts'

export { inPolish } from './pl/library.ts'

export const pl = {
  codes,
  parts,
  shell,
  amending,
  batch,
  compare,
  bench,
  draft,
  exports: exportWords,
  finder,
  fruits,
  labels,
  marry,
  moves,
  safekeeping,
  season,
  sheets,
  shelf,
  termHelp,
  terms,
  handbook,
  today,
  tour,
  undo,
  ...screens,
} as const satisfies Translated<typeof en, 'one' | 'few' | 'many' | 'other'>
