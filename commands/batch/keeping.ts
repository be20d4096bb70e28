import type { Context } from '../../src/conversation/context.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import { dateAt } from '../../src/engine/challenges/wall-time.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { plainReply } from '../../src/presenting/plain-reply.ts';
import {
  type Batch,
  findBatch,
  listBatches,
  listShared,
  noteEvent,
  photoOf,
} from '../../src/records/batches/index.ts';
import { clockOf, preferencesOf } from '../../src/records/preferences.ts';
import { undoChoice } from '../shelf/follow-ups.ts';
import { duesFor, nextDates } from './dates.ts';
import { dayAfterPour, dayOf } from './day.ts';
import { batchRow, batchView, dateView, portionView } from './view.ts';

export async function notedReply(
  asked: { readonly batch?: string | undefined; readonly text: string; readonly on?: string | undefined },
  context: Context,
): Promise<Reply> {
  const book = context.book;
  const batch = await findBatch(book, asked.batch);
  const at = await dayAfterPour(asked.on, batch, context);
  const noted = await noteEvent(
    book,
    batch,
    { kind: 'noted', text: asked.text.trim() },
    { at, now: context.change.at, cause: context.change.cause },
  );
  return {
    ...plainReply(context.say.batches.noteKept({ name: batch.name }), { batch: batch.id, noted }),
    choices: undoChoice({ repeated: !noted }, context.change.cause, context),
  };
}

/** One batch with its newest photo. */
export async function shownReply(
  asked: { readonly batch?: string | undefined },
  context: Context,
): Promise<Reply> {
  const book = context.book;
  const batch = await findBatch(book, asked.batch);
  const photo = await photoOf(book, batch.id);
  const extra: readonly Block[] = photo
    ? [
        {
          kind: 'picture',
          name: 'batch.jpg',
          png: photo,
          alt: context.say.batches.photoAlt({ name: batch.name }),
        },
      ]
    : [];
  return batchView(batch, context, extra);
}

export type ListAsked = {
  readonly colour?: string | undefined;
  readonly jar?: string | undefined;
  readonly since?: string | undefined;
  readonly shared?: boolean | undefined;
};

/** The member's batches, or those shown to the group; by colour, jar and date. */
export async function listReply(asked: ListAsked, context: Context): Promise<Reply> {
  const { say, store, asker, group } = context;
  const { zone } = clockOf(await preferencesOf(store, asker.id));
  const since = asked.since === undefined ? undefined : await dayOf(asked.since, context);
  const all = asked.shared ? await listShared(store, group) : await listBatches(context.book);
  const found = all.filter(batch => fits(batch, { ...asked, since }, say));
  const rows = found.slice(0, 25).map(batch => {
    const row = batchRow(batch, context, zone);
    return 'byName' in batch ? say.batches.byMaker({ row, by: String(batch.byName) }) : row;
  });
  const words = say.batches;
  const none = all.length === 0 ? (asked.shared ? words.noneShared : words.none) : words.noneFit;
  return plainReply(
    found.length === 0 ? none : words.count({ batches: found.length, all: all.length }),
    { batches: found.map(({ id, name, at }) => ({ id, name, at })) },
    [
      ...(rows.length > 0 ? [{ kind: 'rows' as const, rows }] : []),
      ...(found.length > rows.length
        ? [{ kind: 'text' as const, text: words.more({ count: found.length - rows.length }) }]
        : []),
    ],
  );
}

function fits(
  batch: Batch,
  {
    colour,
    jar,
    since,
  }: {
    readonly colour?: string | undefined;
    readonly jar?: string | undefined;
    readonly since: Date | undefined;
  },
  say: Context['say'],
): boolean {
  if (since && batch.at.getTime() < since.getTime() - 86_400_000 / 2) return false;
  const isIn = (texts: readonly string[], wanted: string) =>
    texts.some(text => fold(text).includes(fold(wanted)));
  const colours = batch.portions.flatMap(one => one.colours);
  if (
    jar !== undefined &&
    !isIn(
      colours.map(({ name }) => name),
      jar,
    )
  )
    return false;
  if (colour === undefined) return true;
  const seen = batch.portions.map((_, at) => portionView(batch, at, say));
  return isIn([...seen, ...colours.map(one => one.colourant)], colour);
}

/** What is due next over all batches; reminders of one of them on or off. */
export async function datesReply(
  asked: { readonly batch?: string | undefined; readonly remind?: boolean | undefined },
  context: Context,
): Promise<Reply> {
  const { say, store, asker, at: now, change } = context;
  const book = context.book;
  const clock = clockOf(await preferencesOf(store, asker.id));
  const words = say.batches;
  if (asked.remind !== undefined) {
    const batch = await findBatch(book, asked.batch);
    const kind = asked.remind ? 'resumed' : 'stopped';
    const also = asked.remind ? duesFor(batch, { clock, now }) : [];
    await noteEvent(book, batch, { kind }, { ...change, also });
    const name = { name: batch.name };
    return plainReply(asked.remind ? words.resumed(name) : words.stopped(name), {
      batch: batch.id,
      remind: asked.remind,
    });
  }
  const all = asked.batch === undefined ? await listBatches(book) : [await findBatch(book, asked.batch)];
  const dates = all
    .flatMap(batch => nextDates(batch, { clock, now }).map(date => ({ batch, ...date })))
    .sort((a, b) => a.at - b.at);
  const rows = dates
    .slice(0, 25)
    .map(({ batch, ...date }) =>
      words.dateOf({ name: batch.name, date: dateView(date, { zone: clock.zone, now }, say) }),
    );
  const [first] = dates;
  return plainReply(
    first
      ? words.nextUp({
          name: first.batch.name,
          what: words.stages[first.stage],
          date: dateAt(first.at, clock.zone),
        })
      : words.nothingDue,
    {
      dates: dates.map(({ batch, stage, at }) => ({
        batch: batch.id,
        stage,
        at: new Date(at).toISOString(),
      })),
    },
    rows.length > 0 ? [{ kind: 'rows', rows }] : [],
  );
}
