/** A host's own words, in the system's language: the cellar's is in the book, which may not open. */
import { languageOf, type Language } from '../../../shared/language.ts'
import { en, type HostWords } from './en.ts'
import { pl } from './pl.ts'

const spoken: Readonly<Record<Language, HostWords>> = { en, pl }

export const hostWords = (language: Language = systemLanguage()): HostWords => spoken[language]

/** Unicode's library asks each system in its own way; on Linux that is LC_ALL, LC_MESSAGES, LANG. */
const systemLanguage = (): Language => languageOf(Intl.DateTimeFormat().resolvedOptions().locale)
