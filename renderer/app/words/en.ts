/** Everything the screens say, in English. Amounts, dates and names come in already formatted. */
import { amending } from './en/amending.ts'
import { batch } from './en/batch.ts'
import { bench } from './en/bench.ts'
import { codes } from './en/codes.ts'
import { compare } from './en/compare.ts'
import { draft } from './en/draft.ts'
import { exportWords } from './en/exports.ts'
import { finder } from './en/finder.ts'
import { fruits } from './en/fruits.ts'
import { handbook } from './en/handbook.ts'
import { labels } from './en/labels.ts'
import { marry } from './en/marry.ts'
import { moves } from './en/moves.ts'
import { parts } from './en/parts.ts'
import { safekeeping } from './en/safekeeping.ts'
import { screens } from './en/screens.ts'
import { season } from './en/season.ts'
import { sheets } from './en/sheets.ts'
import { shelf } from './en/shelf.ts'
import { shell } from './en/shell.ts'
import { termHelp, terms } from './en/terms.ts'
import { today } from './en/today.ts'
import { tour } from './en/tour.ts'
import { undo } from './en/undo.ts'

export const en = {
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
  handbook,
  labels,
  marry,
  moves,
  safekeeping,
  season,
  sheets,
  shelf,
  termHelp,
  terms,
  today,
  tour,
  undo,
  ...screens,
} as const
