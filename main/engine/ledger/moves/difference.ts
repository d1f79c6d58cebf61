import { subtractMatter, type Matter } from '../../../../shared/matter.ts'
import type { Transfer } from '../../../../shared/schemas/cellar.ts'

/** Matter that has to come in (or, where negative, go out) for the book to match the cellar. */
export const difference = (place: string, booked: Matter, found: Matter): Transfer => ({
  from: 'outside:correction',
  to: place,
  matter: subtractMatter(found, booked),
})
