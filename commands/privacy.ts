import { z } from 'zod';
import { action, commandGroup, followUp } from '../src/conversation/command.ts';
import type { Context } from '../src/conversation/context.ts';
import { choice } from '../src/conversation/option.ts';
import type { Reply } from '../src/conversation/reply.ts';
import type { DeadlineActs, DeadlineServices } from '../src/conversation/unasked/deadline.ts';
import { refuse } from '../src/engine/refusal.ts';
import { HOUSE } from '../src/records/dues/dues.ts';
import { erase } from '../src/records/privacy/erase.ts';
import { exportPart, thingsOf } from '../src/records/privacy/export.ts';
import { type Topic, topics } from '../src/records/privacy/kinds.ts';
import { isBare, nightSweep } from '../src/records/privacy/night.ts';
import { retention, SWEEP, sweep, sweepDue } from '../src/records/privacy/retention.ts';
import { phrases } from '../src/words/declared.ts';

const says = phrases('privacy');

declare module '../src/engine/refusal.ts' {
  interface Reasons {
    'privacy-under-way': Record<never, never>;
  }
}

const everything = 'everything';
const isAsked = (what: string) => (topic: Topic) => what === everything || what === topic;

const eraseNow = followUp({
  seenBy: 'asker',
  pace: 'slow',
  hours: 1,
  args: { what: z.enum([everything, ...topics]) },
  async answer({ what }, { store, asker, say, lately }): Promise<Reply> {
    const erased = await alone(asker.id, () => erase(store, asker.id, { asked: isAsked(what) }));
    if (isAsked(what)('recent')) lately?.forget(asker.id);
    return {
      kind: 'reply',
      headline: say.privacy.erased({ records: erased.dropped }),
      data: { what, ...erased },
      blocks:
        erased.renamed > 0 ? [{ kind: 'text', text: say.privacy.stays({ records: erased.renamed }) }] : [],
      cautions: [],
    };
  },
});

/** Bytes of one file: the platform takes files of up to 10 MB. */
const MOST_BYTES = 8 * 1024 * 1024;

const more = followUp({
  seenBy: 'asker',
  pace: 'slow',
  hours: 1,
  args: { from: z.coerce.number<string>().int().nonnegative() },
  answer: ({ from }, context) => exported(from, context),
});

/** A part of all that is kept of the asker, from the record at `from` on, with the button for the next. */
async function exported(from: number, { store, asker, say, at, lately }: Context): Promise<Reply> {
  const made = new Date(at);
  // What is only remembered for a while goes along with the first part.
  const unwritten = from === 0 ? (lately?.of(asker.id, at) ?? []) : [];
  const { bytes, records, next } = await alone(asker.id, () =>
    exportPart(store, asker.id, { made, from, most: MOST_BYTES, unwritten }),
  );
  const isWhole = from === 0 && next === undefined;
  return {
    kind: 'reply',
    headline: isWhole
      ? say.privacy.exported({ records })
      : say.privacy.exportedPart({ from: from + 1, to: from + records, more: next !== undefined }),
    data: { records, from, ...(next !== undefined && { next }) },
    blocks: [
      {
        kind: 'file',
        name: isWhole ? 'about-me.json' : `about-me-from-${from + 1}.json`,
        bytes,
        mediaType: 'application/json',
      },
    ],
    cautions: [],
    ...(next !== undefined && {
      choices: [{ kind: 'button' as const, label: say.privacy.more, follow: more.with({ from: next }) }],
    }),
  };
}

const underWay = new Set<string>();

/** All records are looked through for one member: once at a time each. Throws a Refusal `privacy-under-way`. */
async function alone<Result>(member: string, work: () => Promise<Result>): Promise<Result> {
  if (underWay.has(member)) refuse('privacy-under-way', {});
  underWay.add(member);
  try {
    return await work();
  } finally {
    underWay.delete(member);
  }
}

async function shown({ store, asker, say }: Context): Promise<Reply> {
  const { things: counts, records } = await alone(asker.id, () => thingsOf(store, asker.id));
  return {
    kind: 'reply',
    headline: say.privacy.kept({ records }),
    data: { counts, records, retentionDays: retention },
    blocks: [
      {
        kind: 'rows',
        rows: topics.map(topic =>
          say.privacy.row({
            name: say.privacy.topics[topic],
            records: counts[topic],
            until: say.privacy.until[topic],
          }),
        ),
      },
      { kind: 'text', text: say.privacy.notesBeside },
      { kind: 'text', text: say.privacy.leaving({ days: retention.left }) },
      { kind: 'text', text: say.privacy.next },
    ],
    cautions: [],
  };
}

function acts({ store, outbox, now }: DeadlineServices): DeadlineActs {
  return {
    [SWEEP]: async ({ group }) => {
      const at = new Date(now());
      if (group === HOUSE) {
        await nightSweep({ store, now: at, isBack: left => outbox.serves(left) });
        return void (await store.commit([sweepDue(group, at)]));
      }
      const { hasMember } = outbox;
      if (hasMember)
        await sweep({ store, group, now: at, hasMember: (member, where) => hasMember(where, member) });
      // Where nothing is kept any more nobody has to look; what is kept anew sets the next look.
      if (!(await isBare(store, group))) await store.commit([sweepDue(group, at)]);
    },
  };
}

export default commandGroup(
  'privacy',
  says.purpose,
  {
    show: action({
      purpose: says.show.purpose,
      seenBy: 'asker',
      pace: 'slow',
      options: {},
      answer: (_, context) => shown(context),
    }),
    export: action({
      purpose: says.export.purpose,
      seenBy: 'asker',
      pace: 'slow',
      options: {},
      answer: (_, context) => exported(0, context),
    }),
    erase: action({
      purpose: says.erase.purpose,
      seenBy: 'asker',
      options: {
        what: choice(says.erase.what),
      },
      answer({ what }, { say }): Reply {
        return {
          kind: 'reply',
          headline: say.privacy.sure({ name: what === everything ? undefined : say.privacy.topics[what] }),
          data: { what },
          blocks: isAsked(what)('challenges') ? [{ kind: 'text', text: say.privacy.mustStay }] : [],
          cautions: [],
          choices: [
            {
              kind: 'button',
              label: say.privacy.eraseButton,
              weight: 'danger',
              follow: eraseNow.with({ what }),
            },
          ],
        };
      },
    }),
  },
  { followUps: { eraseNow, more }, deadlines: acts },
);
