import { z } from 'zod';
import { action, followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { text } from '../../src/conversation/option.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import * as flaws from '../../src/records/flaws/index.ts';
import { phrases } from '../../src/words/declared.ts';
import { zipped } from './zip.ts';

const says = phrases('flaws');

/** Bytes of pictures in one file: the platform takes files of up to 10 MB. */
const MOST_BYTES = 8 * 1024 * 1024;

const more = followUp({
  seenBy: 'asker',
  access: 'steward',
  pace: 'slow',
  hours: 1,
  args: { from: z.coerce.number<string>().int().nonnegative() },
  answer: ({ from }, context) => setFrom(from, context),
});

const takeAllBack = followUp({
  seenBy: 'asker',
  replaces: true,
  hours: 1,
  args: {},
  async answer(_, context): Promise<Reply> {
    const taken = await flaws.takePicturesBack(context, context.asker.id);
    const headline = context.say.flaws.pictures.takenBack({ count: taken });
    return { kind: 'reply', headline, data: { taken }, blocks: [], cautions: [] };
  },
});

/** A part of the set as an archive: the pictures, and a line of JSON for each. */
async function setFrom(from: number, context: Context): Promise<Reply> {
  const { pictures, next } = await flaws.labelledSet(context, { from, most: MOST_BYTES });
  const say = context.say.flaws.pictures;
  if (pictures.length === 0)
    return { kind: 'reply', headline: say.none, data: { pictures: 0 }, blocks: [], cautions: [] };
  const part = `from-${String(from + 1).padStart(3, '0')}`;
  const lines = pictures.map(({ name, cause, width, height }) =>
    JSON.stringify({ file: `${name}.jpg`, cause, width, height }),
  );
  const bytes = zipped([
    { name: `labels-${part}.jsonl`, bytes: new TextEncoder().encode(`${lines.join('\n')}\n`) },
    ...pictures.map(({ name, jpeg }) => ({ name: `${name}.jpg`, bytes: jpeg })),
  ]);
  return {
    kind: 'reply',
    headline: say.exported({ count: pictures.length, from: from + 1 }),
    data: { pictures: pictures.length, from, ...(next !== undefined && { next }) },
    blocks: [
      { kind: 'file', name: `bars-${part}.zip`, bytes, mediaType: 'application/zip' },
      { kind: 'text', text: say.exportedNote },
    ],
    cautions: [],
    ...(next !== undefined && {
      choices: [{ kind: 'button' as const, label: say.more, follow: more.with({ from: next }) }],
    }),
  };
}

/** The member's own, with the button that takes them back. */
async function own(context: Context): Promise<Reply> {
  const causes = await flaws.picturesOf(context, context.asker.id);
  const { pictures: say, causes: names, somethingElse } = context.say.flaws;
  const name = (cause: flaws.Outcome) => (cause === 'something-else' ? somethingElse : names[cause].name);
  return {
    kind: 'reply',
    headline: say.own({ count: causes.length }),
    data: { causes },
    blocks: causes.length > 0 ? [{ kind: 'rows', rows: causes.map(name) }] : [],
    cautions: [],
    ...(causes.length > 0 && {
      choices: [
        {
          kind: 'button' as const,
          weight: 'danger' as const,
          label: say.takeAllBack,
          follow: takeAllBack.with({}),
        },
      ],
    }),
  };
}

export const pictureActions = {
  given: action({
    purpose: says.given.purpose,
    seenBy: 'asker',
    options: {},
    answer: (_, context) => own(context),
  }),
  pictures: action({
    purpose: says.pictures.purpose,
    seenBy: 'asker',
    access: 'steward',
    pace: 'slow',
    options: {},
    answer: (_, context) => setFrom(0, context),
  }),
  drop: action({
    purpose: says.drop.purpose,
    seenBy: 'asker',
    access: 'steward',
    options: {
      file: text(says.drop.file, { most: 60 }),
    },
    async answer({ file }, context): Promise<Reply> {
      const cause = await flaws.dropPicture(context, file);
      const { pictures: say, causes, somethingElse } = context.say.flaws;
      const name = cause === 'something-else' ? somethingElse : causes[cause].name;
      return { kind: 'reply', headline: say.dropped({ name }), data: { cause }, blocks: [], cautions: [] };
    },
  }),
};

export const pictureFollowUps = { more, takeAllBack };
