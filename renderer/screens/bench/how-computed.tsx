/** How a result was come by: what was taken, the method in words, where from, and how far it holds. */
import { useLibraryWords, useWords } from '../../app/words/use-words.ts'
import { benchInputs, type BenchReply } from '../../../shared/schemas/bench.ts'
import { Fold } from './fold.tsx'
import { Measured } from './measured.tsx'
import styles from './how-computed.module.css'

export function HowComputed({ reply }: { reply: BenchReply }) {
  const t = useWords()
  const say = useLibraryWords()
  return (
    <Fold title={t('bench.how.title')}>
      <dl className={styles.taken}>
        {reply.inputs.map(({ name, value, uncertainty }) => (
          <div key={name} className={styles.input}>
            <dt>{t(`bench.taken.${name}`)}</dt>
            <dd>
              <Measured value={value} uncertainty={uncertainty} dimension={benchInputs[name]} />
            </dd>
          </div>
        ))}
      </dl>
      {reply.explanations.map(({ id, method, source, limits, uncertainty }) => (
        <section key={id} className={styles.method}>
          <p>{say(method)}</p>
          <dl className={styles.facts}>
            <dt>{t('bench.how.source')}</dt>
            <dd>{say(source)}</dd>
            <dt>{t('bench.how.limits')}</dt>
            <dd>{say(limits)}</dd>
            <dt>{t('bench.how.uncertainty')}</dt>
            <dd>{say(uncertainty)}</dd>
          </dl>
        </section>
      ))}
      <p className={styles.quiet}>{t('bench.how.plusMinus')}</p>
    </Fold>
  )
}
