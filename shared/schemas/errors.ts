import * as z from 'zod'

/** Why the ledger refuses a move. */
const refusalCodes = [
  'notEnough',
  'nothingThere',
  'beforeItExisted',
  'inTheFuture',
  'jarTaken',
  'noFruit',
  'unknownPlace',
  'wrongGoods',
  'sameJar',
  'alreadyThere',
  'noSuchMixture',
  'noRoom',
  'neverFilled',
] as const

/** Every way a request can be refused. A code outside this list is a bug. */
export const ErrorCode = z.enum([
  // the contract said no
  'unknownChannel',
  'badInput',
  // the ledger said no: details are a Refusal
  ...refusalCodes,
  'breaksLater',
  // the engine said no: the details name quantity, value and range, or by how much
  'outOfRange',
  'ambiguous',
  // not there, or not as it was
  'notFound',
  'staleEdit',
  'nothingToUndo',
  'stillInUse',
  // the file said no
  'bookNewer',
  'bookDamaged',
  'bookForeign',
  'bookReadOnly',
  'bookBusy',
  'diskFull',
  // the demo's file said no
  'demoBusy',
  'demoSpoilt',
  // a backup said no: the details name the failure, and what is wrong with the file
  'backupFailed',
  'demoOpen',
  // anything else
  'internal',
])
export type ErrorCode = z.infer<typeof ErrorCode>

/** Why a move cannot be: what is there, what was asked, and the nearest amount that can be. */
export const Refusal = z.strictObject({
  code: z.enum(refusalCodes),
  /** A place as the ledger names it, such as `jar:north-shelf`. */
  place: z.string(),
  unit: z.enum(['ml', 'g', 'bottles']).optional(),
  asked: z.number().optional(),
  available: z.number().optional(),
  nearest: z.number().optional(),
  /** The batch that holds the jar, or the instant from which the matter is there. */
  batchId: z.string().optional(),
  from: z.string().optional(),
})
export type Refusal = z.infer<typeof Refusal>

export const ErrorReply = z.strictObject({
  code: ErrorCode,
  /** Plain English for logs and scripts; screens choose their own words by code. */
  message: z.string(),
  details: z.record(z.string(), z.unknown()),
})
export type ErrorReply = z.infer<typeof ErrorReply>

export type Reply<T> = { ok: true; value: T } | { ok: false; error: ErrorReply }
