/** Matter on its way from left to right: places with their words, streams as thick as what passed. */
import { useMemo, useState } from 'react'
import { useWords } from '../app/words/use-words.ts'
import { useSettings } from '../app/settings.tsx'
import type { Lineage, LineageNode } from '../../shared/schemas/shelf.ts'
import { classes } from '../parts/classes.ts'
import { useQuantities } from '../parts/quantity/use-quantities.ts'
import {
  lineageLayout,
  type LineageAmount,
  type LineageLayout,
  type PlacedNode,
} from './lineage-layout.ts'
import { rootPx } from '../parts/root-px.ts'
import styles from './lineage-picture.module.css'
import { listFormat } from '../parts/formatters/formatters.ts'

export interface LineagePictureProps {
  lineage: Lineage
  amount: LineageAmount
  nameOf: (node: LineageNode) => string
  colourOf: (batchId: string) => string | undefined
}

/** The picture's own units across; it is stretched to the room there is. */
const wide = 1000
/** Share of a column that the words of its places take; streams run through the rest. */
const boxShare = 0.56
/** Of goods, glasses and whatever else belongs to no batch. */
const plainInk = 'color-mix(in oklab, var(--glass-line) 55%, var(--paper))'

export function LineagePicture({ lineage, amount, nameOf, colourOf }: LineagePictureProps) {
  const t = useWords()
  const [remPx] = useState(rootPx)
  const layout = useMemo(() => lineageLayout(lineage, amount, remPx), [lineage, amount, remPx])
  const [toldKey, setToldKey] = useState<string>()
  const words = useNodeWords(layout, nameOf)
  const told = layout.nodes.find(({ node }) => node.key === toldKey)
  if (layout.nodes.length === 0) return <p>{t('shelf.lineage.nothing')}</p>
  const colour = colourWith(layout, colourOf)
  return (
    <figure className={styles.figure}>
      <div className={styles.scroll}>
        <div
          className={styles.picture}
          style={{ height: layout.heightPx, minWidth: `${layout.columns * 9.5}rem` }}
        >
          <svg
            className={styles.streams}
            viewBox={`0 0 ${wide} ${layout.heightPx}`}
            preserveAspectRatio="none"
            aria-hidden
          >
            {layout.streams.map((stream) => {
              const isTold = toldKey === stream.from || toldKey === stream.to
              return (
                <path
                  key={`${stream.from} ${stream.to}`}
                  className={classes(
                    styles.stream,
                    toldKey !== undefined && !isTold && styles.faded,
                  )}
                  style={{ fill: colour(stream.from) ?? colour(stream.to) ?? plainInk }}
                  d={streamPath(layout, stream)}
                />
              )
            })}
          </svg>
          <ul aria-label={t('shelf.lineage.label')}>
            {layout.nodes.map((placed) => (
              <Place
                key={placed.node.key}
                placed={placed}
                layout={layout}
                name={nameOf(placed.node)}
                flow={words.flow(placed)}
                colour={colour(placed.node.key)}
                onTell={setToldKey}
              />
            ))}
          </ul>
        </div>
      </div>
      <figcaption className={styles.told}>
        {told ? words.whole(told) : t('shelf.lineage.hint')}
      </figcaption>
    </figure>
  )
}

interface PlaceProps {
  placed: PlacedNode
  layout: LineageLayout
  name: string
  /** What came and what went, for those who listen. */
  flow: string
  colour: string | undefined
  onTell: (key: string | undefined) => void
}

function Place({ placed, layout, name, flow, colour, onTell }: PlaceProps) {
  const { text } = useQuantities()
  const { node, topPx, heightPx, barTopPx, barPx, amountG } = placed
  const { left, width } = boxOf(layout, placed.column)
  const tell = () => onTell(node.key)
  const isEnd = node.kind === 'outside'
  return (
    <li
      className={styles.place}
      style={{
        left: `${(100 * left) / wide}%`,
        width: `${(100 * width) / wide}%`,
        top: topPx,
        height: heightPx,
      }}
    >
      <span
        className={classes(styles.bar, isEnd && styles.end)}
        style={{ top: barTopPx - topPx, height: barPx, background: colour ?? plainInk }}
        aria-hidden
      />
      <button
        type="button"
        className={styles.words}
        onFocus={tell}
        onBlur={() => onTell(undefined)}
        onPointerEnter={tell}
        onPointerLeave={() => onTell(undefined)}
        onClick={tell}
      >
        <span className={styles.name}>{name}</span>
        <span className={styles.amount}>{text(amountG, 'mass')}</span>
        <span className="visually-hidden">{flow}</span>
      </button>
    </li>
  )
}

function boxOf({ columns }: LineageLayout, column: number): { left: number; width: number } {
  const each = wide / (columns - 1 + boxShare)
  return { left: column * each, width: each * boxShare }
}

/** From the right edge of one place to the left edge of the other; backwards it loops round. */
function streamPath(layout: LineageLayout, stream: LineageLayout['streams'][number]): string {
  const columnOf = (key: string) => layout.nodes.find(({ node }) => node.key === key)?.column ?? 0
  const from = boxOf(layout, columnOf(stream.from))
  const to = boxOf(layout, columnOf(stream.to))
  const [x0, x1] = [from.left + from.width, to.left]
  const bend = Math.max(40, Math.abs(x1 - x0) / 2)
  const { fromPx: y0, toPx: y1, thickPx: thick } = stream
  return (
    `M${x0} ${y0}C${x0 + bend} ${y0} ${x1 - bend} ${y1} ${x1} ${y1}v${thick}` +
    `C${x1 - bend} ${y1 + thick} ${x0 + bend} ${y0 + thick} ${x0} ${y0 + thick}Z`
  )
}

/** A place has the colour of the batch that went through it; bought goods and glasses have none. */
const colourWith = ({ nodes }: LineageLayout, colourOf: LineagePictureProps['colourOf']) => {
  const batchOf = new Map(nodes.map(({ node }) => [node.key, node.batchId]))
  return (key: string) => {
    const batchId = batchOf.get(key)
    return batchId === undefined ? undefined : colourOf(batchId)
  }
}

/** A place in sentences: what passed through it; from where, to where. */
function useNodeWords(layout: LineageLayout, nameOf: LineagePictureProps['nameOf']) {
  const t = useWords()
  const { locale } = useSettings()
  const { text } = useQuantities()
  const byKey = new Map(layout.nodes.map(({ node }) => [node.key, node]))
  const list = listFormat(locale, { type: 'conjunction' })
  const parts = (ends: readonly { key: string; amountG: number }[]) =>
    list.format(
      ends.flatMap(({ key, amountG }) => {
        const node = byKey.get(key)
        return node
          ? [t('shelf.lineage.part', { name: nameOf(node), amount: text(amountG, 'mass') })]
          : []
      }),
    )
  const flow = ({ node }: PlacedNode) => {
    const came = layout.streams.filter(({ to }) => to === node.key)
    const went = layout.streams.filter(({ from }) => from === node.key)
    return [
      came.length > 0 &&
        t('shelf.lineage.nodeIn', {
          parts: parts(came.map((one) => ({ key: one.from, amountG: one.amountG }))),
        }),
      went.length > 0 &&
        t('shelf.lineage.nodeOut', {
          parts: parts(went.map((one) => ({ key: one.to, amountG: one.amountG }))),
        }),
    ]
      .filter((part) => part !== false)
      .join(' ')
  }
  const whole = (placed: PlacedNode) =>
    [
      t('shelf.lineage.node', {
        name: nameOf(placed.node),
        amount: text(placed.amountG, 'mass'),
      }),
      flow(placed),
    ].join(' ')
  return { flow, whole }
}
