import { afterAll, beforeAll, expect, vi } from 'vitest';
import { colourantsOfBar } from '../../../commands/challenge/bars.ts';
import { asOf, listChallenges } from '../../../src/records/challenges/index.ts';
import { wordsIn } from '../../../src/words/index.ts';
import { bar } from '../../records/challenges/fair.ts';
import { story } from '../../story.ts';
import { day, type Fair, type FairRooms, openFair, photoOf } from './room.ts';

/* Whoever knows a shelf knows its jars: while makers are hidden, a jar's own name would tell whose bar it is in. */

let rooms: FairRooms;
let fair: Fair;
beforeAll(async () => {
  rooms = await openFair();
  fair = rooms.group();
  await fair.ana.run('/shelf add', { item: 'Harbour', amount: '40 g', colourant: 'ultramarine blue' });
  await fair.steward.run('/challenge open', {
    title: 'Slate',
    'entries-until': 'in 1 day',
    'votes-until': 'in 2 days',
    totals: true,
  });
  for (const who of [fair.ana, fair.bea])
    await who.run('/challenge enter', {
      photo: await photoOf(['#3f6fa8']),
      title: who === fair.ana ? 'Tide' : 'Fog',
      colourants: who === fair.ana ? 'Harbour, titanium dioxide' : 'titanium dioxide',
    });
  await fair.wait(day);
});
afterAll(() => rooms[Symbol.asyncDispose]());

/** Everything that members see while they vote, with what its pictures are drawn from. */
async function seen(): Promise<{ readonly texts: string; readonly drawn: string }> {
  const run = vi.spyOn(rooms.room.conversation.services.workers, 'run');
  const shown = [
    await fair.member.run('/challenge vote'),
    await fair.member.run('/challenge vote', { ranking: '1,2' }),
    await fair.member.run('/challenge show'),
    await fair.member.run('/challenge list'),
    await fair.member.run('/challenge audit'),
    await fair.member.run('/challenge results'),
    await fair.steward.run('/challenge export'),
  ];
  const drawn = JSON.stringify(run.mock.calls.map(([name, given]) => [name, given]));
  run.mockRestore();
  const files = shown.flatMap(({ files: all }) => all.filter(({ name }) => /json|csv/.test(name)));
  const read = files.map(file => new TextDecoder().decode(file.bytes()));
  return { texts: [JSON.stringify(shown), ...read].join('\n'), drawn };
}

story('while makers are hidden and after', step => {
  step(
    'a bar is told by the catalogue’s names of its colourants, not by the jar’s own, nor by its maker',
    async () => {
      const { texts, drawn } = await seen();
      expect(drawn).toContain('challengeBars');
      expect(drawn).toContain('challengeResults');
      for (const where of [texts, drawn]) {
        expect(where).toContain('Ultramarine blue');
        expect(where).not.toMatch(/Harbour|\bAna\b|\bBea\b/);
      }
    },
  );

  step(
    'a bar that was kept without its kinds is told by what the catalogue calls by that very name',
    async () => {
      const [challenge] = await listChallenges({
        store: rooms.room.conversation.services.store,
        group: fair.group.id,
      });
      const now = asOf(challenge!, fair.now());
      const old = bar('Tide', 'Ana', { colourants: ['Harbour', 'Titanium dioxide'] });
      expect(colourantsOfBar({ bar: old }, now, wordsIn('en'))).toEqual(['Titanium dioxide']);
      expect(colourantsOfBar({ bar: old }, now, wordsIn('es'))).toEqual(['Dióxido de titanio']);
      expect(colourantsOfBar({ bar: old }, { ...now, phase: 'closed' }, wordsIn('es'))).toEqual(
        old.colourants,
      );
    },
  );

  step('when it is over, the jar’s own name is told with its maker', async () => {
    await fair.wait(day + 6_000);
    const run = vi.spyOn(rooms.room.conversation.services.workers, 'run');
    await fair.member.run('/challenge results');
    const drawn = JSON.stringify(run.mock.calls.map(([, given]) => given));
    run.mockRestore();
    expect(drawn).toMatch(/Harbour/);
    expect(drawn).toMatch(/\bAna\b/);
  });
});
