/** The handbook: everything a newcomer needs at a jar, and where each number comes from. */
import { useWords } from '../../app/words/use-words.ts'
import { Page } from '../../parts/page/page.tsx'
import { ViewLinks } from '../../parts/page/view-links.tsx'
import { terms } from '../../parts/term/terms.ts'
import { chapterPath, chapters, handTools, reckonings, type Chapter } from './chapters.ts'
import { Dangers } from './dangers.tsx'
import { FloatPicture } from './float-picture.tsx'
import { Steps } from './steps.tsx'
import { Told } from './told.tsx'

export function HandbookScreen({ chapter }: { chapter: Chapter }) {
  const t = useWords()
  return (
    <Page title={t('handbook.title')} lead={t('handbook.lead')}>
      <ViewLinks
        label={t('handbook.views')}
        links={chapters.map((one) => ({
          path: chapterPath(one),
          words: t(`handbook.chapter.${one}`),
          isHere: one === chapter,
        }))}
      />
      <ChapterText chapter={chapter} />
    </Page>
  )
}

function ChapterText({ chapter }: { chapter: Chapter }) {
  const t = useWords()
  switch (chapter) {
    case 'stages':
      return <Steps />
    case 'instruments':
      return (
        <>
          <FloatPicture />
          <Told
            entries={handTools.map((id) => ({
              id,
              name: t(`handbook.tool.${id}.name`),
              text: t(`handbook.tool.${id}.text`),
            }))}
          />
        </>
      )
    case 'cautions':
      return <Dangers />
    case 'numbers':
      return (
        <Told
          entries={reckonings.map((id) => ({
            id,
            name: t(`handbook.reckoning.${id}.name`),
            text: t(`handbook.reckoning.${id}.text`),
            source: t(`handbook.reckoning.${id}.source`),
          }))}
        />
      )
    case 'terms':
      return (
        <Told
          entries={terms.map((id) => ({
            id,
            name: t(`terms.${id}.name`),
            text: t(`terms.${id}.text`),
          }))}
        />
      )
  }
}
