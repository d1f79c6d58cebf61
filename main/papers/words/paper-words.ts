/** The words of papers, files and calendars, in the language of the cellar. */
import type { Language } from '../../../shared/language.ts'
import { en, type PaperWords } from './en.ts'
import { pl } from './pl.ts'

export type { PaperWords } from './en.ts'

const spoken: Readonly<Record<Language, PaperWords>> = { en, pl }

/** English until a language was chosen. */
export const paperWords = ({ language = 'en' }: { language?: Language | undefined }): PaperWords =>
  spoken[language]
