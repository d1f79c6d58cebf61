/** Which language the window speaks: a value of its own, for those who are below the words. */
import type { Language } from '../../../shared/language.ts'

let language: Language = 'en'

export const spokenLanguage = (): Language => language

export function setSpokenLanguage(next: Language): void {
  language = next
}
