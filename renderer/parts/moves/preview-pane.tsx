/** The jars as they will be after the moves, drawn and in numbers; or why the moves cannot be. */
import { useWords } from '../../app/words/use-words.ts'
import type { JarContents, LedgerStep } from '../../../shared/schemas/cellar.ts'
import { Button } from '../button/button.tsx'
import { CautionNote } from '../cautions/caution-note.tsx'
import { FailureNote } from '../failure/failure-note.tsx'
import { useRefusalWords } from '../failure/refusal-words.ts'
import { useJars } from '../names/use-names.ts'
import { Strength, Sugar } from '../quantity/composition.tsx'
import { useQuantities } from '../quantity/use-quantities.ts'
import { useTimes } from '../time/use-times.ts'
import { JarVessel } from '../vessel/jar-vessel.tsx'
import { bottleBrimMl } from '../vessel/bottle-brim.ts'
import { Vessel, vesselScale } from '../vessel/vessel.tsx'
import { LiquidLine } from './composition/liquid-line.tsx'
import { Meaning } from './composition/meaning.tsx'
import { restsAt } from './composition/rests-at.ts'
import { Breaks } from './breaks.tsx'
import type { Draft } from './drafts/draft.ts'
import { remedyOf, type Remedy } from './nearest.ts'
import { firstRefused } from './refused-moves.ts'
import type { Previewed } from './use-preview.ts'
import styles from './preview-pane.module.css'

interface PreviewPaneProps {
  previewed: Previewed
  draft: Draft
  onMend: (draft: Draft) => void
  colour: string
  /** False where the later moves that would break are told elsewhere. */
  tellsBreaks?: boolean
}

export function PreviewPane({
  previewed,
  draft,
  onMend,
  colour,
  tellsBreaks = true,
}: PreviewPaneProps) {
  const t = useWords()
  const { preview, moves, error } = previewed
  const refused = preview && firstRefused(preview.refusals, moves)
  return (
    <section className={styles.pane} aria-label={t('batch.preview.title')}>
      <h3>{t('batch.preview.title')}</h3>
      <FailureNote error={error} />
      {!preview && !error && <p className={styles.waiting}>{t('batch.preview.waiting')}</p>}
      <div aria-live="polite">
        {refused && <Refused refused={refused} remedy={remedyOf(draft, refused)} onMend={onMend} />}
        {preview && !refused && <After steps={preview.steps} colour={colour} />}
      </div>
      {preview && !refused && tellsBreaks && <Breaks breaks={preview.breaks} />}
      {preview && !refused && preview.warnings.length > 0 && (
        <ul className={styles.warnings}>
          {preview.warnings.map((caution) => (
            <li key={`${caution.code} ${caution.jarId}`}>
              <CautionNote caution={caution} place={<JarName jarId={caution.jarId} />} />
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}

function JarName({ jarId }: { jarId: string | undefined }) {
  return useJars().get(jarId ?? '')?.jar.name
}

interface RefusedProps {
  refused: { refusal: Parameters<ReturnType<typeof useRefusalWords>>[0] }
  remedy: Remedy | undefined
  onMend: (draft: Draft) => void
}

function Refused({ refused, remedy, onMend }: RefusedProps) {
  const t = useWords()
  const { text } = useQuantities()
  const times = useTimes()
  const words = useRefusalWords()
  const amount = (of: NonNullable<Remedy['amount']>) => {
    switch (of.unit) {
      case 'ml':
        return text(of.value, 'volume')
      case 'g':
        return text(of.value, 'mass')
      case 'bottles':
        return t('parts.bottles', { count: of.value })
    }
  }
  return (
    <div className={styles.refused}>
      <p className={styles.refusedTitle}>{t('batch.preview.refused')}</p>
      <p>{words(refused.refusal)}</p>
      {remedy && (
        <Button onPress={() => onMend(remedy.draft)}>
          {remedy.amount
            ? t('batch.preview.nearest', { amount: amount(remedy.amount) })
            : t('batch.preview.useTime', { time: times.moment(remedy.at ?? '') })}
        </Button>
      )}
    </div>
  )
}

/** Each jar as the last of the moves that touches it leaves it. */
function After({ steps, colour }: { steps: readonly LedgerStep[]; colour: string }) {
  const t = useWords()
  const jars = useJars()
  const { size } = useQuantities()
  const last = new Map<string, JarContents | null>()
  for (const step of steps) {
    for (const contents of step.after) last.set(contents.jarId, contents)
    for (const jarId of step.emptied) last.set(jarId, null)
  }
  const bottled = steps.flatMap(({ recorded: { move } }) => (move.kind === 'bottle' ? [move] : []))
  return (
    <>
      {last.size === 0 && <p className={styles.waiting}>{t('batch.preview.noJar')}</p>}
      <ul className={styles.jars}>
        {[...last].map(([jarId, contents]) => {
          const jar = jars.get(jarId)?.jar
          if (!jar) return null
          return (
            <li key={jarId} className={styles.jar}>
              <JarVessel
                jar={jar}
                contents={contents ?? undefined}
                colour={colour}
                mmPerPixel={vesselScale.shelf}
              />
              <div className={styles.words}>
                <span className={styles.name}>{jar.name}</span>
                {contents ? (
                  <Contents contents={contents} />
                ) : (
                  <span className={styles.quiet}>
                    {t('batch.preview.emptied', { jar: jar.name })}
                  </span>
                )}
              </div>
            </li>
          )
        })}
      </ul>
      {steps.map(
        ({ recorded, interpretation }) =>
          interpretation && (
            <div key={recorded.id} className={styles.meaning}>
              <span className={styles.name}>{t('batch.preview.means')}</span>
              <Meaning interpretation={interpretation} />
              {interpretation.doubts.length > 0 && <strong>{t('batch.ledger.doubted')}</strong>}
            </div>
          ),
      )}
      {bottled.map(({ bottleLotId, bottleSizeMl, count }) => (
        <div key={bottleLotId} className={styles.jar}>
          <Vessel
            shape="bottle"
            capacityMl={bottleBrimMl(bottleSizeMl)}
            fillMl={bottleSizeMl}
            liquidMl={bottleSizeMl}
            colour={colour}
            mmPerPixel={vesselScale.shelf}
            isDecorative
          />
          <p className={styles.words}>
            {t('batch.preview.bottled', {
              bottles: t('parts.bottles', { count }),
              size: size(bottleSizeMl, 'volume').text,
            })}
          </p>
        </div>
      ))}
    </>
  )
}

function Contents({ contents }: { contents: JarContents }) {
  const t = useWords()
  const { text } = useQuantities()
  const resting = restsAt(contents)
  return (
    <>
      <LiquidLine liquid={contents.liquid} />
      {resting && (
        <span className={styles.quiet}>
          {t('batch.preview.rests')} <Strength pctVol={resting.strengthPctVol} />{' '}
          <Sugar gPerL={resting.sugarGPerL} />
        </span>
      )}
      {contents.heldMl >= 1 && (
        <span className={styles.quiet}>
          {t('batch.answer.held', { held: text(contents.heldMl, 'volume') })}
        </span>
      )}
      {contents.bed.sugarG >= 1 && (
        <span className={styles.quiet}>
          {t('batch.answer.bed', { bed: text(contents.bed.sugarG, 'mass') })}
        </span>
      )}
    </>
  )
}
