import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Conversation } from '../../../../src/conversation/conversation.ts';
import { answerTo } from '../../../../src/engine/questions/technique/answer-to.ts';
import { LED_TO } from '../../../../src/engine/questions/technique/beside.ts';
import { isMatter, isTechnique } from '../../../../src/engine/questions/technique/topic.ts';
import { askLine } from '../../../../src/terminal/seat.ts';
import { type OrdinaryQuestion, ordinarySets } from '../../../engine/questions/technique/ordinary.ts';
import { openConversation } from '../../../sets/open-conversation.ts';
import { drawn } from '../../../walk.ts';

/*
 * Seven hands' ordinary questions, as they come all day, labelled by another hand with the matter or the job whose answer would be the best
 * first one. How many reach it may not fall; what each set was judged as when it was asked for the first time stands in its file.
 */

/** So many of each set reached what they are labelled with. */
const LEAST: Readonly<Record<string, number>> = {
  auckland: 139,
  barbershop: 183,
  brisbane: 132,
  'dye-works': 180,
  lifeguard: 137,
  midlands: 176,
  tasmania: 135,
};

/** The commands' jobs that answer what a label of a job asks. */
const OF_JOB: Readonly<Record<string, readonly string[]>> = {
  // What each part of a shared batch takes is a plan that is answered with doses.
  dose: ['dose', 'plan'],
  survives: ['survives-lye', 'law'],
  law: ['law', 'survives-lye'],
  palette: ['mix'],
  shelf: ['shelf', 'shelf-add', 'shelf-use', 'shelf-show'],
};
const OF_SAFETY: ReadonlySet<string> = new Set(['first-aid', 'lye-care']);

type Understood = Partial<Record<'technique' | 'named' | 'lye' | 'job' | 'outside' | 'chat', string>> & {
  readonly askedBack?: boolean;
};

/** What is said near lye where a matter is only led there, or one of its parts is. */
function isLedTo(label: string, lye: string | undefined, text: string): boolean {
  if (lye === undefined || !isTechnique(label)) return false;
  const to = answerTo(label, text);
  return (
    ('lye' in to && to.lye === lye) || (Object.hasOwn(LED_TO, label) && NEAR[label]?.includes(lye) === true)
  );
}
/** Answers near lye to what is asked in the words of these matters. */
const NEAR: Readonly<Record<string, readonly string[]>> = {
  'goggles-gloves': ['gear', 'no-goggles'],
  'lye-cloudy': ['undissolved-lye', 'cloudy-lye'],
  'kitchen-tools': ['aluminium', 'vessel', 'back-to-food', 'mould-stuff'],
};
/** Answers of their own that say first what these jobs are asked for. */
const SAYS_SO: Readonly<Record<string, readonly string[]>> = {
  wet: ['titanium-which', 'titanium-oil-kind', 'titanium-water-kind'],
  'lye-care': ['zap-how'],
  diagnose: ['purple-turned', 'plants-browned'],
};
const BESIDE_LYE: Readonly<Record<string, string>> = { 'vanilla-brown': 'vanillin', 'powder-dust': 'dust' };

function reached(
  { label, text }: OrdinaryQuestion,
  { headline, data }: { readonly headline: string; readonly data: object },
): boolean {
  const { understood = {}, emergency } = data as { understood?: Understood; emergency?: object };
  const { technique, named = '', lye, job = '', outside, askedBack } = understood;
  const [, asked] = label.split('job:');
  if (asked !== undefined) {
    if (SAYS_SO[asked]?.includes(named)) return true;
    if (OF_SAFETY.has(asked)) return emergency !== undefined || lye !== undefined;
    return asked === 'lye' ? lye !== undefined || job === 'lye' : (OF_JOB[asked] ?? [asked]).includes(job);
  }
  if (label === 'chat') return outside === 'other' && !/outside my field|fuera de mi campo/u.test(headline);
  if (label === 'vague-trouble') return askedBack === true;
  return (
    technique === label ||
    isLedTo(label, lye, text) ||
    (lye !== undefined && BESIDE_LYE[label] === lye) ||
    (label === 'what-is-trace' && job === 'term')
  );
}

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
});

const sets = ordinarySets();

test('each set is of another hand, and every label is a matter, a job or a follow-up', () => {
  expect(sets.map(({ name }) => name)).toEqual(Object.keys(LEAST));
  const odd = sets.flatMap(({ questions }) =>
    questions.filter(({ label }) => !isMatter(label) && !/^(?:job:[a-z-]+|follow-up|none)$/u.test(label)),
  );
  expect(odd).toEqual([]);
  expect(sets.find(({ name }) => name === 'lifeguard')?.judgedFirst).toEqual({
    good: 59,
    useful: 23,
    asks: 2,
    useless: 55,
    wrong: 11,
    harmful: 0,
  });
});

test.each(drawn(sets, 1, 'ordinary'))(
  '$name: no fewer reach what they ask',
  { timeout: 300_000 },
  async ({ name, questions }) => {
    // What leans on an earlier message, and what is about nothing here, has nothing to reach.
    const asked = questions.filter(({ label }) => label !== 'follow-up' && label !== 'none');
    const missed: string[] = [];
    for (const [at, question] of asked.entries()) {
      const seat = {
        member: `asker${at}`,
        group: 'ordinary',
        language: 'en' as const,
        manages: false,
        roles: [],
      };
      const { answer } = await askLine(`/ask question:${JSON.stringify(question.text)}`, seat, conversation);
      if (
        answer.kind !== 'reply' ||
        !reached(question, { headline: answer.headline, data: answer.data as object })
      )
        missed.push(`${question.label}: ${question.text}`);
    }
    console.info(`${name}: ${asked.length - missed.length} of ${asked.length}\n${missed.join('\n')}`);
    expect(asked.length - missed.length).toBeGreaterThanOrEqual(LEAST[name]!);
  },
);
