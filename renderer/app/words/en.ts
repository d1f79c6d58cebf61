/** Everything the screens say, in English. Amounts, dates and names come in already formatted. */
import { batch } from './en/batch.ts'
import { bench } from './en/bench.ts'
import { codes } from './en/codes.ts'
import { fruits } from './en/fruits.ts'
import { parts } from './en/parts.ts'
import { screens } from './en/screens.ts'
import { shell } from './en/shell.ts'

export const en = { codes, parts, shell, batch, bench, fruits, ...screens } as const
