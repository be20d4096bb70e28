import type { Context } from '../../../src/conversation/context.ts';
import type { Attachment, Named } from '../../../src/conversation/question.ts';
import { calendarDay, startOfDay } from '../../../src/engine/challenges/day.ts';
import { readDeadline } from '../../../src/engine/challenges/deadline.ts';
import { readTargets } from '../../../src/engine/challenges/palette-written.ts';
import type { Constraint, Decides, EntryClass, Terms } from '../../../src/engine/challenges/terms.ts';
import type { Method } from '../../../src/engine/challenges/voting/election.ts';
import {
  daysLater,
  type Fixed,
  instantOf,
  isoDate,
  wallTimeAt,
} from '../../../src/engine/challenges/wall-time.ts';
import { zoneOfGroup } from '../lookup.ts';
import { drawnPalette, paletteOfPhoto } from './palette.ts';

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
      ...(madeFrom !== undefined && { madeFrom: isoDate(calendarDay(madeFrom)) }),
      ...(asked['cure-days'] !== undefined && { leastCureDays: asked['cure-days'] }),
      ...(joined !== undefined && { joinedBefore: startOfDay(calendarDay(joined), zone) }),
      ...(asked.quorum !== undefined && { quorum: asked.quorum }),
      anonymous: asked.anonymous ?? true,
      runningTotals: asked.totals ?? false,
    },
  };
}

async function paletteAsked({ palette, photo, random, seed, share }: OpenAsked, context: Context) {
  if (palette !== undefined) return { palette: readTargets(palette), seed: undefined };
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
