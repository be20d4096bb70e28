import { describe, expect, it, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { seal } from '../../src/conversation/follow-ups/follow.ts';
import type { Attachment, Given, Question } from '../../src/conversation/question.ts';
import { receive } from '../../src/conversation/receive.ts';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import { sharedWorkers } from '../workers/shared.ts';
import { emptyStore } from './empty-store.ts';

/* Nobody signs what a form sends: a field that is not there, or is something else, is told in one sentence. */

const registry = await readCommands(new URL('../../commands/', import.meta.url));
const at = Date.UTC(2026, 5, 1);
const asker = { id: '701', name: 'Bram', manages: true, roles: [] };
const group = '501';

async function send(name: string, args: readonly string[], fields: Given) {
  const faults: unknown[] = [];
  const conversation: Conversation = {
    registry,
    services: { store: { ...emptyStore, commit: async () => ({ done: true }) }, workers: sharedWorkers() },
    key: new Uint8Array(32).fill(7),
    onFault: fault => faults.push(fault),
  };
  const found = registry.followUps.get(name);
  if (!found) throw new Error(`no follow-up ${name}`);
  const sealing = { key: conversation.key, holder: { group, asker: asker.id }, at };
  const sealed = seal({ followUp: found, args }, name, sealing);
  const question: Question = {
    kind: 'follow',
    id: '900',
    at,
    asker,
    group,
    channel: '1',
    here: undefined,
    language: 'en',
    locale: 'en',
    sealed,
    values: [],
    fields,
  } as Question;
  const answer = await receive(question, conversation);
  return { id: 'id' in answer ? answer.id : answer.kind, text: 'text' in answer ? answer.text : '', faults };
}

test.each([...registry.followUps])(
  '%s without any field or value is no fault of ours',
  async (name, { argNames }) => {
    const { id, faults } = await send(
      name,
      argNames.map(() => '1'),
      {},
    );
    expect(faults).toEqual([]);
    expect(id).not.toBe('our-fault');
  },
);

const photo: Attachment = {
  id: '1',
  name: 'bar.jpg',
  mediaType: 'image/jpeg',
  size: 10,
  read: async () => new Uint8Array(10),
};
const nameOf = (ending: string) =>
  [...registry.followUps.keys()].find(name => name.endsWith(ending)) ?? `none that ends in ${ending}`;

describe.each<[string, string, readonly string[], Given]>([
  ['opening a challenge', nameOf('open-form'), [], { title: 'Dusk' }],
  ['entering a bar', nameOf('enter-form'), ['9'], { title: 'Bar', photo, colourants: 'ultramarine blue' }],
  ['giving a picture', nameOf('filled'), ['9', 'soda-ash'], { photo }],
])('%s', (_, name, args, fields) => {
  it.each(Object.keys(fields))('without %s asks for it, and with another kind of thing too', async field => {
    const { [field]: gone, ...others } = fields;
    for (const sent of [others, { ...others, [field]: typeof gone === 'string' ? photo : 'a word' }]) {
      const { id, text, faults } = await send(name, args, sent);
      expect([id, faults]).toEqual(['option-missing', []]);
      expect(text).toContain(field);
    }
  });

  it('with every field asks for none', async () => {
    expect((await send(name, args, fields)).id).not.toBe('option-missing');
  });
});
