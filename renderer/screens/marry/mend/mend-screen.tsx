/** Mend: one jar, what is wrong with it, and what to add; first to a sample, then to all. */
import { useMemo, useState } from 'react'
import { useLocation } from 'wouter'
import { Trouble } from '../../../../shared/schemas/marrying.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { ButtonLink } from '../../../parts/button/button.tsx'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { Empty, Page } from '../../../parts/page/page.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { PlaceVessel, scaleFor } from '../parts/place-vessel.tsx'
import type { PlaceShown } from '../places.ts'
import { Figures } from '../result/figures.tsx'
import result from '../result/result.module.css'
import styles from '../marry-screen.module.css'
import { Tabs } from '../tabs.tsx'
import { usePlaces } from '../use-places.ts'
import { HazeLadder } from './haze-ladder.tsx'
import { MendForm } from './mend-form.tsx'

const vesselPx = 130

export function MendScreen({ jarId }: { jarId?: string | undefined }) {
  const t = useWords()
  const { size } = useQuantities()
  const [, navigate] = useLocation()
  const places = usePlaces()
  const [trouble, setTrouble] = useState<Trouble>('tooWeak')
  const jars = places.all.filter(({ group }) => group === 'jars')
  const jar = places.byPlace.get(`jar:${jarId ?? ''}`)
  const others = useMemo(
    () => places.all.filter(({ group, place }) => group !== 'bottles' && place !== jar?.place),
    [places, jar],
  )
  return (
    <Page
      title={t('marry.mend.title')}
      lead={t('marry.mend.lead', { sample: size(100, 'volume').text })}
      before={<Tabs here="mend" />}
    >
      {places.isHere && jars.length === 0 ? (
        <Empty action={<ButtonLink href="/batches">{t('marry.parts.goBatches')}</ButtonLink>}>
          {t('marry.mend.none')}
        </Empty>
      ) : (
        <>
          <div className={styles.pair}>
            <div className={styles.form}>
              <ChoiceField
                label={t('marry.mend.jar')}
                value={jar ? (jarId ?? '') : ''}
                onChange={(id) => navigate(`/marry/mend/${encodeURIComponent(id)}`)}
                placeholder={t('marry.mend.choose')}
                choices={jars.map(({ place, name }) => ({
                  value: place.slice('jar:'.length),
                  label: name,
                }))}
              />
              <Segments
                label={t('marry.mend.trouble')}
                value={trouble}
                onChange={setTrouble}
                choices={Trouble.options.map((value) => ({
                  value,
                  label: t(`marry.trouble.${value}`),
                }))}
              />
            </div>
            {jar && <JarNow jar={jar} />}
          </div>
          {jar &&
            (trouble === 'hazy' ? (
              <HazeLadder jar={jar} onRaise={() => setTrouble('tooWeak')} />
            ) : (
              <MendForm
                key={`${jar.place} ${trouble}`}
                jar={jar}
                trouble={trouble}
                others={others}
                places={places}
              />
            ))}
        </>
      )}
    </Page>
  )
}

function JarNow({ jar }: { jar: PlaceShown }) {
  const t = useWords()
  return (
    <div className={result.recorded}>
      {jar.drawn && <PlaceVessel drawn={jar.drawn} mmPerPixel={scaleFor([jar.drawn], vesselPx)} />}
      {jar.settled && (
        <Figures liquid={jar.settled} label={t('marry.mend.now', { value: jar.name })} />
      )}
    </div>
  )
}
