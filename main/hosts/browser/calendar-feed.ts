/**
 * The calendar at an address of its own. Calendar programs send no token: whoever asks has to know
 * the secret that stands in the address, which the maker can renew or close at any time.
 */
import type { Service } from '../../service/service.ts'
import { answerCall } from '../answer-call.ts'
import { HttpRefusal } from './http-refusal.ts'
import type { WrongGuesses } from './wrong-guesses.ts'

/** The secret of a calendar's address; undefined for any other path. */
export const secretOfCalendar = (path: string): string | undefined =>
  /^\/calendar\/([\w-]{1,200})\.ics$/.exec(path)?.[1]

export async function calendarOf(
  service: Pick<Service, 'dispatch'>,
  secret: string,
  guesses: WrongGuesses,
): Promise<string> {
  const reply = await answerCall(service, 'calendar.serve', { secret })
  // A closed address looks like one that never was.
  if (!reply.ok && reply.error.code === 'notFound')
    throw guesses.refusal(new HttpRefusal(404, 'There is no such page.'))
  if (!reply.ok) throw new HttpRefusal(503, 'The calendar cannot be read just now.')
  return (reply.value as { ics: string }).ics
}
