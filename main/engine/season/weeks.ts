/** Weeks of a season: they begin on Mondays at midnight UTC, and week 0 is that of the plan's start. */
import { msPerDay } from '../../../shared/spans-of-time.ts'

export const msPerWeek = 7 * msPerDay
export const weeksShown = 52

/** 1970 began on a Thursday. */
const firstMondayMs = 4 * msPerDay

export const mondayMs = (atMs: number): number =>
  firstMondayMs + Math.floor((atMs - firstMondayMs) / msPerWeek) * msPerWeek

export const weekStartMs = (startMs: number, week: number): number => startMs + week * msPerWeek

export const instant = (atMs: number): string => new Date(Math.round(atMs)).toISOString()

export const weekStarts = (startMs: number, count: number = weeksShown): string[] =>
  Array.from({ length: count }, (_, week) => instant(weekStartMs(startMs, week)))
