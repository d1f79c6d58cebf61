/** "What is this?" beside a term: a small question mark that explains it, and leads to the handbook. */
import { Button, Dialog, DialogTrigger, Popover } from 'react-aria-components'
import { useWords } from '../../app/words/use-words.ts'
import { classes } from '../classes.ts'
import type { TermId } from './terms.ts'
import styles from './term.module.css'

export function Term({ id }: { id: TermId }) {
  const t = useWords()
  const name = t(`terms.${id}.name`)
  return (
    <DialogTrigger>
      <Button className={classes(styles.ask)} aria-label={t('termHelp.ask', { name })}>
        ?
      </Button>
      <Popover className={classes(styles.popover)} placement="bottom start">
        <Dialog className={classes(styles.answer)} aria-label={name}>
          {({ close }) => (
            <>
              <p className={styles.name}>{name}</p>
              <p>{t(`terms.${id}.text`)}</p>
              <a href="#/handbook/terms" onClick={close}>
                {t('termHelp.more')}
              </a>
            </>
          )}
        </Dialog>
      </Popover>
    </DialogTrigger>
  )
}
