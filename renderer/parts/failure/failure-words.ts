/** Every failed call in words that say what to do, by its code. */
import { useWords, type WordKey } from '../../app/words/use-words.ts'
import type { CallError } from '../../app/calls.ts'
import { Refusal, type ErrorReply } from '../../../shared/schemas/errors.ts'
import { ExportProblem } from '../../../shared/schemas/exports.ts'
import { BackupFailure, BackupProblem } from '../../../shared/schemas/safekeeping.ts'
import { useLimitWords, useMixtureWords } from './limit-words.ts'
import { useRefusalWords } from './refusal-words.ts'

export function useFailureWords(): (error: CallError | Error) => string {
  const t = useWords()
  const refusalWords = useRefusalWords()
  const limitWords = useLimitWords()
  const mixtureWords = useMixtureWords()
  return (error) => {
    const reply = 'reply' in error ? error.reply : undefined
    if (!reply) return t('codes.error.internal')
    if (reply.details['lost'] === true) return t('codes.lost')
    const refusal = refusalIn(reply)
    if (refusal) return refusalWords(refusal)
    // What is out of range, or fits no mixture, has words with its numbers.
    if (reply.code === 'outOfRange') return limitWords(reply.details)
    if (reply.code === 'noSuchMixture') return mixtureWords(reply.details)
    if (reply.code === 'backupFailed') return t(backupWord(reply.details))
    // A refusal that came without its place can't be told better than a fault in the form.
    return t(`codes.error.${isRefusalCode(reply.code) ? 'badInput' : reply.code}`)
  }
}

/** The refusal that the error carries, when the ledger said no. */
function refusalIn({ code, details }: ErrorReply): Refusal | undefined {
  const parsed = Refusal.safeParse({ ...withoutIndex(details), code })
  return parsed.success ? parsed.data : undefined
}

/** What is wrong with the backup says more than that it failed. */
function backupWord({ failure, problem, exportProblem }: ErrorReply['details']): WordKey {
  const ofExport = ExportProblem.safeParse(exportProblem)
  if (ofExport.success) return `exports.problem.${ofExport.data}`
  const known = BackupProblem.safeParse(problem)
  if (known.success) return `safekeeping.backups.problem.${known.data}`
  const failed = BackupFailure.safeParse(failure)
  return failed.success ? `safekeeping.backups.failure.${failed.data}` : 'codes.error.backupFailed'
}

/** `index` tells which of several moves was meant; it is no part of the refusal. */
const withoutIndex = ({ index: _index, ...details }: Record<string, unknown>) => details

const isRefusalCode = (code: ErrorReply['code']): code is Refusal['code'] =>
  Refusal.shape.code.options.some((option) => option === code)
