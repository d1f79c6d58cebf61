/** Whether two sets of wishes ask the same, in whatever order their fields were filled in. */
import { SeasonWishes } from '../../../shared/schemas/season.ts'

/** The schema puts fields in its own order, and takes out those that are undefined. */
const told = (wishes: SeasonWishes) => JSON.stringify(SeasonWishes.parse(wishes))

export const sameWishes = (a: SeasonWishes, b: SeasonWishes): boolean =>
  a === b || told(a) === told(b)
