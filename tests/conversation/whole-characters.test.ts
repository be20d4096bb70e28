import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import type { Given } from '../../src/conversation/question.ts';
import { receive } from '../../src/conversation/receive.ts';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import { modalOf } from '../../src/discord/form.ts';
import { payloadOf, problemPayload } from '../../src/discord/render.ts';
import { openStore } from '../../src/records/open.ts';
import { wordsIn } from '../../src/words/index.ts';
import { PATIENT } from '../records/patience.ts';
import { drawn } from '../walk.ts';
import { sharedWorkers } from '../workers/shared.ts';

const registry = await readCommands(new URL('../../commands/', import.meta.url));
let conversation: Conversation;
beforeAll(async () => {
  const services = { store: await openStore('sqlite::memory:', PATIENT), workers: sharedWorkers() };
  const onFault = (fault: unknown) => {
    throw fault;
  };
  conversation = { registry, services, key: new Uint8Array(32), onFault };
});
afterAll(async () => {
  await conversation.services.workers.close();
  await conversation.services.store.close();
});

let asked = 0;
async function shown(path: string, given: Given): Promise<string> {
  asked += 1;
  const answer = await receive(
    {
      id: String(1_000_000 + asked),
      at: 1_700_000_000_000 + asked,
      asker: { id: '1', name: 'Bram', manages: true, roles: [] },
      group: '2',
      channel: '3',
      language: 'en',
      kind: 'command',
      path: path.split(' '),
      given,
    },
    conversation,
  );
  if (answer.kind === 'form') return JSON.stringify(modalOf(answer));
  const payload = answer.kind === 'problem' ? problemPayload(answer) : payloadOf(answer, wordsIn('en'));
  return JSON.stringify(payload.components);
}

/** JSON writes half a character as an escape of its own. */
const halves = (json: string) => json.match(/\\ud[89a-f][0-9a-f]{2}/gu);

/** Something that each option takes, so that the one that is tried is what is looked at. */
const USUAL: Readonly<Record<string, string>> = {
  colourant: 'gold mica',
  portion: '2 cups',
  item: 'gold mica',
  jar: 'gold mica',
  oils: 'olive 70%, coconut 30%',
  size: '500 g oils',
  recipe: 'olive 70%, coconut 30%',
  colours: 'gold mica 1 tsp',
  target: '#3366aa',
  mould: '25x9x7 cm',
  ingredients: 'mica, CI 77491',
  title: 'Dusk',
  made: 'gold mica 1 tsp',
  words: 'white crumbs',
  question: 'how much gold mica for 2 cups?',
};
const texts = [...registry.actions].flatMap(([path, { options }]) =>
  options.filter(({ kind }) => kind === 'text').map(option => ({ path, options, option })),
);

/** A face takes two code units: cut at any even place before it, at any odd place in it, or the other way round. */
const STARTS = [
  ['', 'a'],
  ['5 tsp ', '20 g '],
] as const;

test.each(texts)(
  '/$path with faces in $option.name halves none of them',
  async ({ path, options, option: { name, most = 4000 } }) => {
    const others = Object.fromEntries(
      options.flatMap(({ name: other, kind, required, choices, least }) => {
        if (other === name) return [];
        if (kind === 'text') return required || USUAL[other] ? [[other, USUAL[other] ?? 'one']] : [];
        if (!required) return [];
        return [[other, kind === 'choice' ? choices?.[0]?.value : kind === 'yes-no' ? true : least]];
      }),
    ) as Given;
    for (const start of drawn(STARTS, 1, `${path} ${name}`).flat()) {
      const faces = '😀'.repeat(Math.min(200, Math.floor((most - start.length) / 2)));
      expect(halves(await shown(path, { ...others, [name]: `${start}${faces}` }))).toBeNull();
    }
  },
);

test.each(['', 'a'])(
  'names that are kept (“%s…”) are shown whole in lists, buttons and forms',
  async start => {
    const name = (most: number) => `${start}${'😀'.repeat(Math.floor(most / 2) - 1)}`;
    await shown('shelf add', { name: name(60), colourant: 'gold mica', amount: '20 g' });
    await shown('recipe save', { name: name(60), oils: 'olive 70%, coconut 30%', size: '500 g oils' });
    await shown('batch poured', { name: name(60), made: `${name(60)} 1 tsp`, size: '500 g oils' });
    await shown('challenge open', { title: name(60) });
    const all = [
      await shown('shelf list', {}),
      await shown('shelf show', { item: name(60) }),
      await shown('recipe list', {}),
      await shown('batch list', {}),
      await shown('challenge list', {}),
      await shown('dose', { colourant: name(60), portion: '2 cups' }),
      await shown('match', { target: '#b8860b', portion: '1 cup' }),
    ].join('\n');
    expect(all).toContain('😀');
    expect(halves(all)).toBeNull();
  },
);
