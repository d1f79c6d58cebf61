/** Which file, and how it is to be read: its letters, its separator, whether its first row names the columns. */
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { Check } from '../../parts/fields/check.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { Field } from '../../parts/fields/field.tsx'
import { Segments } from '../../parts/fields/segments.tsx'
import { handText } from '../../parts/paper/hand-text.ts'
import { ScrollBox } from '../../parts/table/scroll-box.tsx'
import { sheetKinds } from './fields.ts'
import {
  delimiters,
  encodings,
  maxFileBytes,
  maxFileColumns,
  maxFileRows,
  type Delimiter,
  type FileProblem,
  type SheetTable,
} from './sheet-file.ts'
import { useTemplate } from './use-template.ts'
import type { FileState } from './use-bring-in.ts'
import styles from './bring-in.module.css'

const delimiterWords = { ';': 'semicolon', ',': 'comma', '\t': 'tab', '|': 'bar' } as const

export function FileStep({ state, onNext }: { state: FileState; onNext: () => void }) {
  const t = useWords()
  const problemWords = useFileProblem()
  const template = useTemplate(state.kind)
  const { file, reading, setFile, setChoices } = state

  async function choose(chosen: File | undefined) {
    if (!chosen) return
    // One byte more than may be is enough to know.
    const bytes = await chosen.slice(0, maxFileBytes + 1).arrayBuffer()
    setChoices({})
    setFile({ name: chosen.name, bytes: new Uint8Array(bytes) })
  }

  return (
    <div className={styles.step}>
      <Segments
        label={t('sheets.file.kind')}
        value={state.kind}
        onChange={state.setKind}
        choices={sheetKinds.map((value) => ({ value, label: t(`sheets.file.kinds.${value}`) }))}
      />
      <Field
        label={t('sheets.file.label')}
        isRequired
        description={file ? t('sheets.file.chosen', { name: file.name }) : t('sheets.file.hint')}
        problem={reading && !reading.ok ? problemWords(reading.problem) : undefined}
      >
        {(control) => (
          <input
            {...control}
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            onChange={(event) => void choose(event.target.files?.[0])}
          />
        )}
      </Field>
      <p className={styles.quiet}>
        {t('sheets.file.template')}{' '}
        <Button kind="quiet" onPress={() => handText(template.fileName, template.text, 'text/csv')}>
          {t('sheets.file.getTemplate')}
        </Button>
      </p>
      {file && <HowToRead state={state} />}
      {reading?.ok && <Begin table={reading.table} />}
      <div className={styles.buttons}>
        <Button kind="primary" isDisabled={!reading?.ok} onPress={onNext}>
          {t('sheets.toColumns')}
        </Button>
      </div>
    </div>
  )
}

function HowToRead({ state: { reading, choices, setChoices } }: { state: FileState }) {
  const t = useWords()
  const found = reading?.ok ? reading.table : undefined
  return (
    <div className={styles.fields}>
      <ChoiceField
        label={t('sheets.file.letters')}
        value={choices.encoding ?? found?.encoding ?? ''}
        onChange={(encoding) => setChoices({ ...choices, encoding })}
        choices={encodings.map((value) => ({ value, label: t(`sheets.file.encoding.${value}`) }))}
      />
      <ChoiceField
        label={t('sheets.file.delimiter')}
        value={choices.delimiter ?? found?.delimiter ?? ''}
        onChange={(delimiter: Delimiter) => setChoices({ ...choices, delimiter })}
        choices={delimiters.map((value) => ({
          value,
          label: t(`sheets.file.delimiters.${delimiterWords[value]}`),
        }))}
      />
      <Check
        isSelected={choices.hasHeads ?? found?.hasHeads ?? true}
        onChange={(hasHeads) => setChoices({ ...choices, hasHeads })}
      >
        {t('sheets.file.hasHeads')}
      </Check>
    </div>
  )
}

/** The first lines, to see whether letters and columns came out right. */
function Begin({ table: { heads, rows } }: { table: SheetTable }) {
  const t = useWords()
  const caption = t('sheets.file.begin', { count: rows.length })
  return (
    <ScrollBox label={caption} className={styles.frame}>
      <table className={styles.begin}>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {heads.map((head, at) => (
              <th key={at} scope="col">
                {head || t('sheets.column', { number: at + 1 })}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.slice(0, 4).map(({ line, cells }) => (
            <tr key={line}>
              {heads.map((_, at) => (
                <td key={at}>{(cells[at] ?? '').slice(0, 60)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  )
}

function useFileProblem(): (problem: FileProblem) => string {
  const t = useWords()
  return (problem) => {
    switch (problem.code) {
      case 'tooManyRows':
        return t('sheets.file.problem.tooManyRows', { count: problem.count, max: maxFileRows })
      case 'tooManyColumns':
        return t('sheets.file.problem.tooManyColumns', {
          count: problem.count,
          max: maxFileColumns,
        })
      case 'openQuote':
        return t('sheets.file.problem.openQuote', { line: problem.line })
      case 'tooLarge':
        return t('sheets.file.problem.tooLarge', { max: maxFileBytes / 1_000_000 })
      default:
        return t(`sheets.file.problem.${problem.code}`)
    }
  }
}
