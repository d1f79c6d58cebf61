import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { i18n, speak } from '../../../../renderer/app/words/i18n.ts'
import { en } from '../../../../renderer/app/words/en.ts'
import { pl } from '../../../../renderer/app/words/pl.ts'
import {
  dateFormat,
  listFormat,
  monthPhrase,
  numberFormat,
} from '../../../../renderer/parts/formatters/formatters.ts'
import { asker, gapsIn, isPlural, leavesOf, sourcesUnder, stemOf } from './word-keys.ts'

const renderer = join(import.meta.dirname, '../../../../renderer')
const english = leavesOf(en)
const polish = leavesOf(pl)
const polishForms = ['one', 'few', 'many', 'other']

describe('the words of the screens', () => {
  it('are all asked for by some screen', () => {
    const asks = asker(sourcesUnder(renderer))
    const unused = [...new Set([...english.keys()].map(stemOf))].filter((stem) => !asks(stem))
    expect(unused).toEqual([])
  })

  it('finds a word that nobody asks for, and not one of a family', () => {
    const asks = asker(["t('shell.name') + t(`codes.stage.${stage}`)", "'shell.names'"])
    expect(asks('shell.name')).toBe(true)
    expect(asks('codes.stage.pressed')).toBe(true)
    expect(asks('codes.stages.pressed')).toBe(false)
    expect(asks('shell')).toBe(false)
  })

  it('are all there in Polish, in each of its plurals, and no others', () => {
    const wanted = [...english.keys()].flatMap((key) =>
      isPlural(key) ? polishForms.map((form) => `${stemOf(key)}_${form}`) : [key],
    )
    expect([...polish.keys()].toSorted()).toEqual([...new Set(wanted)].toSorted())
  })

  it('leave the same gaps to fill in both languages', () => {
    const gaps = (words: ReadonlyMap<string, string>) => {
      const byStem = new Map<string, string>()
      for (const [key, word] of words)
        // Of one, people may say "one thing" instead of the number.
        if (!key.endsWith('_one')) byStem.set(stemOf(key), gapsIn(word).join(' '))
      return Object.fromEntries([...byStem].toSorted())
    }
    expect(gaps(polish)).toEqual(gaps(english))
  })

  it('are translated: what is alike in both is a name, a symbol or a gap', () => {
    const isWord = (word: string) => /\p{L}{4}/u.test(word.replaceAll(/\{\{\w+\}\}/g, ''))
    const alike = [...english].filter(([key, word]) => isWord(word) && polish.get(key) === word)
    expect([...new Set(alike.map(([, word]) => word))].toSorted()).toEqual(sameInBoth)
  })
})

/** Looked at one by one. */
const sameInBoth = [
  'Letter',
  'Plan',
  'Proof',
  'Ratafia',
  'Ratafia {{version}}, {{host}}',
  'Unicode (UTF-16)',
  'Unicode (UTF-16, big-endian)',
  'Unicode (UTF-8)',
]

describe('speak', () => {
  it('counts in Polish as Polish does, and says what it has no word for in English', async () => {
    await speak('pl')
    const t = i18n.t as (key: string, values: object) => string
    const bottles = (count: number) => t('parts.bottles', { count })
    expect([0, 1, 2, 4, 5, 12, 21, 22, 25, 102, 112].map(bottles)).toEqual([
      '0 butelek',
      '1 butelka',
      '2 butelki',
      '4 butelki',
      '5 butelek',
      '12 butelek',
      '21 butelek',
      '22 butelki',
      '25 butelek',
      '102 butelki',
      '112 butelek',
    ])
    expect(document.documentElement.lang).toBe('pl')
    await speak('en')
    expect(bottles(1)).toBe('1 bottle')
    expect(document.documentElement.lang).toBe('en')
  })

  it('names months and joins lists in its language, and writes numbers as the locale does', async () => {
    const day = new Date('2026-11-05T12:00:00Z')
    const told = () => [
      dateFormat('en-GB', { day: 'numeric', month: 'long' }).format(day),
      listFormat('en-GB').format(['A', 'B']),
      numberFormat('en-GB').format(1234.5),
    ]
    expect(told()).toEqual(['5 November', 'A and B', '1,234.5'])
    await speak('pl')
    expect(told()).toEqual(['5 listopada', 'A i B', '1,234.5'])
    await speak('en')
  })

  it('bends a month after a preposition where its language does', async () => {
    const day = new Date(2030, 4, 6)
    const told = () => [
      monthPhrase('en-GB', { month: 'short', year: 'numeric' })(day),
      monthPhrase('en-GB', { month: 'long' })(day),
    ]
    expect(told()).toEqual(['May 2030', 'May'])
    await speak('pl')
    expect(told()).toEqual(['maja\u00a02030', 'maja'])
    await speak('en')
  })

  it('stays in the language asked for last', async () => {
    await Promise.all([speak('pl'), speak('en')])
    expect(i18n.language).toBe('en')
  })
})
