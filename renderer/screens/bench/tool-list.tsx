/** The instruments as they lie on the bench: a list beside the form, a choice above it when narrow. */
import { useWords } from '../../app/words/use-words.ts'
import { useLocation } from 'wouter'
import { Field } from '../../parts/fields/field.tsx'
import field from '../../parts/fields/field.module.css'
import { toolGroups, type ToolId } from './tools.ts'
import styles from './tool-list.module.css'

export function ToolList({ current }: { current: ToolId }) {
  const t = useWords()
  return (
    <nav className={styles.list} aria-label={t('bench.list')}>
      {toolGroups.map(({ group, tools }) => (
        <div key={group}>
          <p className={styles.group} id={`bench-${group}`}>
            {t(`bench.group.${group}`)}
          </p>
          <ul aria-labelledby={`bench-${group}`}>
            {tools.map((id) => (
              <li key={id}>
                <a
                  className={styles.tool}
                  href={`#/bench/${id}`}
                  aria-current={id === current ? 'page' : undefined}
                >
                  {t(`bench.tool.${id}.name`)}
                </a>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </nav>
  )
}

export function ToolChoice({ current }: { current: ToolId }) {
  const t = useWords()
  const [, navigate] = useLocation()
  return (
    <div className={styles.choice}>
      <Field label={t('bench.choose')} isRequired>
        {(control) => (
          <select
            {...control}
            className={field['input']}
            value={current}
            onChange={(event) => navigate(`/bench/${event.target.value}`)}
          >
            {toolGroups.map(({ group, tools }) => (
              <optgroup key={group} label={t(`bench.group.${group}`)}>
                {tools.map((id) => (
                  <option key={id} value={id}>
                    {t(`bench.tool.${id}.name`)}
                  </option>
                ))}
              </optgroup>
            ))}
          </select>
        )}
      </Field>
    </div>
  )
}
