/** What the engine refuses: closed codes, with the numbers that a screen needs to explain it. */
export type DomainErrorCode = 'outOfRange' | 'noSuchMixture' | 'ambiguous'

export type DomainErrorDetails = Readonly<Record<string, number | string>>

/** A RangeError that says, as data, what was refused and by how much. */
export class DomainError extends RangeError {
  readonly code: DomainErrorCode
  readonly details: DomainErrorDetails

  constructor(code: DomainErrorCode, message: string, details: DomainErrorDetails) {
    super(message)
    this.code = code
    this.details = details
  }
}
