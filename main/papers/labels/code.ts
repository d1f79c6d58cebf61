/**
 * The square code: a short plain text about the bottle in UTF-8, level M, which any phone reads
 * without a service. Four light modules stand round it, as ISO/IEC 18004 asks.
 */
import makeCode from 'qrcode-generator'
import type { LabelOp, LabelText } from '../../../shared/schemas/labels.ts'
import { rectangle, type Box } from './lengths.ts'

/** Finer modules blur on home printers and phones; common practice. */
export const leastModuleMm = 0.35
/** More is only larger. */
const greatestModuleMm = 0.5
const quietModules = 4

export interface Code {
  readonly modules: number
  readonly isDark: (row: number, column: number) => boolean
}

/** Name, vintage, strength and volume, batch, day of bottling: whatever of them there is. */
export const recordOf = (text: LabelText): string =>
  [
    text.name,
    text.vintage,
    [text.strength, text.volume].filter(Boolean).join(', '),
    text.batch,
    text.bottled,
  ]
    .map((line) => line.trim())
    .filter(Boolean)
    .join('\n')

/** Undefined where the record is empty or longer than any code. */
export function codeOf(record: string): Code | undefined {
  if (record === '') return undefined
  const code = makeCode(0, 'M')
  // One letter a byte: the library's own encoding is a setting shared by the whole program.
  code.addData(Buffer.from(record, 'utf8').toString('latin1'), 'Byte')
  try {
    code.make()
  } catch {
    return undefined
  }
  return { modules: code.getModuleCount(), isDark: (row, column) => code.isDark(row, column) }
}

/** The side it takes at most and at least, quiet rim included. */
export const greatestSide = ({ modules }: Code): number =>
  (modules + 2 * quietModules) * greatestModuleMm
export const leastSide = ({ modules }: Code): number => (modules + 2 * quietModules) * leastModuleMm
export const moduleOf = ({ modules }: Code, sideMm: number): number =>
  sideMm / (modules + 2 * quietModules)

/** Dark modules on a light ground, each row's neighbours as one bar. */
export function drawCode(code: Code, box: Box, dark: string, ground: string): LabelOp[] {
  const moduleMm = moduleOf(code, box.width)
  const bars: string[] = []
  for (let row = 0; row < code.modules; row += 1) {
    let from: number | undefined
    for (let column = 0; column <= code.modules; column += 1) {
      const isDark = column < code.modules && code.isDark(row, column)
      if (isDark) from ??= column
      else if (from !== undefined) {
        const x = box.x + (quietModules + from) * moduleMm
        const y = box.y + (quietModules + row) * moduleMm
        bars.push(
          `M${fine(x)} ${fine(y)}h${fine((column - from) * moduleMm)}v${fine(moduleMm)}h${fine((from - column) * moduleMm)}Z`,
        )
        from = undefined
      }
    }
  }
  return [
    { op: 'path', of: 'codeGround', d: rectangle(box), fill: ground },
    { op: 'path', of: 'code', d: bars.join(''), fill: dark },
  ]
}

/** Rows that touch must not leave a hair of light between them. */
const fine = (length: number): string => String(Math.round(length * 1e5) / 1e5)
