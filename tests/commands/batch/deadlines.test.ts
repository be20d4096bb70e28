import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { nextDates } from '../../../commands/batch/dates.ts';
import { batchActs } from '../../../commands/batch/deadlines.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import type { Outbox } from '../../../src/conversation/unasked/outbox.ts';
import { startScheduler } from '../../../src/deadlines/scheduler.ts';
import { listBatches } from '../../../src/records/batches/index.ts';
import { duesBy } from '../../../src/records/dues/dues.ts';
import { openStore } from '../../../src/records/open.ts';
import { everything, type Store } from '../../../src/records/store.ts';
import { controlOf, day, hour } from '../challenge/room.ts';
import { type Book, headline, letters, openBook, planned } from './book.ts';

let book: Book;
// A room for each: in one of all, every day that passes is one of the groups before, too.
beforeEach(async () => {
  book = await openBook();
});
afterEach(() => book[Symbol.asyncDispose]());

const headlines = (member: Parameters<typeof letters>[0]) => letters(member).map(headline);

describe('a batch keeps its own dates', () => {
  test('from the heat to the cure, each told once and in private, at the maker’s hour', async () => {
    const { member, wait, now, ana } = await book.maker();
    await member.run('/prefer', { zone: 'Europe/Madrid', hour: 7 });
    await member.run('/plan', planned);
    await member.run('/batch poured', { name: 'Evening' });
    await wait(1 * hour);
    expect(headlines(member)).toEqual([]);
    await wait(2 * hour);
    expect(headlines(member)).toEqual([
      expect.stringMatching(/^About \d\d °C \(\d{3} °F\) now: “Evening” is at its hottest, look at it$/),
    ]);
    let before = letters(member).length;
    const hours = new Set<number>();
    for (let step = 0; step < 50 * 4; step += 1) {
      await wait(6 * hour);
      // Looked at 01:00, 07:00, 13:00 and 19:00 UTC; 07:00 in Madrid is 06:00 UTC in winter.
      if (letters(member).length > before) hours.add(new Date(now()).getUTCHours());
      before = letters(member).length;
    }
    expect([...hours]).toEqual([7]);
    const told = headlines(member).slice(1);
    expect(told[0]).toBe('Unmould “Evening”');
    expect(told[1]).toBe('Cut “Evening”');
    expect(told.filter(line => line.startsWith('Turn the bars')).length).toBeGreaterThanOrEqual(4);
    expect(told.filter(line => line === '“Evening” should be cured')).toHaveLength(1);
    expect(headlines(ana)).toEqual([]);
  });

  test('and goes by the answers: done, later, stop', async () => {
    const { member, wait } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'Tarn' });
    await wait(2 * day);
    const [unmould] = letters(member);
    expect(headline(unmould!)).toBe('Unmould “Tarn”');
    const later = await member.press(unmould!, controlOf(unmould!, 'Later'));
    expect(headline(later)).toContain('I’ll remind you again');
    await wait(1 * day);
    expect(headlines(member).filter(line => line.startsWith('Unmould'))).toHaveLength(2);
    const again = letters(member).findLast(one => headline(one).startsWith('Unmould'))!;
    await member.press(again, controlOf(again, 'Done'));
    await wait(1 * day);
    const cut = letters(member).findLast(one => headline(one).startsWith('Cut'))!;
    expect(headline(await member.press(cut, controlOf(cut, 'Done')))).toContain('Noted, “Tarn”: cut');
    expect((await member.run('/batch list')).text).toContain('cut; poured');
    await wait(8 * day);
    const turn = letters(member).findLast(one => headline(one).startsWith('Turn'))!;
    await member.press(turn, controlOf(turn, 'Stop'));
    const before = letters(member).length;
    await wait(60 * day);
    expect(letters(member).length).toBe(before);
    await member.run('/batch dates', { batch: 'Tarn', remind: true });
    expect((await member.run('/batch dates')).text).toContain('cured');
  });

  test('a turn put off by a day has its next a week after that, and once', async () => {
    const { member, wait } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'Late' });
    const turns = () => letters(member).filter(one => headline(one).startsWith('Turn'));
    for (let days = 0; days < 20 && turns().length === 0; days += 1) await wait(1 * day);
    await member.press(turns()[0]!, controlOf(turns()[0]!, 'Later'));
    await wait(1 * day);
    expect(turns()).toHaveLength(2);
    for (let days = 0; days < 8; days += 1) await wait(1 * day);
    expect(turns()).toHaveLength(3);
  });

  test('stop ends all there is to tell of a batch, the look for fading too', async () => {
    const { member, wait } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'Quiet' });
    await member.run('/batch share', { batch: 'Quiet' });
    await wait(3 * day);
    const unmould = letters(member).find(one => headline(one).startsWith('Unmould'))!;
    await member.press(unmould, controlOf(unmould, 'Stop'));
    await wait(40 * day);
    await member.run('/batch cured', { batch: 'Quiet', colours: '#7d6cb0' });
    const before = letters(member).length;
    await wait(100 * day);
    expect(letters(member).length).toBe(before);
  });

  test('weights know better than the calendar', async () => {
    const { member, wait } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'Slow' });
    await wait(2 * day);
    await member.run('/batch cut', { weights: '100 g' });
    await wait(20 * day);
    await member.run('/batch weigh', { weights: '90 g' });
    await wait(7 * day);
    await member.run('/batch weigh', { weights: '87 g' });
    await wait(10 * day);
    expect(headlines(member).at(-1)).toMatch(/^(?:Not cured yet: “Slow” still loses|Turn)/);
    expect(
      headlines(member).some(line => line.startsWith('Not cured yet: “Slow” still loses 3.3 % a week')),
    ).toBe(true);
    await member.run('/batch weigh', { weights: '86.8 g' });
    await wait(8 * day);
    expect(headlines(member).filter(line => line === '“Slow” should be cured')).toHaveLength(1);
  });

  test('a shared batch is looked at again after three months, one that is not shared is not', async () => {
    const { member, wait } = await book.maker();
    for (const name of ['Shown', 'Kept'])
      await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name });
    await member.run('/batch share', { batch: 'Shown' });
    await wait(40 * day);
    for (const batch of ['Shown', 'Kept']) await member.run('/batch cured', { batch, colours: '#7d6cb0' });
    await wait(89 * day);
    expect(headlines(member).filter(line => line.includes('faded'))).toEqual([]);
    await wait(3 * day);
    expect(headlines(member).filter(line => line.includes('faded'))).toEqual([
      'Three months on: has “Shown” faded? One photo tells',
    ]);
  });

  test('in a talk with us alone, where there is no group', async () => {
    const { member, wait } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'Alone' }, { context: 'bot-dm' });
    await wait(3 * day);
    expect(headlines(member)).toContain('Unmould “Alone”');
    expect(book.fair.room.faults).toEqual([]);
  });

  test('whoever lets nothing in is no fault, and hears nothing twice', async () => {
    const { member, wait } = await book.maker();
    member.grant({ directMessages: false });
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'Closed' });
    await wait(3 * day);
    expect(letters(member)).toEqual([]);
    expect(book.fair.room.faults).toEqual([]);
    expect((await member.run('/batch dates')).text).toContain('turn the bars');
  });
});

/** A private line that keeps what it was sent: a nonce within minutes sends once, as the platform's does. */
class Line implements Outbox {
  readonly sent: { readonly member: string; readonly reply: Reply; readonly nonce: string }[] = [];
  failing = false;
  /** Sends, and the receipt is lost. */
  losing = false;

  serves() {
    return true;
  }
  async post() {
    return 'barred' as const;
  }
  async edit() {
    return 'barred' as const;
  }
  async tell(member: string, _place: unknown, reply: Reply, nonce = '') {
    if (nonce.length > 25 || nonce === '') throw new Error('a nonce has 1 to 25 characters');
    if (this.failing) throw new Error('the platform does not answer');
    if (!this.sent.some(one => one.nonce === nonce)) this.sent.push({ member, reply, nonce });
    if (this.losing) throw new Error('the receipt is lost');
    return 'told' as const;
  }
}

describe('across restarts and processes', () => {
  async function poured(): Promise<{ store: Store; member: string; at: number }> {
    const { member, now } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'Once' });
    const store = await openStore('sqlite::memory:');
    const entries = await everything(book.fair.room.store, { from: '!', to: '~' });
    const mine = entries.filter(({ key, value }) =>
      key.startsWith('due/')
        ? key.includes(member.guild.id)
        : JSON.stringify([key, value]).includes(member.id),
    );
    await store.commit(mine.map(({ key, value }) => ({ kind: 'put', key, value })));
    return { store, member: member.id, at: now() };
  }

  async function runAt(now: number, store: Store, outbox: Outbox): Promise<readonly string[]> {
    const faults: string[] = [];
    const watch = startScheduler({
      store,
      serves: () => true,
      acts: { ...batchActs({ store, outbox, now: () => now }), 'privacy-sweep': async () => undefined },
      now: () => now,
      onFault: fault => faults.push((fault as Error).message),
    });
    await watch.check();
    await watch.stop();
    return faults;
  }

  const lines = (line: Line) => line.sent.map(({ reply }) => reply.headline);

  test('each is told once: two processes at once, a lost receipt, a start anew', async () => {
    const { store, at } = await poured();
    const line = new Line();
    const due = at + 2 * day;
    await Promise.all([runAt(due, store, line), runAt(due, store, line)]);
    expect(lines(line)).toEqual(['Unmould “Once”']);
    line.losing = true;
    const cut = at + 3 * day;
    expect(await runAt(cut, store, line)).toEqual(['the receipt is lost']);
    line.losing = false;
    expect(await runAt(cut + 60_000, store, line)).toEqual([]);
    expect(await runAt(cut + 120_000, store, line)).toEqual([]);
    expect(lines(line)).toEqual(['Unmould “Once”', 'Cut “Once”']);
  });

  test('what fails is tried again, and what was too long ago is not told any more', async () => {
    const { store, member, at } = await poured();
    const line = new Line();
    line.failing = true;
    expect(await runAt(at + 2 * day, store, line)).toEqual(['the platform does not answer']);
    line.failing = false;
    await runAt(at + 12 * day, store, line);
    expect(lines(line)).toEqual(['Turn the bars of “Once”, and weigh one']);
    const [batch] = await listBatches({ store, member });
    expect(batch?.events.map(({ did }) => did.kind)).toEqual(['told', 'told', 'told']);
  });

  test('a week that comes late counts from when it was told; a fortnight missed is told once', async () => {
    const { store, member, at } = await poured();
    const line = new Line();
    const turns = () => line.sent.filter(({ reply }) => reply.headline.startsWith('Turn')).length;
    const runTo = async (days: number) => runAt(at + days * day, store, line);
    for (const days of [2, 3, 4]) await runTo(days);
    // Five days down: told late, and not again two days later.
    await runTo(14);
    expect(turns()).toBe(1);
    for (const days of [15, 16, 17, 18, 19, 20]) await runTo(days);
    expect(turns()).toBe(1);
    await runTo(22);
    expect(turns()).toBe(2);
    const nextTurn = async (days: number) => {
      const [batch] = await listBatches({ store, member });
      return nextDates(batch!, { clock: { zone: 'UTC', hour: 9 }, now: at + days * day }).find(
        ({ stage }) => stage === 'turn',
      )?.at;
    };
    expect(await nextTurn(22.1)).toBeGreaterThan(at + 28 * day);
    // A fortnight down.
    for (const days of [36, 36.1, 37, 37.1, 38, 39, 40, 41]) await runTo(days);
    expect(turns()).toBe(3);
    // A week after that they are cured, and cured bars are turned no more.
    expect(await nextTurn(41)).toBeUndefined();
  });

  test('a batch that is gone leaves no reminders', async () => {
    const { store, at } = await poured();
    await store.commit(
      (await everything(store, { from: 'batch/', to: 'batch0' })).map(({ key }) => ({ kind: 'drop', key })),
    );
    const line = new Line();
    expect(await runAt(at + 60 * day, store, line)).toEqual([]);
    expect(line.sent).toEqual([]);
    const left = (await duesBy(store, new Date(at + 99 * day))).filter(({ what }) =>
      what.startsWith('batch-'),
    );
    expect(left).toEqual([]);
  });
});
