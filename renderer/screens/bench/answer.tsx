/** What the numbers come to: the answer large, how sure it is quieter, then what goes with it. */
import type { ReactNode } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { BenchNote, BenchReply, BenchResult } from '../../../shared/schemas/bench.ts'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { classes } from '../../parts/classes.ts'
import { QuantityMark } from '../../parts/quantity/quantity-mark.tsx'
import { CategoryTable } from './category-table.tsx'
import { CrossingPicture } from './crossing-picture.tsx'
import { DilutionPicture } from './dilution-picture.tsx'
import { HowComputed } from './how-computed.tsx'
import { Measured } from './measured.tsx'
import { Note } from './note.tsx'
import { useStandard } from './use-standard.ts'
import styles from './answer.module.css'

export interface AnswerProps {
  reply: BenchReply | undefined
  error: Error | null
  /** Notes that stand elsewhere already. */
  saidBefore?: BenchNote['code'] | undefined
  /** Where the answer can go from here. */
  action?: ReactNode
}

export function Answer({ reply, error, saidBefore, action }: AnswerProps) {
  const t = useWords()
  const told = error ? undefined : reply
  const answers = told?.results.filter(({ isAnswer }) => isAnswer) ?? []
  return (
    <>
      {/* There before it says anything: only then is what comes into it read out. */}
      <output className={styles.answers} aria-label={t('bench.answer')}>
        {answers.map((result) => (
          <Large key={result.quantity} result={result} />
        ))}
        {!reply && !error && <span className={styles.waiting}>{t('bench.waiting')}</span>}
      </output>
      <FailureNote error={error} />
      {told && (
        <BesideAnswer reply={told} saidBefore={saidBefore}>
          {action}
        </BesideAnswer>
      )}
    </>
  )
}

interface BesideAnswerProps extends Pick<AnswerProps, 'saidBefore'> {
  reply: BenchReply
  children: ReactNode
}

function BesideAnswer({ reply, saidBefore, children }: BesideAnswerProps) {
  const t = useWords()
  const standard = useStandard()
  const notes = reply.notes.filter(({ code }) => code !== saidBefore)
  const details = reply.results.filter(({ isAnswer }) => !isAnswer)
  return (
    <>
      {children}
      {details.length > 0 && (
        <dl className={styles.details}>
          {details.map(({ quantity, value, uncertainty, dimension }) => (
            <div key={quantity} className={styles.detail}>
              <dt>{t(`bench.quantity.${quantity}`, { standard })}</dt>
              <dd>
                <Measured value={value} uncertainty={uncertainty} dimension={dimension} />
              </dd>
            </div>
          ))}
        </dl>
      )}
      {reply.picture?.kind === 'dilution' && <DilutionPicture picture={reply.picture} />}
      {reply.picture?.kind === 'crossing' && (
        <CrossingPicture picture={reply.picture} results={reply.results} />
      )}
      {reply.categories && <CategoryTable categories={reply.categories} />}
      {notes.map((note) => (
        <Note key={note.code} note={note} />
      ))}
      <HowComputed reply={reply} />
    </>
  )
}

function Large({ result: { quantity, value, uncertainty, dimension } }: { result: BenchResult }) {
  const t = useWords()
  const standard = useStandard()
  const marked = dimension === 'strength' || dimension === 'sugar' ? dimension : undefined
  return (
    <span className={styles.answer}>
      <span className={styles.name}>{t(`bench.quantity.${quantity}`, { standard })}</span>
      <span className={classes(styles.large, marked && styles[marked])}>
        {marked && <QuantityMark kind={marked} />}
        <Measured value={value} uncertainty={uncertainty} dimension={dimension} />
      </span>
    </span>
  )
}
