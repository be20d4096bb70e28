import type { Context } from '../../src/conversation/context.ts';
import type { Attachment } from '../../src/conversation/question.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { RETEST_AFTER, toldAt } from '../../src/engine/batch/curing/stages.ts';
import { parseWeights } from '../../src/engine/batch/curing/weight-loss.ts';
import { portionColours } from '../../src/engine/colour/measuring/portion-colours.ts';
import { parsePortionColours } from '../../src/engine/colour/reading/portion-colours-text.ts';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { learn } from '../../src/presenting/colour/learn.ts';
import {
  type Batch,
  batchOf,
  findBatch,
  isShared,
  keepPhoto,
  type Measured,
  noteEvent,
} from '../../src/records/batches/index.ts';
import type { LessonBar } from '../../src/records/batches/lessons.ts';
import { clockOf, kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { dueOf } from './dates.ts';
import { dayAfterPour } from './day.ts';
import { batchFollowUps } from './follow-ups.ts';
import { learntBlocks, lessonBars, turnedAround } from './lesson.ts';
import { curedHeadline, pairsBlocks, pairsData } from './pairs.ts';
import { smallPhoto } from './poured.ts';
import { dryingView, nextBlock } from './view.ts';

export type CuredAsked = {
  readonly batch?: string | undefined;
  readonly photo?: Attachment | undefined;
  readonly colours?: string | undefined;
  readonly weights?: string | undefined;
  readonly on?: string | undefined;
};

/** Error of a colour that was typed after looking, CIEDE2000 (from memory: naming and picking by eye scatter so). */
const TYPED_PLUS_MINUS = 3;
/** After so many days past the first reading a bar is looked at again: what changed is fading, not strength. */
const RETEST_FROM = 60 * 86_400_000;

/** Keeps that a batch is cured, measures its colours, and sets them beside what was foretold. */
export async function curedReply(asked: CuredAsked, context: Context): Promise<Reply> {
  const { say, store, asker, change } = context;
  const book = context.book;
  const found = await findBatch(book, asked.batch);
  const wishes = await preferencesOf(store, asker.id);
  const at = await dayAfterPour(asked.on, found, context);
  const grams = asked.weights === undefined ? undefined : parseWeights(asked.weights, kitchenOf(wishes));
  const photo = asked.photo && (await smallPhoto(asked.photo, context));
  const seen = await measuredIn(found, { ...asked, at }, context);
  const did = {
    kind: 'cured' as const,
    measured: [...seen.measured],
    ...(grams && { grams: [...grams] }),
    ...(seen.by && { by: seen.by }),
  };
  const shared = await isShared(book, found.group, found.id);
  const again = toldAt({ stage: 'retest', at: at.getTime() + RETEST_AFTER, exact: false }, clockOf(wishes));
  const also = shared && again > context.at ? [dueOf(found, 'retest', again)] : [];
  const noted = await noteEvent(book, found, did, { cause: change.cause, at, also });
  if (photo) await keepPhoto(book, found.id, { cause: change.cause, bytes: photo });
  const batch = await batchOf(book, found.id);
  const bars = lessonBars(batch, seen.measured);
  const taught = await taughtBy(batch, bars, context);
  const learnt = taught.jars;
  const notes = [
    ...(noted ? [] : [say.shelf.repeated]),
    ...seen.notes,
    ...dryingView(batch, say),
    ...(seen.measured.length === 0 && !asked.photo ? [say.batches.photoNext({ name: batch.name })] : []),
  ];
  return {
    kind: 'reply',
    headline: curedHeadline(batch, seen.measured, context),
    data: {
      batch: batch.id,
      measured: pairsData(batch, seen.measured),
      grams,
      noted,
      learnt: learnt.map(({ item, after, bars: count }) => ({
        item: item.id,
        name: item.name,
        after,
        bars: count,
      })),
    },
    blocks: [
      ...(await pairsBlocks(batch, seen.measured, context)),
      ...learntBlocks(batch, learnt, { measures: kitchenOf(wishes), say }),
      ...taught.doubts.map(is => ({ kind: 'text' as const, text: say.batches.oddBar[is], firm: true })),
      ...(notes.length > 0 ? [{ kind: 'text' as const, text: notes.join('\n') }] : []),
      ...nextBlock(batch, clockOf(wishes), context),
    ],
    cautions: [],
    ...(taught.doubts.length > 0 && {
      choices: [
        {
          kind: 'button',
          label: say.batches.teach,
          weight: 'plain',
          follow: batchFollowUps.teach.with({ batch: batch.id }),
        },
      ],
    }),
    ...(learnt.length > 0 && {
      choices: [
        {
          kind: 'button',
          label: say.batches.unlearn,
          weight: 'plain',
          follow: batchFollowUps.unlearn.with({ batch: batch.id }),
        },
      ],
    }),
  };
}

/** What clean bars teach of their jars; where a bar would teach the opposite of what it shows, nothing, until its maker says so. */
async function taughtBy(batch: Batch, bars: readonly LessonBar[], context: Context) {
  if (bars.length === 0) return { jars: [], doubts: [] };
  const doubts = new Set<'duller' | 'livelier'>();
  const { jars, kept } = await learn({ batch: batch.id, bars }, context, (bar, { predicted }) => {
    const is = turnedAround(batch, bar, predicted);
    if (is) doubts.add(is);
    return is !== undefined;
  });
  return { jars: kept ? jars : [], doubts: [...doubts] };
}

type Seen = {
  readonly measured: readonly Measured[];
  readonly by: 'photo' | 'words' | undefined;
  readonly notes: readonly string[];
};

/** The colours of the portions, as typed or as the photo shows them. */
async function measuredIn(
  batch: Batch,
  asked: CuredAsked & { readonly at: Date },
  context: Context,
): Promise<Seen> {
  const retest = isRetest(batch, asked.at);
  const clean = (portion: number, why?: Measured['unclean']): Pick<Measured, 'unclean'> => {
    const reason = why ?? (retest ? 'retest' : uncleanKind(batch, portion));
    return reason ? { unclean: reason } : {};
  };
  if (asked.colours !== undefined) {
    const named = batch.portions.map(({ name, colours }) => ({
      names: [name, ...(colours.length === 1 ? [colours[0]!.name] : [])],
    }));
    const read = parsePortionColours(asked.colours, named);
    const measured = read.map(({ portion, lab }) => ({
      portion,
      lab,
      plusMinus: TYPED_PLUS_MINUS,
      ...clean(portion),
    }));
    return { measured, by: 'words', notes: [] };
  }
  if (!asked.photo) return { measured: [], by: undefined, notes: [] };
  return await inPhoto(asked.photo, batch, clean, context);
}

async function inPhoto(
  photo: Attachment,
  batch: Batch,
  clean: (portion: number, why?: Measured['unclean']) => Pick<Measured, 'unclean'>,
  { workers, asker, say }: Context,
): Promise<Seen> {
  const bytes = await photo.read();
  const { colours, whiteReference } = await workers.run('photoColours', { bytes }, { owner: asker.id });
  const total = batch.portions.reduce((sum, { grams }) => sum + grams, 0);
  const sought = batch.portions.flatMap(({ predicted, grams }, at) =>
    predicted ? [{ at, predicted, share: grams / total }] : [],
  );
  const measured = portionColours(sought, colours).map(({ portion: place, lab, plusMinus, unsure }) => {
    const portion = sought[place]!.at;
    const why = whiteReference ? (unsure ? 'unsure' : undefined) : 'no-white';
    return { portion, lab, plusMinus, ...clean(portion, why) };
  });
  const words = say.batches;
  const notes = [
    whiteReference ? words.balanced : words.roughReading,
    ...(measured.some(({ unclean }) => unclean === 'unsure') ? [words.unsureWhich] : []),
    ...(measured.length < batch.portions.length
      ? [words.notFound({ found: measured.length, of: batch.portions.length })]
      : []),
  ];
  return { measured, by: 'photo', notes };
}

/** A portion without colour teaches nothing of jars, and what glows a camera cannot tell. */
function uncleanKind({ portions }: Batch, portion: number): Measured['unclean'] {
  const { colours } = portions[portion]!;
  if (colours.length === 0) return 'plain';
  return colours.some(({ colourant }) => colourantById(colourant)?.kind === 'neon') ? 'neon' : undefined;
}

function isRetest({ events }: Batch, at: Date): boolean {
  const first = events.find(({ did }) => did.kind === 'cured' && did.measured.length > 0);
  return first !== undefined && at.getTime() - first.at.getTime() >= RETEST_FROM;
}
