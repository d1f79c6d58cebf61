/**
 * Rows as comma-separated text that any spreadsheet reads and none runs.
 *
 * RFC 4180: cells with a comma, a quote or a line end stand in quotes, quotes are doubled, rows end
 * in CRLF. A cell that a spreadsheet would take for a formula (beginning with = + - @, a tab or a
 * return, whatever spaces stand before) gets an apostrophe in front; plain numbers stay numbers.
 */
export type Cell = string | number | undefined

export const csv = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('')

function cellText(cell: Cell): string {
  if (cell === undefined) return ''
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : ''
  const harmless = /^[\s\u00a0\ufeff]*[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/.test(cell)
    ? `'${cell}`
    : cell
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless
}
