import type { Context } from '../../../src/conversation/context.ts';
import type { Attachment, Named } from '../../../src/conversation/question.ts';
import { readDeadline } from '../../../src/engine/challenges/deadline.ts';
import type { Constraint, Decides, EntryClass, Terms } from '../../../src/engine/challenges/terms.ts';
import type { Method } from '../../../src/engine/challenges/voting/election.ts';
import { daysLater, type Fixed, instantOf, wallTimeAt } from '../../../src/engine/challenges/wall-time.ts';
import { refuse } from '../../../src/engine/refusal.ts';
import { zoneOfGroup } from '../lookup.ts';
import { drawnPalette, paletteOfPhoto, readPalette } from './palette.ts';

declare module '../../../src/engine/refusal.ts' {
  interface Reasons {
    'challenge-date-unreadable': { readonly text: string };
  }
}

/** What a steward may say of a challenge; everything but the title has a usual value. */
export type OpenAsked = {
  readonly title?: string | undefined;
  readonly channel?: Named | undefined;
  readonly brief?: string | undefined;
  readonly palette?: string | undefined;
  readonly photo?: Attachment | undefined;
  readonly random?: number | undefined;
  readonly seed?: string | undefined;
  readonly share?: number | undefined;
  readonly rule?: Constraint | undefined;
  readonly colourants?: number | undefined;
  readonly class?: EntryClass | undefined;
  readonly opens?: string | undefined;
  readonly 'entries-until'?: string | undefined;
  readonly 'votes-until'?: string | undefined;
  readonly zone?: string | undefined;
  readonly decides?: Decides | undefined;
  readonly method?: Method | undefined;
  readonly 'tie-seed'?: string | undefined;
  readonly entries?: number | undefined;
  readonly 'made-from'?: string | undefined;
  readonly 'cure-days'?: number | undefined;
  readonly 'joined-before'?: string | undefined;
  readonly quorum?: number | undefined;
  readonly anonymous?: boolean | undefined;
  readonly totals?: boolean | undefined;
};

/** How long entries and votes are taken where nobody says, days. */
const entryDays = 14;
const voteDays = 3;

/** The terms of a challenge, and the times that a clock change moved or made doubtful. */
export type ReadTerms = { readonly terms: Terms; readonly shifted: readonly Fixed[] };

/** Fills in what was not said. Throws a Refusal for a time, a zone or a colour that cannot be read. */
export async function readTerms(asked: OpenAsked, context: Context): Promise<ReadTerms> {
  const { at } = context;
  const decides = asked.decides ?? 'votes';
  const times = readTimes(asked, { zone: asked.zone ?? (await zoneOfGroup(context)), now: at, decides });
  const { zone } = times;
  const { palette, seed } = await paletteAsked(asked, context);
  const madeFrom = asked['made-from'];
  const joined = asked['joined-before'];
  return {
    shifted: times.shifted,
    terms: {
      title: (asked.title ?? '').trim(),
      brief: (asked.brief ?? '').trim(),
      palette,
      ...(seed !== undefined && { paletteSeed: seed }),
      constraint: asked.rule ?? 'none',
      ...(asked.colourants !== undefined && { mostColourants: asked.colourants }),
      class: asked.class ?? 'open',
      zone,
      opensAt: times.opensAt,
      entriesUntil: times.entriesUntil,
      votesUntil: times.votesUntil,
      method: asked.method ?? 'schulze',
      decides,
      ties: asked['tie-seed'] === undefined ? 'shared' : { brokenBySeed: asked['tie-seed'].trim() },
      entriesPerMember: asked.entries ?? 1,
      ...(madeFrom !== undefined && { madeFrom: readDate(madeFrom) }),
      ...(asked['cure-days'] !== undefined && { leastCureDays: asked['cure-days'] }),
      ...(joined !== undefined && { joinedBefore: startOfDay(readDate(joined), zone) }),
      ...(asked.quorum !== undefined && { quorum: asked.quorum }),
      anonymous: asked.anonymous ?? true,
      runningTotals: asked.totals ?? false,
    },
  };
}

async function paletteAsked({ palette, photo, random, seed, share }: OpenAsked, context: Context) {
  if (palette !== undefined) return { palette: readPalette(palette), seed: undefined };
  if (photo) return { palette: await paletteOfPhoto(photo, context), seed: undefined };
  if (random === undefined) return { palette: [], seed: undefined };
  return await drawnPalette({ colours: random, seed, share }, context);
}

function readTimes(
  asked: Pick<OpenAsked, 'opens' | 'entries-until' | 'votes-until'>,
  { zone, now, decides }: { zone: string; now: number; decides: Decides },
) {
  const later = (from: number, days: number) => instantOf(daysLater(wallTimeAt(from, zone), days), zone);
  const opens: Fixed =
    asked.opens === undefined ? { at: now, zone } : readDeadline(asked.opens, { zone, now });
  const entries =
    asked['entries-until'] === undefined
      ? later(opens.at, entryDays)
      : readDeadline(asked['entries-until'], { zone, now });
  const votes =
    decides === 'colour'
      ? entries
      : asked['votes-until'] === undefined
        ? later(entries.at, voteDays)
        : readDeadline(asked['votes-until'], { zone, now });
  return {
    zone: entries.zone,
    opensAt: opens.at,
    entriesUntil: entries.at,
    votesUntil: votes.at,
    shifted: [opens, entries, ...(votes === entries ? [] : [votes])].filter(
      ({ shift }) => shift !== undefined,
    ),
  };
}

/** Reads `2026-11-20`. Throws a Refusal for anything else, and for a day that no calendar has. */
export function readDate(text: string): string {
  const found = /^\s*(\d{4})-(\d{1,2})-(\d{1,2})\s*$/.exec(text);
  if (!found) return refuse('challenge-date-unreadable', { text });
  const [, year = '', month = '', day = ''] = found;
  const date = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  startOfDay(date, 'UTC');
  return date;
}

function startOfDay(date: string, zone: string): number {
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  return instantOf({ year, month, day, hour: 0, minute: 0 }, zone).at;
}
