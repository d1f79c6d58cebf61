/**
 * The words on screen by key: `t('codes.stage.steeping')`. i18next can type its keys too, but
 * with this many it instantiates two million types; these paths are worked out once and say the same.
 */
import type { Language } from '../../../shared/language.ts'
import { use, useSyncExternalStore } from 'react'
import { numberFormat } from '../../parts/formatters/formatters.ts'
import { SettingsContext } from '../settings-context.ts'
import type { en } from './en.ts'
import { i18n, sayLibraryIn } from './i18n.ts'

type PluralEnding = `_${Intl.LDMLPluralRule}`
type Stem<Key extends string> = Key extends `${infer Word}${PluralEnding}` ? Word : Key

/** Paths to what is a `Leaf` in the words; a list is one leaf and not its lines. */
type Paths<Tree, Leaf> = {
  [Key in keyof Tree & string]: Tree[Key] extends string | readonly string[]
    ? Tree[Key] extends Leaf
      ? Stem<Key>
      : never
    : `${Key}.${Paths<Tree[Key], Leaf>}`
}[keyof Tree & string]

export type WordKey = Paths<typeof en, string>
export type WordListKey = Paths<typeof en, readonly string[]>

type Values = Readonly<Record<string, string | number>>

export type Words = (key: WordKey, values?: Values) => string

type WordLists = (key: WordListKey, values?: Values) => readonly string[]

/** Both kinds of look-up in one language and one way of writing numbers, the same for as long as it is spoken. */
interface Speech {
  readonly words: Words
  readonly lists: WordLists
}

function speechIn(language: Language, digitsAsIn: string): Speech {
  const translate = i18n.getFixedT(language) as unknown as Lookup
  /** A count chooses the form of its word as a number, and stands in it as the locale writes it. */
  const written = (values: Values = {}): Written => ({
    ...values,
    replace: Object.fromEntries(
      Object.entries(values).map(([name, value]) => [
        name,
        typeof value === 'number' ? numberFormat(digitsAsIn).format(value) : value,
      ]),
    ),
  })
  /** Words without values never change, and a screen asks for the same hundred at every movement. */
  const plain = new Map<WordKey, string>()
  return {
    words(key, values) {
      if (values) return withOneStop(translate(key, written(values)))
      const known = plain.get(key)
      if (known !== undefined) return known
      const word = translate(key)
      plain.set(key, word)
      return word
    },
    lists: (key, values = {}) => translate(key, { ...written(values), returnObjects: true }),
  }
}

type Written = Readonly<Record<string, string | number | Values>>

interface Lookup {
  (key: WordKey, values?: Written): string
  (key: WordListKey, how: { returnObjects: true; replace?: Values }): readonly string[]
}

/** An abbreviation at the end, as in "30 % obj.", brings the sentence's full stop with it. */
const withOneStop = (sentence: string): string => sentence.replaceAll(/(?<!\.)\.\.(?!\.)/g, '.')

const speeches = new Map<string, Speech>()

function useSpeech(): Speech {
  const language = useLanguage()
  const { locale } = use(SettingsContext)
  const key = `${language} ${locale}`
  const known = speeches.get(key)
  if (known) return known
  const speech = speechIn(language, locale)
  speeches.set(key, speech)
  return speech
}

function subscribe(listener: () => void): () => void {
  i18n.on('languageChanged', listener)
  return () => i18n.off('languageChanged', listener)
}

/** The language spoken now: who asks is told when it changes. */
export const useLanguage = (): Language =>
  useSyncExternalStore(subscribe, () => i18n.language as Language)

/** Another function in another language, so that what is made of words is made anew. */
export const useWords = (): Words => useSpeech().words

/** Words that are a list, such as the steps of a method. */
export const useWordList = (): WordLists => useSpeech().lists

/** Says what the library says; a maker's own words come back as they are. */
export const useLibraryWords = (): ((text: string) => string) => sayLibraryIn(useLanguage())
