import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { readCommands } from '../../../src/conversation/registry/registry.ts';
import { openStore } from '../../../src/records/open.ts';
import { askLine } from '../../../src/terminal/seat.ts';
import { jsonOf } from '../../../src/terminal/shown.ts';
import type { JobName, Jobs } from '../../../src/workers/jobs.ts';
import { sharedWorkers } from '../../workers/shared.ts';

/* What the batch card draws is the plan that was asked for, number by number. */

type Card = Parameters<Jobs['batchCard']>[0];
type Plan = {
  readonly data: {
    readonly portions: readonly { readonly millilitres: number }[];
    readonly heat: { readonly curve: readonly { readonly typical: number }[] };
  };
};

const drawn: Card[] = [];
let conversation: Conversation;
beforeAll(async () => {
  const workers = sharedWorkers({ draws: false });
  conversation = {
    registry: await readCommands(new URL('../../../commands/', import.meta.url)),
    services: {
      store: await openStore('sqlite::memory:'),
      workers: {
        ...workers,
        run: <Name extends JobName>(...[name, input, more]: Parameters<typeof workers.run<Name>>) => {
          if (name === 'batchCard') drawn.push(input as Card);
          return workers.run(name, input, more);
        },
      },
    },
    key: new Uint8Array(32).fill(7),
    onFault: fault => {
      throw fault;
    },
  };
});
afterAll(async () => {
  await conversation.services.workers.close();
  await conversation.services.store.close();
});

async function planned(
  line: string,
  member = 'maker',
): Promise<{ readonly card: Card; readonly plan: Plan }> {
  const seat = { member, group: 'card', language: 'en' as const, manages: false, roles: [] };
  const plan = (await jsonOf(
    await askLine(line, seat, conversation),
    '.tintmoot/test-pictures',
  )) as unknown as Plan;
  return { card: drawn.at(-1)!, plan };
}

const PLAN =
  '/plan oils:"olive 70%, coconut 30%" size:"mould 25x8x7 cm" portions:"1 cup ultramarine blue; 3 cups titanium dioxide; rest plain" room:"18 C"';

describe('the card of a batch', () => {
  test('draws each portion as high as its share of the batter, in the order they are poured', async () => {
    const { card, plan } = await planned(PLAN);
    const volumes = plan.data.portions.map(({ millilitres }) => millilitres);
    const all = volumes.reduce((sum, one) => sum + one, 0);
    expect(volumes[1]! / volumes[0]!).toBeCloseTo(3, 2);
    const shares = card.loaf.layers.map(({ share }) => share);
    expect(shares).toHaveLength(3);
    for (const [at, share] of shares.entries()) expect(share).toBeCloseTo(volumes[at]! / all, 9);
    expect(card.portions.map(({ hex }) => hex)).toEqual(card.loaf.layers.map(({ hex }) => hex));
  });

  test('is as wide to its height as the batter stands in the mould', async () => {
    const { card, plan } = await planned(PLAN);
    const batter = plan.data.portions.reduce((sum, { millilitres }) => sum + millilitres, 0);
    expect(card.loaf.aspect).toBeCloseTo(8 / (batter / (25 * 8)), 1);
  });

  test('draws the heat of the plan, in the degrees that its reader counts in', async () => {
    const { card, plan } = await planned(PLAN);
    const celsius = plan.data.heat.curve.map(({ typical }) => typical);
    expect(card.heat.points.map(({ typical }) => typical)).toEqual(celsius);
    const seat = 'counts-in-fahrenheit';
    await planned('/prefer temperature:fahrenheit', seat);
    const { card: other } = await planned(PLAN, seat);
    // The definition: 32 + 9/5 of the degrees Celsius.
    for (const [at, { typical }] of other.heat.points.entries())
      expect(typical).toBeCloseTo(32 + 1.8 * celsius[at]!, 6);
    expect(other.heat.gel.low).toBeCloseTo(32 + 1.8 * card.heat.gel.low, 6);
  });
});
