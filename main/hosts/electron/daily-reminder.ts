/** A notice on the desktop, once a day at most; the service knows whether it is wished, and due. */
import type { Reminder } from '../../../shared/schemas/schedule.ts'
import type { Service } from '../../service/service.ts'
import { paperWords } from '../../papers/words/paper-words.ts'
import { answerCall } from '../answer-call.ts'

export interface ReminderText {
  readonly title: string
  readonly body: string
}

const everyMs = 3_600_000

/** Returns a function that stops it. */
export function remindDaily(
  service: Pick<Service, 'dispatch'>,
  show: (text: ReminderText) => void,
): () => void {
  async function ask() {
    const reply = await answerCall(service, 'today.remind', {})
    if (reply.ok && reply.value) show(reminderText(reply.value as Reminder))
  }
  void ask()
  const timer = setInterval(() => void ask(), everyMs)
  return () => clearInterval(timer)
}

/** More names than this are no summary. */
const mostNames = 3

export function reminderText({ count, batchNames, language }: Reminder): ReminderText {
  const { title, more } = paperWords({ language }).reminder
  const named = batchNames.slice(0, mostNames).join(', ')
  const others = batchNames.length - mostNames
  return {
    title: title(count),
    body: others > 0 ? more(named, others) : named,
  }
}
