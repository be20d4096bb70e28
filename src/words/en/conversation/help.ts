import { spaced } from '../../../engine/over-lines.ts';
import type { ReasonId } from '../../../engine/refusal.ts';
import { capital, midSentence } from '../../../engine/text/capital.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { type Explained, terms } from './glossary.ts';

/** What people come for; each leads to the command that does it. */
const jobs = {
  dose: { name: 'How much colour?', says: 'spoons, and how to wet it', topic: 'dose' },
  colour: { name: 'See a colour', says: 'before you pour', topic: 'preview' },
  plan: { name: 'Plan a batch', says: 'lye, water, portions, heat', topic: 'plan' },
  trouble: { name: 'What went wrong?', says: 'in words or by photo', topic: 'diagnose' },
  keep: { name: 'My shelf', says: 'what you have, how it behaves', topic: 'shelf' },
};

/** Cautions, under the words they are looked for by. */
const cautions: Readonly<Record<'lye' | 'rawBatter' | 'dust' | 'heat' | 'metal', Explained>> = {
  lye: {
    name: 'lye',
    means: 'Burns skin and eyes.',
    more: spaced`
      Sealed goggles, gloves, long sleeves. Slowly into cold water, never water onto lye; strong draught;
      no aluminium. In the eyes: rinse at once, 30 minutes, get help. No vinegar.
    `,
  },
  rawBatter: {
    name: 'raw batter',
    means: 'Burns skin and eyes for a day or two, washing-up included: gloves and goggles.',
  },
  dust: {
    name: 'dust',
    means: 'Don’t breathe powders: no draught, dust mask on, powder under the liquid before any power.',
  },
  heat: {
    name: 'heat',
    means: 'A loaf can reach 85 °C (185 °F) and heave.',
    more: 'Watch it in the first hours; cool it when it bulges.',
  },
  metal: {
    name: 'metal in soap',
    means: 'Aluminium, zinc and copper flakes never go in: aluminium and lye make hydrogen, which burns.',
  },
};

export const help = {
  headline: 'Ask me in your own words, or pick a job.',
  job: (v: { name: string; topic: string; says: string }) => `${v.name} /${v.topic}: ${v.says}`,
  jobs,
  /** The meaning of a word of the trade first: “Trace: the moment …”. */
  meaning: ({ name, means }: { name: string; means: string }) => `${capital(name)}: ${midSentence(means)}`,
  terms: terms as Readonly<Record<keyof typeof terms, Explained>>,
  cautions,
  /** Lines to try a command with. */
  examples: {
    dose: '/dose colourant:"ultramarine blue" portion:"2 cups"',
    preview: '/preview mix:"ultramarine blue + titanium dioxide"',
    match: '/match target:teal portion:"1 cup"',
    plan: '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups ultramarine blue; rest plain"',
    diagnose: '/diagnose words:"blue specks all over, no zap"',
    ask: '/ask question:"how much ultramarine for 2 cups?"',
  },
  tryIt: 'Try it',
  row: (v: { name: string; purpose: string; subcommands: readonly string[] }) =>
    `/${v.name}: ${v.purpose}${v.subcommands.length > 0 ? ` (${v.subcommands.join(', ')})` : ''}`,
  start: '/help topic: explains any command, word or caution.',
  lye: 'Raw soap and lye burn. Gloves and goggles on, children and pets away; nothing here replaces a tested recipe or your local rules.',
  lyeBrief: 'Raw soap and lye burn: gloves and goggles. Hurt? /first-aid',
};

export type HelpReason = Extract<ReasonId, `topic-${string}`>;

export const helpRefusals: Pick<RefusalSentences, HelpReason> = {
  'topic-unknown': ({ text, nearest }) =>
    `I have nothing to explain under “${text}”.${nearest.length > 0 ? ` Did you mean ${nearest.join(', ')}?` : ''}`,
};
