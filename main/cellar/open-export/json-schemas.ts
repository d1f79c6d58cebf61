/** The published schemas: JSON Schema, draft 2020-12, of each line of each file under `data/`. */
import * as z from 'zod'
import { exportVersion } from '../../../shared/schemas/exports.ts'
import { rowSchemas } from './row-schemas.ts'

export function jsonSchemaOf(table: string): object {
  const schema = rowSchemas[table]
  if (!schema) throw new Error(`the table ${table} has no schema in row-schemas.ts`)
  return {
    $id: `urn:ratafia-cellar:${exportVersion}:${table.replaceAll('_', '-')}`,
    title: `One line of data/${table.replaceAll('_', '-')}.jsonl`,
    ...z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input' }),
  }
}
