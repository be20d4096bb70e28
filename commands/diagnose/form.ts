import { followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Follow } from '../../src/conversation/follow-ups/follow.ts';
import type { Attachment } from '../../src/conversation/question.ts';
import type { Form, Reply } from '../../src/conversation/reply.ts';
import { FINDINGS, type FindingId } from '../../src/engine/flaws/findings.ts';
import { refuse } from '../../src/engine/refusal.ts';

/** What a bar is judged by. */
export type Description = {
  readonly words: string;
  readonly photos: readonly Attachment[];
  readonly recipe?: string | undefined;
};

export const isFinding = (id: string): id is FindingId => Object.hasOwn(FINDINGS, id);

/** What makers come with most, in the order of a look over the bar. */
const TICKED: readonly FindingId[] = [
  'powdery-film',
  'coloured-specks',
  'white-specks',
  'crackle-network',
  'translucent-veins',
  'crack-on-top',
  'brittle-crumbly',
  'turned-brown',
  'colour-bled',
  'liquid-pockets',
];

/** What was ticked, in the words that stood there. */
const tickedWords = (sent: unknown, { say }: Context): string =>
  typeof sent !== 'string'
    ? ''
    : sent
        .split(' ')
        .filter(isFinding)
        .map(finding => say.flaws.findings[finding])
        .join(', ');

/** What came back from the form: what was ticked, the words, a photo. */
export const described = (open: (description: Description, context: Context) => Promise<Reply>) =>
  followUp({
    seenBy: 'group',
    pace: 'slow',
    args: {},
    answer(_args, context, { fields: { words, photo, seen } }) {
      const photos = typeof photo === 'object' && 'read' in photo ? [photo] : [];
      const said = [tickedWords(seen, context), typeof words === 'string' ? words : '']
        .filter(part => part.trim() !== '')
        .join('. ');
      if (said.trim() === '' && photos.length === 0) refuse('flaw-nothing-given', {});
      return open({ words: said, photos }, context);
    },
  });

/** Asks what is wrong with the bar where nothing was said of it. */
export const describeForm = ({ say }: Context, follow: Follow): Form => ({
  kind: 'form',
  title: say.flaws.form.title,
  fields: [
    {
      kind: 'several',
      name: 'seen',
      label: say.flaws.form.seen,
      required: false,
      items: TICKED.map(finding => ({ label: say.flaws.findings[finding], value: finding })),
    },
    { kind: 'paragraph', name: 'words', label: say.flaws.form.words, required: false, most: 4000 },
    { kind: 'picture', name: 'photo', label: say.flaws.form.photo, required: false },
  ],
  follow,
});
