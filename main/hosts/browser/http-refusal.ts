/** A request that is not answered: an HTTP status and one sentence for whoever sent it. */
export class HttpRefusal extends Error {
  override name = 'HttpRefusal'
  readonly status: number
  readonly headers: Readonly<Record<string, string>>
  constructor(status: number, message: string, headers: Readonly<Record<string, string>> = {}) {
    super(message)
    this.status = status
    this.headers = headers
  }
}
