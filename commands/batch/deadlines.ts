import type { Choice, Reply } from '../../src/conversation/reply.ts';
import type { DeadlineAct, DeadlineActs, DeadlineServices } from '../../src/conversation/unasked/deadline.ts';
import {
  DAY,
  isInTime,
  nextWeek,
  RETEST_AFTER,
  STAGES,
  type Stage,
  TURN_EVERY,
} from '../../src/engine/batch/curing/stages.ts';
import { dryingOf } from '../../src/engine/batch/curing/weight-loss.ts';
import {
  type Batch,
  type BatchBook,
  isDone,
  isShared,
  isStopped,
  newest,
  noteEvent,
  readBatch,
  reminderOf,
  weighingsOf,
} from '../../src/records/batches/index.ts';
import type { Due } from '../../src/records/dues/dues.ts';
import { clockOf, preferencesOf } from '../../src/records/preferences.ts';
import { type Words, wordsIn } from '../../src/words/index.ts';
import { dueName, dueOf, lastTold } from './dates.ts';
import { batchFollowUps } from './follow-ups.ts';

/** What to tell a maker when a time has come: each once, in private, and safe to do again. */
export function batchActs(services: DeadlineServices): DeadlineActs {
  return Object.fromEntries(
    STAGES.map((stage): [string, DeadlineAct] => [dueName(stage), due => remind(services, stage, due)]),
  );
}

async function remind(services: DeadlineServices, stage: Stage, due: Due): Promise<void> {
  const { store, now, onBarred } = services;
  const member = await reminderOf(store, due.group, due.id);
  if (member === undefined) return;
  const book: BatchBook = { store, member };
  const batch = await readBatch(book, due.id);
  if (!batch || isStopped(batch) || !(await isWanted(book, batch, { stage, due }))) return;
  const cause = `told-${stage}-${due.at.getTime()}`;
  if (batch.events.some(event => event.cause === cause)) return;
  const at = new Date(now());
  const also = await following(book, batch, { stage, due, now: now() });
  if (isInTime(stage, due.at.getTime(), now())) {
    const language = (await preferencesOf(store, member)).language ?? batch.language;
    const place = { group: due.group, channel: '', language };
    const reply = reminderReply(batch, stage, wordsIn(language));
    // Between sending and noting it down a crash leaves us not knowing: the nonce makes a second message the same one.
    const nonce = nonceOf(stage, due);
    const told = await services.outbox.tell?.(member, place, reply, nonce);
    if (told === 'barred') onBarred?.({ group: due.group, channel: '', what: due.what });
  }
  await noteEvent(book, batch, { kind: 'told', stage, due: due.at }, { cause, at, also });
}

/** At most 25 characters: the stage, the batch, and the minute it was due. */
const nonceOf = (stage: Stage, { id, at }: Due): string =>
  `${stage[0]}${id.slice(-14)}${Math.floor(at.getTime() / 60_000).toString(36)}`.slice(0, 25);

/** What has been done, or has no sense any more, nobody is reminded of. */
async function isWanted(
  book: BatchBook,
  batch: Batch,
  { stage, due }: { readonly stage: Stage; readonly due: Due },
): Promise<boolean> {
  if (stage === 'retest') {
    const last = newest(batch, 'cured')?.at.getTime() ?? 0;
    // Looked at again since: three months count from then.
    const isDue = due.at.getTime() - last >= RETEST_AFTER - DAY / 2;
    return isDue && (await isShared(book, batch.group, batch.id));
  }
  if (newest(batch, 'cured')) return false;
  if (stage === 'turn' && isTooSoon(batch, due)) return false;
  return !isDone(batch, stage);
}

/** Turned within the week already, after the last was put off for a day: that one's own week counts. */
function isTooSoon(batch: Batch, { at }: Due): boolean {
  const isPutOffTo = batch.events.some(
    ({ did }) => did.kind === 'put-off' && did.stage === 'turn' && did.until.getTime() === at.getTime(),
  );
  const last = lastTold(batch);
  return !isPutOffTo && last !== undefined && at.getTime() - last < TURN_EVERY - DAY / 2;
}

/**
 * Bars are turned week by week until they are cured; what still loses weight is looked at again in a week. A week from when it
 * is told, however late: two in one week are a nuisance.
 */
async function following(
  { store, member }: BatchBook,
  batch: Batch,
  { stage, due, now }: { readonly stage: Stage; readonly due: Due; readonly now: number },
) {
  const clock = clockOf(await preferencesOf(store, member));
  const inAWeek = () => nextWeek({ stage, due: due.at.getTime(), now }, clock);
  if (stage === 'turn') {
    const until = batch.at.getTime() + batch.cure.high * DAY;
    return inAWeek() < until ? [dueOf(batch, 'turn', inAWeek())] : [];
  }
  const drying = dryingOf(weighingsOf(batch));
  return stage === 'cured' && drying && !drying.cured ? [dueOf(batch, 'cured', inAWeek())] : [];
}

/** What to do now, in a line, with "done", "later" and "stop". */
export function reminderReply(batch: Batch, stage: Stage, say: Words): Reply {
  const words = say.batches;
  const drying = stage === 'cured' ? dryingOf(weighingsOf(batch)) : undefined;
  const headline =
    drying && !drying.cured
      ? words.stillLosing({ name: batch.name, percent: 100 * drying.weeklyLoss })
      : words.reminders[stage]({ name: batch.name, peakC: batch.peak?.celsius });
  const args = { batch: batch.id, stage };
  const button = (
    label: string,
    follow: Extract<Choice, { kind: 'button' }>['follow'],
    isMain = false,
  ): Choice => ({
    kind: 'button',
    label,
    weight: isMain ? 'main' : 'plain',
    follow,
  });
  return {
    kind: 'reply',
    headline,
    data: { batch: batch.id, stage },
    blocks: [{ kind: 'text', text: words.how[stage] }],
    cautions:
      stage === 'heat' || stage === 'unmould' || stage === 'cut'
        ? [{ id: 'raw-soap', text: words.rawCaution }]
        : [],
    choices: [
      button(words.done, batchFollowUps.done.with(args), true),
      button(words.later, batchFollowUps.later.with(args)),
      button(words.stop, batchFollowUps.stop.with({ batch: batch.id })),
    ],
  };
}
