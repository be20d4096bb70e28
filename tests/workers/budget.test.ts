import { describe, expect, test } from 'vitest';
import { Budget, MOST } from '../../src/workers/budget.ts';
import { FairQueue } from '../../src/workers/fair-queue.ts';
import { openWorkers, type WorkersSettings } from '../../src/workers/workers.ts';

const drain = (queue: FairQueue<string>) => {
  const order: string[] = [];
  for (let task = queue.shift(); task; task = queue.shift()) order.push(task);
  return order.join(' ');
};

describe('whose turn it is', () => {
  test('members of a group take turns, in the order in which they came', () => {
    const queue = new FairQueue<string>();
    for (const task of ['a1', 'a2', 'a3']) queue.push(task, { owner: 'a', group: 'g' });
    queue.push('b1', { owner: 'b', group: 'g' });
    expect(queue.size).toBe(4);
    expect(drain(queue)).toBe('a1 b1 a2 a3');
    expect(queue.size).toBe(0);
  });

  test('a small group does not wait for every member of a large one', () => {
    const queue = new FairQueue<string>();
    for (let n = 0; n < 20; n += 1) queue.push(`big${n}`, { owner: `m${n}`, group: 'big' });
    queue.push('small', { owner: 'm', group: 'small' });
    expect(queue.groups).toBe(2);
    expect(queue.membersOf('big')).toBe(20);
    expect(drain(queue).startsWith('big0 small big1')).toBe(true);
  });

  test('who has had a turn longer ago goes first, though the other never stopped waiting', () => {
    const queue = new FairQueue<string>();
    const push = (task: string) => queue.push(task, { owner: task.charAt(0), group: 'g' });
    for (const task of ['a1', 'a2', 'a3', 'a4', 'b1']) push(task);
    expect([queue.shift(), queue.shift(), queue.shift()]).toEqual(['a1', 'b1', 'a2']);
    // The second half of an answer, behind a3 and a4 by the clock.
    push('b2');
    expect(drain(queue)).toBe('b2 a3 a4');
  });

  test('newcomers do not hold up who has waited since before they came', () => {
    const queue = new FairQueue<string>();
    const push = (task: string) => queue.push(task, { owner: task.charAt(0), group: 'g' });
    for (const task of ['a1', 'a2', 'a3']) push(task);
    const order: (string | undefined)[] = [];
    for (const newcomer of ['b', 'c', 'd', 'e']) {
      order.push(queue.shift());
      push(newcomer);
    }
    expect([...order, drain(queue)].join(' ')).toBe('a1 b a2 c d a3 e');
  });

  test('what ends an answer goes before what the same member has not begun, and before nobody else', () => {
    const queue = new FairQueue<string>();
    queue.push('a1', { owner: 'a', group: 'g' });
    queue.push('b1', { owner: 'b', group: 'g' });
    queue.push('a0', { owner: 'a', group: 'g' }, { first: true });
    expect(drain(queue)).toBe('a0 b1 a1');
  });
});

describe('how much at once', () => {
  const none = { rounds: 1, secondsEach: 1 };
  const busy = (full: string) =>
    expect.objectContaining({ id: 'workers-busy', values: expect.objectContaining({ full }) });

  test('a member has a few places, and has one again once a piece is done', () => {
    const budget = new Budget(MOST);
    const ana = { owner: 'ana', group: 'g' };
    const places = Array.from({ length: MOST.member }, () => budget.take(ana, none));
    expect(() => budget.take(ana, none)).toThrow(busy('member'));
    budget.take({ owner: 'bram', group: 'g' }, none);
    places[0]?.();
    budget.take(ana, none);
    expect(budget.all).toBe(MOST.member + 1);
  });

  test('a group has more, and other groups are not refused for it', () => {
    const budget = new Budget(MOST);
    for (let n = 0; n < MOST.group; n += 1) budget.take({ owner: `m${n}`, group: 'g' }, none);
    expect(() => budget.take({ owner: 'late', group: 'g' }, none)).toThrow(busy('group'));
    budget.take({ owner: 'late', group: 'elsewhere' }, none);
  });

  test('what a group shows to everybody counts as no member', () => {
    const budget = new Budget(MOST);
    for (let n = 0; n < MOST.group; n += 1) budget.take({ owner: 'g', group: 'g' }, none);
    expect(() => budget.take({ owner: 'g', group: 'g' }, none)).toThrow(busy('group'));
  });

  test('all together have a bound too', () => {
    const budget = new Budget(MOST);
    for (let n = 0; n < MOST.all; n += 1) budget.take({ owner: `m${n}`, group: `g${n}` }, none);
    expect(() => budget.take({ owner: 'm', group: 'g' }, none)).toThrow(busy('all'));
  });

  test.for([
    [1, 0.2, 5],
    [7, 1, 10],
    [1000, 3, 120],
  ] as const)('%i rounds of %d s: try again in %i s', ([rounds, secondsEach, seconds]) => {
    const budget = new Budget({ ...MOST, all: 0 });
    expect(() => budget.take({ owner: 'm', group: 'g' }, { rounds, secondsEach })).toThrow(
      expect.objectContaining({ values: { full: 'all', seconds } }),
    );
  });
});

describe('a thread', () => {
  const odd = (more: WorkersSettings = {}) => {
    const workers = openWorkers({
      script: new URL('./odd-worker.ts', import.meta.url),
      threads: 1,
      limitMs: 1_500,
      graceMs: 100,
      ...more,
    });
    return {
      ...workers,
      do: (input: object, owner = 'ana', group = 'g') =>
        workers.run('readPhoto', input as never, { owner, group }) as Promise<unknown>,
    };
  };

  test('that is stuck is replaced after its limit, and those who waited are answered', async () => {
    const workers = odd();
    const stuck = workers.do({ act: 'spin' });
    const next = workers.do({ act: 'wait', said: 'here' }, 'bram');
    expect(workers.load()).toEqual({ waiting: 1, running: 1 });
    await expect(stuck).rejects.toMatchObject({ id: 'work-took-too-long' });
    expect(await next).toBe('here');
    expect(workers.load()).toEqual({ waiting: 0, running: 0 });
    await workers.close();
  });

  test('that waits has no time counted, only the clock’s', async () => {
    const workers = odd({ limitMs: 300 });
    expect(await workers.do({ act: 'wait', ms: 1_500, said: 'here' })).toBe('here');
    await workers.close();
    const hasty = odd({ limitMs: 60_000, wallMs: 700 });
    await expect(hasty.do({ act: 'wait', ms: 20_000 })).rejects.toMatchObject({ id: 'work-took-too-long' });
    await hasty.close();
  });

  test('has for each piece what it may have, not for all of them together', async () => {
    const workers = odd({ limitMs: 600 });
    for (let piece = 0; piece < 4; piece++)
      expect(await workers.do({ act: 'work', ms: 250, said: 'done' })).toBe('done');
    await workers.close();
  });

  test('that dies takes nobody else’s work with it', async () => {
    const workers = odd({ limitMs: 20_000 });
    await expect(workers.do({ act: 'die' })).rejects.not.toMatchObject({ id: 'work-took-too-long' });
    expect(await workers.do({ act: 'wait', said: 'alive' })).toBe('alive');
    await workers.close();
  });

  test('that is stuck holds up nobody who stops', async () => {
    const workers = odd({ limitMs: 3_600_000 });
    const stuck = workers.do({ act: 'spin' }).catch(() => 'ended');
    const waiting = workers.do({ act: 'wait' }, 'bram').catch(() => 'refused');
    await new Promise(resolve => setTimeout(resolve, 500));
    // The limit of the stuck one is far beyond that of this test.
    await workers.close();
    expect(await Promise.all([stuck, waiting])).toEqual(['ended', 'refused']);
    await expect(workers.do({ act: 'wait' })).rejects.toThrow('closed');
  });

  test('a picture is drawn when it was read, not when all that its member sent was', async () => {
    const workers = openWorkers({ threads: 1, limitMs: 60_000 });
    const ended: string[] = [];
    const strips = { title: 'Dusk', palettes: [] } as never;
    const drawn = (name: string) =>
      workers
        .run('paletteStrips', strips, { owner: 'ana' })
        .catch(() => undefined)
        .then(() => ended.push(name));
    const reckoned = (name: string) =>
      workers
        .run('planBatch', undefined as never, { owner: 'ana' })
        .catch(() => undefined)
        .then(() => ended.push(name));
    await Promise.all([reckoned('runs'), reckoned('waits'), drawn('drawing')]);
    expect(ended).toEqual(['runs', 'drawing', 'waits']);
    await workers.close();
  });

  test('one member’s sixty pictures refuse that member only', async () => {
    const workers = odd({ limitMs: 20_000 });
    const many = Array.from({ length: 60 }, () =>
      workers.do({ act: 'wait', ms: 50 }, 'ana').then(
        () => 'done',
        () => 'no',
      ),
    );
    const other = workers.do({ act: 'wait', said: 'mine' }, 'bram', 'elsewhere');
    const first = await Promise.race([other, Promise.all(many.slice(0, 3))]);
    expect(first).toBe('mine');
    const ends = await Promise.all(many);
    expect(ends.filter(end => end === 'done')).toHaveLength(MOST.member);
    await workers.close();
  });
});
