/** A request that cannot be met, as data: the code, and what explains it. */
import type { ErrorCode, ErrorReply, Refusal } from '../../shared/schemas/errors.ts'

export class ServiceError extends Error {
  override name = 'ServiceError'
  readonly code: ErrorCode
  readonly details: Record<string, unknown>
  constructor(code: ErrorCode, message: string, details: Record<string, unknown> = {}) {
    super(message)
    this.code = code
    this.details = details
  }
  get reply(): ErrorReply {
    return { code: this.code, message: this.message, details: this.details }
  }
}

export const notFound = (what: string, id: string): ServiceError =>
  new ServiceError('notFound', `there is no ${what} ${id}`, { what, id })

/** A move that the ledger refuses; `index` tells which of the moves asked for. */
export const refusedMove = (refusal: Refusal, index: number): ServiceError =>
  new ServiceError(refusal.code, sentence(refusal), { ...refusal, index })

/** Plain English for logs and scripts; screens have words of their own. */
function sentence({ code, place, asked, available, nearest, unit, from }: Refusal): string {
  switch (code) {
    case 'notEnough':
      return `${place} has ${round(available)} ${unit}, asked for ${round(asked)}; nearest is ${round(nearest)}`
    case 'nothingThere':
      return `there is nothing in ${place}`
    case 'beforeItExisted':
      return `${place} is there only from ${from}`
    case 'inTheFuture':
      return 'this lies in the future: keep it as a plan'
    case 'jarTaken':
      return `${place} holds another batch`
    case 'noFruit':
      return `there is no fruit in ${place}`
    case 'unknownPlace':
      return `there is no ${place}`
    case 'wrongGoods':
      return `${place} is not what this move needs`
    case 'sameJar':
      return `${place} is named twice`
    case 'alreadyThere':
      return `${place} is there already`
    case 'noSuchMixture':
      return `no liquid of this volume, strength and sugar can be in ${place}`
    case 'noRoom':
      return `${place} has room for ${round(available)} ${unit}, asked for ${round(asked)}`
    case 'neverFilled':
      return `${place} was filled with ${round(available)} ${unit}, found ${round(asked)}; most is ${round(nearest)}`
  }
}

const round = (amount: number | undefined) => Math.round((amount ?? 0) * 10) / 10
