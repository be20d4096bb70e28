import { z } from 'zod';
import { followUp } from '../../src/conversation/command.ts';
import { DAY, nextHour, STAGES } from '../../src/engine/batch/curing/stages.ts';
import { learn, unlearn as takeBack } from '../../src/presenting/colour/learn.ts';
import { plainReply } from '../../src/presenting/plain-reply.ts';
import { pourUndone } from '../../src/presenting/pour-undone.ts';
import { batchOf, newest, noteEvent } from '../../src/records/batches/index.ts';
import { clockOf, kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { dueOf } from './dates.ts';
import { learntBlocks, lessonBars } from './lesson.ts';

const HOUR = 3_600_000;
/** Reminders may be answered for two weeks: some mail is read late. */
const LATE_READERS = 14 * 24;

/** Takes a pour back, and puts on the shelf what it took. */
const undo = followUp({
  seenBy: 'asker',
  hours: 48,
  args: { batch: z.string() },
  answer: ({ batch: id }, context) => pourUndone(id, context),
});

const about = { batch: z.string(), stage: z.enum(STAGES) };

const done = followUp({
  for: 'group',
  seenBy: 'asker',
  hours: LATE_READERS,
  args: about,
  async answer({ batch: id, stage }, context) {
    const { say, change } = context;
    const batch = await batchOf(context.book, id);
    const did =
      stage === 'cut'
        ? ({ kind: 'cut' } as const)
        : stage === 'cured'
          ? ({ kind: 'cured', measured: [] } as { kind: 'cured'; measured: [] })
          : ({ kind: 'done', stage } as const);
    const noted = await noteEvent(context.book, batch, did, change);
    return plainReply(
      say.batches.doneNoted({ name: batch.name, what: say.batches.stages[stage] }),
      { batch: id, stage, noted },
      stage === 'cured' ? [{ kind: 'text', text: say.batches.photoNext({ name: batch.name }) }] : [],
    );
  },
});

/** The heat is hottest now, so later is within the hour; everything else waits for another day. */
const later = followUp({
  for: 'group',
  seenBy: 'asker',
  hours: LATE_READERS,
  args: about,
  async answer({ batch: id, stage }, context) {
    const { say, change, at, store, asker } = context;
    const batch = await batchOf(context.book, id);
    const clock = clockOf(await preferencesOf(store, asker.id));
    const until = stage === 'heat' ? at + HOUR : nextHour(at + DAY / 2, clock);
    const did = { kind: 'put-off', stage, until: new Date(until) } as const;
    const also = [dueOf(batch, stage, until)];
    await noteEvent(context.book, batch, did, { ...change, also });
    return plainReply(say.batches.putOff({ what: say.batches.stages[stage], at: until, zone: clock.zone }), {
      batch: id,
      stage,
      until,
    });
  },
});

const stop = followUp({
  for: 'group',
  seenBy: 'asker',
  hours: LATE_READERS,
  args: { batch: z.string() },
  async answer({ batch: id }, context) {
    const { say, change } = context;
    const batch = await batchOf(context.book, id);
    await noteEvent(context.book, batch, { kind: 'stopped' }, change);
    return plainReply(say.batches.stopped({ name: batch.name }), { batch: id });
  },
});

/** Takes back what a cured batch taught: a photo may have been of another bar. */
const unlearn = followUp({
  seenBy: 'asker',
  pace: 'slow',
  hours: LATE_READERS,
  args: { batch: z.string() },
  async answer({ batch: id }, context) {
    const { say } = context;
    const jars = await takeBack(id, context);
    const names = jars.map(({ item }) => item.name);
    return plainReply(names.length > 0 ? say.batches.unlearnt({ names }) : say.batches.unlearntBefore, {
      batch: id,
      jars: names,
    });
  },
});

/** Learns from a cured batch whose bars were doubted: its maker knows that it was that jar, that dose, by daylight. */
const teach = followUp({
  seenBy: 'asker',
  pace: 'slow',
  hours: LATE_READERS,
  args: { batch: z.string() },
  async answer({ batch: id }, context) {
    const { say, store, asker } = context;
    const batch = await batchOf(context.book, id);
    const bars = lessonBars(batch, newest(batch, 'cured')?.did.measured ?? []);
    const { jars } = await learn({ batch: id, bars }, context);
    const measures = kitchenOf(await preferencesOf(store, asker.id));
    return {
      ...plainReply(say.batches.taught({ name: batch.name }), {
        batch: id,
        jars: jars.map(({ item }) => item.name),
      }),
      blocks: learntBlocks(batch, jars, { measures, say }),
      choices: [
        {
          kind: 'button',
          label: say.batches.unlearn,
          weight: 'plain',
          follow: unlearn.with({ batch: id }),
        },
      ],
    };
  },
});

export const batchFollowUps = { undo, done, later, stop, unlearn, teach };
