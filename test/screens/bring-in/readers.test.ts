/** From a maker's file to typed rows: what is read, what is asked, what is refused, and hostile files. */
import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import {
  guessedPlan,
  questionOf,
  cellsOf,
  type Measures,
  type SheetPlan,
} from '../../../renderer/screens/bring-in/columns.ts'
import { fieldsOf, type SheetKind } from '../../../renderer/screens/bring-in/fields.ts'
import {
  asksDecimalMark,
  guessedDecimalMark,
  readAmount,
} from '../../../renderer/screens/bring-in/read-amount.ts'
import { guessedOrder, readDate } from '../../../renderer/screens/bring-in/read-date.ts'
import { cellKey, readRows } from '../../../renderer/screens/bring-in/read-rows.ts'
import {
  delimiters,
  maxFileBytes,
  readSheetFile,
  type FileChoices,
  type SheetTable,
} from '../../../renderer/screens/bring-in/sheet-file.ts'
import { templateOf } from '../../../renderer/screens/bring-in/use-template.ts'
import { i18n, speak } from '../../../renderer/app/words/i18n.ts'
import type { Words } from '../../../renderer/app/words/use-words.ts'
import type { Language } from '../../../shared/language.ts'
import { cellar } from '../cellar-fixture.ts'

const now = new Date(2026, 10, 20, 18)
const measures: Measures = {
  units: 'metric',
  temperature: 'celsius',
  strength: 'pctVol',
  currency: 'EUR',
  language: 'en',
}
const utf8 = (text: string) => new TextEncoder().encode(text)
const read = (bytes: Uint8Array, choices: FileChoices = {}, language = 'en') =>
  readSheetFile(bytes, choices, language)
const tableOf = (text: string, choices: FileChoices = {}) => {
  const reading = read(utf8(text), choices)
  if (!reading.ok) throw new Error(reading.problem.code)
  return reading.table
}
const problemOf = (bytes: Uint8Array, choices: FileChoices = {}) => {
  const reading = read(bytes, choices)
  return reading.ok ? undefined : reading.problem
}
const fruits = (cellar['fruits.list'] ?? []) as Extract<
  (typeof cellar)['fruits.list'],
  readonly unknown[]
>

const rowsOf = (text: string, plan?: SheetPlan, mended?: Map<string, string>, kind?: SheetKind) =>
  rowsOfTable(tableOf(text), plan, mended, kind)

function rowsOfTable(
  table: SheetTable,
  plan?: SheetPlan,
  mended = new Map<string, string>(),
  kind: SheetKind = 'bottles',
) {
  return readRows(table.rows, {
    kind,
    plan: plan ?? guessedPlan(kind, table, measures),
    mended,
    measures,
    fruits,
    shelves: [
      { id: 'cold', name: 'Zimna półka', temperatureC: 12, light: 'dark', isRetired: false },
    ],
    colourOf: () => '#b07a35',
    now,
  })
}

describe('a file', () => {
  it.each([
    ['utf-8', utf8('nazwa;owoc\nŚliwka;wiśnia\n')],
    ['utf-8', utf8('\ufeffnazwa;owoc\nŚliwka;wiśnia\n')],
    ['utf-16le', Uint8Array.from(Buffer.from('\ufeffnazwa;owoc\nŚliwka;wiśnia\n', 'utf16le'))],
    [
      'utf-16be',
      Uint8Array.from(Buffer.from('\ufeffnazwa;owoc\nŚliwka;wiśnia\n', 'utf16le').swap16()),
    ],
  ] as const)('is read as %s', (encoding, bytes) => {
    const reading = read(bytes)
    expect(reading).toMatchObject({
      ok: true,
      table: { encoding, delimiter: ';', heads: ['nazwa', 'owoc'] },
    })
    expect(reading.ok && reading.table.rows).toEqual([{ line: 2, cells: ['Śliwka', 'wiśnia'] }])
  })

  it('in the letters of Windows is guessed by the language, and chosen by the maker', () => {
    const bytes = Uint8Array.from([...utf8('nazwa;x\n'), 0x8c, ...utf8('liwka;1\n')])
    expect(read(bytes, {}, 'pl')).toMatchObject({ table: { rows: [{ cells: ['Śliwka', '1'] }] } })
    expect(read(bytes, { encoding: 'windows-1252' }, 'pl')).toMatchObject({
      table: { rows: [{ cells: ['Œliwka', '1'] }] },
    })
    expect(problemOf(bytes, { encoding: 'utf-8' })).toEqual({ code: 'otherLetters' })
  })

  it('comes back as it was, whatever separates its columns', () => {
    const cell = fc
      .string({ unit: 'grapheme', maxLength: 20 })
      .map((text) =>
        text
          .trim()
          .replace(/^'(?=[=+\-@])/, '')
          .replaceAll('\0', ''),
      )
      .filter((text) => text === text.trim() && !/^'[=+\-@]/.test(text) && !/[\ufeff\r]/.test(text))
    const sheet = fc.integer({ min: 2, max: 6 }).chain((width) =>
      fc.array(fc.array(cell, { minLength: width, maxLength: width }), {
        minLength: 1,
        maxLength: 8,
      }),
    )
    fc.assert(
      fc.property(sheet, fc.constantFrom(...delimiters), (rows, delimiter) => {
        const heads = (rows[0] ?? []).map((_, at) => `h${at}`)
        const text = Papa.unparse([heads, ...rows], { delimiter, quotes: true, newline: '\n' })
        const reading = read(utf8(text), { delimiter, hasHeads: true, encoding: 'utf-8' })
        const full = rows.filter((cells) => cells.some((one) => one !== ''))
        fc.pre(full.length > 0)
        expect(reading.ok && reading.table.rows.map(({ cells }) => cells)).toEqual(full)
      }),
      { numRuns: 300 },
    )
  })

  it('numbers its rows as a spreadsheet does, with empty ones and long cells between', () => {
    const table = tableOf('name,note\n\n"a","two\nlines"\n,\nb,c\n')
    expect(table.rows.map(({ line }) => line)).toEqual([3, 5])
  })

  it('has heads only where the first row has no number', () => {
    expect(tableOf('Sloe,6,500\nQuince,9,350\n')).toMatchObject({
      hasHeads: false,
      heads: ['', '', ''],
    })
    expect(tableOf('Sloe,6\n', { hasHeads: false }).rows).toHaveLength(1)
  })

  it('takes what looks like a formula for text', () => {
    const [row] = rowsOf(
      'Name,Date,Bottles,Size (ml),Strength,Sugar\n=HYPERLINK("x"),2021,6,500,31,160\n',
    )
    expect(row?.row).toMatchObject({ name: '=HYPERLINK("x")' })
    expect(tableOf("name,n\n'=1+1,@x\n").rows[0]?.cells).toEqual(['=1+1', '@x'])
  })
})

describe('a hostile file', () => {
  it.each([
    ['of a spreadsheet', Uint8Array.from([0x50, 0x4b, 3, 4, 0, 0]), { code: 'aSpreadsheet' }],
    ['of an old spreadsheet', Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0]), { code: 'aSpreadsheet' }],
    ['with NUL in it', utf8('name,x\na\0b,1\n'), { code: 'notText' }],
    [
      'of random bytes',
      Uint8Array.from({ length: 900 }, (_, at) => (at * 37) % 256),
      { code: 'notText' },
    ],
    ['that is empty', utf8(''), { code: 'noRows' }],
    ['of heads alone', utf8('name,count\n'), { code: 'noRows' }],
    ['that never closes a quote', utf8('name,x\na,1\n"b,2\nc,3\n'), { code: 'openQuote', line: 3 }],
    ['of too many bytes', new Uint8Array(maxFileBytes + 1), { code: 'tooLarge' }],
    [
      'of too many rows',
      utf8(`name,x\n${'a,1\n'.repeat(5001)}`),
      { code: 'tooManyRows', count: 5001 },
    ],
    ['of too many columns', utf8(`${'h,'.repeat(100)}h\n`), { code: 'tooManyColumns', count: 101 }],
  ] as const)('%s is refused', (_, bytes, problem) => {
    expect(problemOf(bytes)).toEqual(problem)
  })

  it('with a cell of a million letters or digits is read, and the cell refused', () => {
    for (const long of ['x'.repeat(1_000_000), '9'.repeat(1_000_000), '1 '.repeat(500_000)]) {
      const [row] = rowsOf(
        `Name,Date,Bottles,Size (ml),Strength,Sugar\n${long},${long},${long},${long},31,160\n`,
      )
      expect(row?.row).toBeUndefined()
      expect(row?.problems.map(({ field }) => field)).toEqual(['name', 'date', 'count', 'size'])
    }
  })

  it('never throws, whatever its bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        const reading = read(bytes)
        if (!reading.ok) return true
        const columns = reading.table.heads.map((_, at) => ({ field: fieldsOf.bottles[at]?.id }))
        expect(rowsOfTable(reading.table, { columns, same: {} })).toHaveLength(
          reading.table.rows.length,
        )
        return true
      }),
      { numRuns: 300 },
    )
  })
})

describe('a date', () => {
  const day = (text: string, order?: 'dmy' | 'mdy') => {
    const reading = readDate(text, order, now)
    if (!reading.ok) return reading.code
    const date = new Date(reading.at)
    return `${date.getFullYear()}-${date.getMonth() + 1}-${date.getDate()}`
  }
  it.each([
    ['2021-12-04', '2021-12-4'],
    ['2021/12/04', '2021-12-4'],
    ['2021-12-04T18:30', '2021-12-4'],
    ['4.12.2021', '2021-12-4'],
    ['04.12.21', '2021-12-4'],
    ['4.12.98', '1998-12-4'],
    ['24/12/2021', '2021-12-24'],
    ['12/24/2021', '2021-12-24'],
    ['5/5/2021', '2021-5-5'],
    ['2019', '2019-7-1'],
    ['2026', '2026-7-1'],
    ['44534', '2021-12-4'],
    ['44534.5', '2021-12-4'],
    ['20.11.2026', '2026-11-20'],
    ['4/12/2021', 'ambiguousDate'],
    ['30.02.2021', 'noSuchDay'],
    ['13.13.2021', 'noSuchDay'],
    ['0.1.2021', 'noSuchDay'],
    ['21.11.2026', 'future'],
    ['2027', 'future'],
    ['1.1.1850', 'noSuchDay'],
    ['in autumn', 'notADate'],
    ['123', 'notADate'],
  ])('%s is %s', (text, told) => expect(day(text)).toBe(told))

  it('follows the order of its column, which other cells may tell', () => {
    expect(day('4/12/2021', 'dmy')).toBe('2021-12-4')
    expect(day('4/12/2021', 'mdy')).toBe('2021-4-12')
    expect(day('12/24/2021', 'dmy')).toBe('noSuchDay')
    expect(guessedOrder(['4/12/2021', '24/12/2021'])).toBe('dmy')
    expect(guessedOrder(['4/12/2021', '12/24/2021'])).toBe('mdy')
    expect(guessedOrder(['4/12/2021'])).toBeUndefined()
    expect(guessedOrder(['24/12/2021', '12/24/2021'])).toBeUndefined()
  })

  it('of the current year alone never lies ahead', () => {
    expect(readDate('2026', undefined, new Date(2026, 2, 1))).toEqual({
      ok: true,
      at: new Date(2026, 0, 1).toISOString(),
    })
  })
})

describe('an amount', () => {
  const volume = { ...measures, dimension: 'volume', unit: 'ml' } as const
  const value = (text: string, context: Parameters<typeof readAmount>[1]) => {
    const reading = readAmount(text, context)
    return reading.ok ? reading.value : reading.problem.code
  }
  it.each([
    ['500', 500],
    ['0,5 l', 500],
    ['0.5 L', 500],
    ['70 cl', 700],
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['1 500', 1500],
    ['1,500', 'ambiguous'],
    ['1.500', 'ambiguous'],
    ['-5', 'outOfRange'],
    ['much', 'notANumber'],
    ['5 barrels', 'unknownUnit'],
  ])('%s is %s', (text, told) => expect(value(text, volume)).toBe(told))

  it('follows the unit and the mark of its column; a unit in the cell wins', () => {
    expect(value('1,500', { ...volume, decimalMark: 'comma' })).toBe(1.5)
    expect(value('1,500', { ...volume, decimalMark: 'point' })).toBe(1500)
    expect(value('0.75', { ...volume, unit: 'L' })).toBe(750)
    expect(value('750 ml', { ...volume, unit: 'L' })).toBe(750)
    expect(value('12', { ...volume, unit: 'flOz' })).toBeCloseTo(354.88, 2)
    const strength = { ...measures, dimension: 'strength' } as const
    expect(value('80', { ...strength, unit: 'proof' })).toBe(40)
    expect(value('40 %', { ...strength, unit: 'proof' })).toBe(40)
    expect(value('6 szt.', { ...measures, dimension: 'count' })).toBe(6)
    expect(value('6.5', { ...measures, dimension: 'count' })).toBe('notWhole')
  })

  it('asks for the mark only where cells would differ, and other cells do not tell', () => {
    expect(asksDecimalMark(['1,5', '500', '0.7'], volume)).toBe(false)
    expect(asksDecimalMark(['1,500'], volume)).toBe(true)
    expect(guessedDecimalMark(['1,500', '0,7'])).toBe('comma')
    expect(guessedDecimalMark(['1,500', '0.7'])).toBe('point')
    expect(guessedDecimalMark(['1,500'])).toBeUndefined()
    expect(guessedDecimalMark(['0,7', '0.7'])).toBeUndefined()
  })

  it('written with either mark comes back the same', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9_999_999 }),
        fc.constantFrom('comma' as const, 'point' as const),
        fc.boolean(),
        (hundredths, decimalMark, isGrouped) => {
          const text = (hundredths / 100).toLocaleString(
            decimalMark === 'comma' ? 'de-DE' : 'en-US',
            { minimumFractionDigits: 2, useGrouping: isGrouped },
          )
          expect(value(text, { ...volume, decimalMark })).toBeCloseTo(hundredths / 100, 6)
        },
      ),
    )
  })
})

describe('columns', () => {
  const plan = (text: string) => guessedPlan('bottles', tableOf(text), measures).columns

  it('are known by their heads in English and in Polish', () => {
    expect(
      plan(
        'Nr;Nazwa;Owoce;Data rozlewu;Ile sztuk;Pojemność [l];Moc %;Cukier g/l;Półka;Uwagi\n1;a\n',
      ).map(({ field }) => field),
    ).toEqual([
      undefined,
      'name',
      'fruits',
      'date',
      'count',
      'size',
      'strength',
      'sugar',
      'shelf',
      'note',
    ])
    expect(
      plan(
        'Batch name,Made of,Bottled on,How many,Bottle size,ABV,Sweetness,Place,Remarks\na,b\n',
      ).map(({ field }) => field),
    ).toEqual(['name', 'fruits', 'date', 'count', 'size', 'strength', 'sugar', 'shelf', 'note'])
  })

  it('have the unit of their head, or the one that makes bottles of their numbers', () => {
    const unitOf = (head: string, cell: string) => plan(`Name,${head}\na,${cell}\n`)[1]?.unit
    expect(unitOf('Size (cl)', '70')).toBe('cl')
    expect(unitOf('Size', '0.5')).toBe('L')
    expect(unitOf('Size', '50')).toBe('cl')
    expect(unitOf('Size', '500')).toBe('ml')
    expect(unitOf('Strength (proof)', '80')).toBe('proof')
  })

  it('ask what can be read two ways', () => {
    const table = tableOf('Name;Bottled;Size (ml)\na;4/12/2021;1,500\n')
    const [, dates, sizes] = guessedPlan('bottles', table, measures).columns
    const ask = (id: string, column: object, at: number) =>
      questionOf(
        fieldsOf.bottles.find((one) => one.id === id)!,
        column,
        cellsOf(table, at),
        measures,
      )
    expect(ask('date', dates!, 1)).toEqual({ asks: 'dateOrder', isOpen: true })
    expect(ask('date', { ...dates, dateOrder: 'dmy' }, 1)).toEqual({
      asks: 'dateOrder',
      isOpen: false,
    })
    expect(ask('size', sizes!, 2)).toEqual({ asks: 'decimalMark', isOpen: true })
  })
})

describe('rows', () => {
  const heads = 'Name;Fruit;Bottled;Bottles;Size (ml);Strength;Sugar;Shelf;Note\n'

  it('become what the book takes', () => {
    expect(
      rowsOf(`${heads}Damson 2021;damson;4.12.2021;6;500;31,5;160;zimna polka;from the lane\n`)[0],
    ).toMatchObject({
      line: 2,
      problems: [],
      row: {
        name: 'Damson 2021',
        fruitIds: ['damson'],
        bottledAt: new Date(2021, 11, 4, 12).toISOString(),
        count: 6,
        bottleSizeMl: 500,
        strengthPctVol: 31.5,
        sugarGPerL: 160,
        shelfId: 'cold',
        note: 'from the lane',
      },
    })
  })

  it('say which cell is wrong and why', () => {
    const [row] = rowsOf(`${heads};moonberry;32.12.2021;half;500;310;;attic;\n`)
    expect(row?.row).toBeUndefined()
    expect(row?.problems).toMatchObject([
      { field: 'name', problem: { code: 'missing' } },
      { field: 'fruits', problem: { code: 'noFruit', name: 'moonberry' } },
      { field: 'date', problem: { code: 'noSuchDay' } },
      { field: 'count', problem: { problem: { code: 'notANumber' } } },
      { field: 'strength', problem: { problem: { code: 'outOfRange' } } },
      { field: 'sugar', problem: { code: 'missing' } },
      { field: 'shelf', problem: { code: 'noShelf', name: 'attic' } },
    ])
  })

  it('take what is the same for all, and what was mended', () => {
    const text = 'Name;Bottled;Bottles;Size (ml)\nA;2021;6;500\nB;2021;six;500\n'
    const { columns } = guessedPlan('bottles', tableOf(text), measures)
    const same = { strength: '60 proof', sugar: '180' }
    const mended = new Map([[cellKey(3, 'count'), '7']])
    expect(rowsOf(text, { columns, same }, mended).map(({ row }) => row)).toMatchObject([
      { name: 'A', count: 6, strengthPctVol: 30, sugarGPerL: 180 },
      { name: 'B', count: 7, strengthPctVol: 30, sugarGPerL: 180 },
    ])
  })
})

describe('rows of the pantry', () => {
  const stock = (text: string) => rowsOf(text, undefined, undefined, 'stock')
  const heads = 'Goods;Strength;Volume (l);Weight (kg);Bought;Price\n'

  it('are spirit by their strength, else sugar, honey, acid or fruit by their names', () => {
    const rows = stock(
      `${heads}Rye spirit;70;3,5;;3.10.2026;54,90\nCukier;;;2;12.9.2026;\nmiód;;;1,4 kg;2026;\n` +
        'damson;;;2500 g;8.11.2026;12\nkwasek cytrynowy;;;0,1;8.11.2026;\n',
    )
    expect(rows.map(({ row }) => row)).toMatchObject([
      {
        goods: { kind: 'spirit', name: 'Rye spirit', strengthPctVol: 70 },
        volumeMl: 3500,
        priceMinor: 5490,
        boughtAt: new Date(2026, 9, 3, 12).toISOString(),
      },
      { goods: { kind: 'sweetener', sweetenerId: 'sugar' }, massG: 2000 },
      { goods: { kind: 'sweetener', sweetenerId: 'honey' }, massG: 1400 },
      { goods: { kind: 'fruit', fruitId: 'damson' }, massG: 2500, priceMinor: 1200 },
      { goods: { kind: 'acid' }, massG: 100 },
    ])
  })

  it('say what lacks for their goods', () => {
    const rows = stock(
      `${heads}Rye spirit;70;;3;2026;\nsugar;;1;;2026;\nmoonberry;;;1;2026;\nPure;99;1;;2026;\n`,
    )
    expect(rows.map(({ row, problems }) => [row, problems])).toMatchObject([
      [undefined, [{ field: 'volume', problem: { code: 'missing' } }]],
      [undefined, [{ field: 'mass', problem: { code: 'missing' } }]],
      [undefined, [{ field: 'goods', problem: { code: 'noGoods', name: 'moonberry' } }]],
      [undefined, [{ field: 'strength', problem: { problem: { code: 'outOfRange' } } }]],
    ])
  })
})

describe('the file to fill in', () => {
  it.each(['en', 'pl'] as const)('is read without a question in %s', async (language: Language) => {
    await speak(language)
    const t = i18n.getFixedT(language) as unknown as Words
    const { text } = templateOf('bottles', t, language)
    const rows = rowsOf(text)
    expect(rows.map(({ problems }) => problems)).toEqual([[], []])
    expect(rows.map(({ row }) => row)).toMatchObject([{ bottleSizeMl: 500 }, { bottleSizeMl: 350 }])
    const { columns } = guessedPlan('bottles', tableOf(text), measures)
    expect(columns.map(({ field }) => field)).toEqual(fieldsOf.bottles.map(({ id }) => id))
    const pantry = templateOf('stock', t, language).text
    expect(rowsOf(pantry, undefined, undefined, 'stock').map(({ row }) => row)).toMatchObject([
      { goods: { kind: 'spirit', strengthPctVol: 70 }, volumeMl: 3000, priceMinor: 5400 },
      { goods: { kind: 'sweetener', sweetenerId: 'sugar' }, massG: 2000 },
    ])
    expect(
      guessedPlan('stock', tableOf(pantry), measures).columns.map(({ field }) => field),
    ).toEqual(fieldsOf.stock.map(({ id }) => id))
    await speak('en')
  })
})
