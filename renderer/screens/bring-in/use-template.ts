/** A file to fill in: heads that are found again, and two rows to go by. */
import Papa from 'papaparse'
import { useLanguage, useWords, type Words } from '../../app/words/use-words.ts'
import type { Language } from '../../../shared/language.ts'
import { fieldsOf, type FieldId, type SheetKind } from './fields.ts'

const examples: Readonly<Record<SheetKind, readonly Partial<Record<FieldId, string>>[]>> = {
  bottles: [
    { date: '2021-12-04', count: '6', size: '500', strength: '31', sugar: '160' },
    { date: '2022', count: '9', size: '350', strength: '28', sugar: '190' },
  ],
  stock: [
    { strength: '70', volume: '3', bought: '2026-10-03', price: '54' },
    { mass: '2', bought: '2026-09-12', price: '8' },
  ],
}

export interface Template {
  readonly fileName: string
  readonly text: string
}

export function useTemplate(kind: SheetKind): Template {
  return templateOf(kind, useWords(), useLanguage())
}

/** With the mark by which spreadsheets know the letters, and the separator they expect. */
export function templateOf(kind: SheetKind, t: Words, language: Language): Template {
  const fields = fieldsOf[kind]
  const rows = examples[kind].map((row, at) =>
    fields.map(({ id }) => {
      const isName = id === 'name' || id === 'goods'
      return isName
        ? t(`sheets.template.${kind}.${at === 0 ? 'first' : 'second'}`)
        : (row[id] ?? '')
    }),
  )
  const heads = fields.map(({ id }) => t(`sheets.head.${id}`))
  const text = Papa.unparse([heads, ...rows], { delimiter: language === 'pl' ? ';' : ',' })
  return { fileName: `${t(`sheets.template.${kind}.file`)}.csv`, text: `\ufeff${text}\r\n` }
}
