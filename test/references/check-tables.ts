/** The form of the tables of published values, and how a test walks through them by name. */
export interface CheckTable {
  readonly source: string
  readonly status: 'found' | 'memory' | 'derived'
  readonly unit: string
  readonly columns: readonly string[]
  /** Identifier, the columns in their order, and the tolerance in the unit. */
  readonly rows: readonly (readonly [string, ...number[]])[]
}

type Check<Table extends CheckTable> = { [Name in Table['columns'][number]]: number } & {
  readonly id: string
  readonly source: string
  readonly tolerance: number
}

export function checksOf<Table extends CheckTable>(tables: readonly Table[]): Check<Table>[] {
  return tables.flatMap((table) =>
    table.rows.map(([id, ...numbers]) => {
      const named = table.columns.map((name, place) => [name, numbers[place]])
      const tolerance = numbers[table.columns.length]
      return { ...Object.fromEntries(named), id, source: table.source, tolerance } as Check<Table>
    }),
  )
}

/** What a calculation gets wrong beyond the tolerance, as lines to read; empty when all agree. */
export function missesOf<Row extends { id: string; tolerance: number; expected: number }>(
  checks: readonly Row[],
  calculate: (check: Row) => number,
): string[] {
  return checks.flatMap((check) => {
    const found = calculate(check)
    const isMet = Math.abs(found - check.expected) <= check.tolerance + 1e-9
    return isMet ? [] : [`${check.id}: ${found}, not ${check.expected} ± ${check.tolerance}`]
  })
}
