/** Another book made of a file, and put in the place of the cellar's own, which is kept aside. */
import { removeBookFiles } from '../cellar/open-book.ts'
import type { JobToStart } from './safekeeping-jobs.ts'
import type { Session } from './session.ts'

interface Replacing<Made> {
  /** Of the new book's name until it is in place. */
  readonly ending: string
  readonly kind: JobToStart['kind']
  readonly order: (into: string) => ReturnType<JobToStart['order']>
  /** Read once the book is made, before anything is replaced. */
  readonly made: () => Promise<Made>
}

export async function replaceBook<Made>(
  session: Session,
  { ending, kind, order, made }: Replacing<Made>,
): Promise<{ asideFile: string | null; made: Made }> {
  const { ownFile, newId } = session.options
  const into = `${ownFile}.${ending}`
  removeBookFiles(into)
  try {
    await session.jobs.run({ jobId: newId(), kind, order: () => order(into) })
    const found = await made()
    return { asideFile: await session.replaceOwn(into), made: found }
  } finally {
    removeBookFiles(into)
  }
}
