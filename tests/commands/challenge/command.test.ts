import { afterAll, beforeAll, expect } from 'vitest';
import type { MessageView } from '../../../src/loopback/interface.ts';
import { story } from '../../story.ts';
import { controlOf, day, type Fair, type FairRooms, instant, openFair, photoOf } from './room.ts';

let rooms: FairRooms;
let fair: Fair;
beforeAll(async () => {
  rooms = await openFair();
  fair = rooms.group();
});
afterAll(() => rooms[Symbol.asyncDispose]());

const announcement = () => fair.channel()[0] as MessageView;
const newest = () => fair.channel().at(-1) as MessageView;
const BLUE = '#3f6fa8';
const ROSE = '#e3b7b0';

story('a colour challenge, from opening to results', step => {
  step('is announced in the channel as soon as a steward opens it, with a card and what to do', async () => {
    const opened = await fair.steward.run('/challenge open', {
      title: 'Dusk over the lagoon',
      brief: 'Two colours that meet like evening water.',
      palette: `${BLUE} 60%, ${ROSE}`,
      'entries-until': 'in 3 days',
      'votes-until': 'in 6 days',
      decides: 'both',
      zone: 'Europe/Madrid',
    });
    expect(opened.ephemeral).toBe(true);
    expect(opened.text).toContain('plain white sheet');
    await fair.wait(0);
    const card = announcement();
    expect(card.ephemeral).toBe(false);
    expect(card.text.split('\n')[0]).toBe('## “Dusk over the lagoon” is taking entries.');
    expect(card.text).toContain(`**Enter until:** ${instant(Date.UTC(2026, 11, 5, 10))}`);
    expect(card.text).toContain(`Palette: ${BLUE} 60 %, ${ROSE} 40 %`);
    expect(card.files.map(({ name }) => name)).toEqual(['challenge.png']);
    expect(card.controls.map(({ label }) => label)).toEqual(['Enter a bar', 'From my shelf']);
  });

  step('shows a member what their own shelf could make of it, for their eyes only', async () => {
    const { ana } = fair;
    await ana.run('/shelf add', { item: 'Evening sky', amount: '40 g', colourant: 'ultramarine blue' });
    await ana.run('/shelf add', { item: 'Snow', amount: '40 g', colourant: 'titanium dioxide' });
    const ideas = await ana.press(announcement(), controlOf(announcement(), 'From my shelf'));
    expect(ideas.ephemeral).toBe(true);
    expect(ideas.text).toContain(`**${BLUE}:**`);
    expect(ideas.text).toMatch(/tsp Evening sky/);
    expect(ideas.text).toContain('Gloves and goggles');
    // The same recipe as for whoever asks for that colour by itself.
    const [, spoons = 'none'] = /\*\*#3f6fa8:\*\* (.*? tsp) Evening sky/.exec(ideas.text) ?? [];
    const matched = await ana.run('/match', { target: BLUE });
    expect(matched.text).toContain(spoons);
    const empty = await fair.bea.press(announcement(), controlOf(announcement(), 'From my shelf'));
    expect(empty.text).toContain('Your shelf holds nothing');
  });

  step('takes a bar through a form, measures it at once and shows target beside measured', async () => {
    const form = await fair.ana.pressForForm(announcement(), controlOf(announcement(), 'Enter a bar'));
    const entered = await fair.ana.submit(form, {
      photo: [await photoOf([BLUE, ROSE])],
      title: 'Still water',
      colourants: 'Evening sky, Snow',
      note: 'poured high',
    });
    expect(entered.ephemeral).toBe(true);
    expect(entered.text).toContain('Bar 1, “Still water”, is in “Dusk over the lagoon”.');
    expect(entered.text).toMatch(/colour \d\.\d ± \d\.\d away from the palette/);
    expect(entered.files.map(({ name }) => name)).toEqual(['measured.png']);

    // The table beside the bar is no colour of it: the score must get worse, and the member can go back.
    const scoreIn = (text: string) => Number(/colour ([\d.]+) ±/.exec(text)?.[1]);
    const wrong = await fair.ana.choose(entered, controlOf(entered, /another part/), ['left']);
    expect(scoreIn(wrong.text)).toBeGreaterThan(scoreIn(entered.text) + 5);
    const back = await fair.ana.choose(wrong, controlOf(wrong, /another part/), ['found']);
    expect(scoreIn(back.text)).toBeCloseTo(scoreIn(entered.text), 1);
  });

  step('takes another bar by command, and says at entry that neons are not scored', async () => {
    const bea = await fair.bea.run('/challenge enter', {
      photo: await photoOf(['#4f8a6a', ROSE]),
      title: 'Green tide',
      colourants: 'chromium oxide green',
    });
    expect(bea.text).toContain('Bar 2');
    const cleo = await fair.cleo.run('/challenge enter', {
      photo: await photoOf([BLUE]),
      title: 'Flamingo',
      colourants: 'neon pink',
    });
    expect(cleo.text).toContain('No score: a neon glows');
    const twice = await fair.cleo.run('/challenge enter', {
      photo: await photoOf([BLUE]),
      title: 'Another',
      colourants: 'neon pink',
    });
    expect(twice.text).toContain('1 entry a member');
  });

  step('shows bars by number and title, not whose they are, while it runs', async () => {
    const shown = await fair.member.run('/challenge show');
    expect(shown.text).toContain('“Green tide”');
    expect(shown.text).not.toMatch(/Ana|Bea|Cleo/);
    expect(shown.files.map(({ name }) => name)).toEqual(['challenge.png', 'bars.png']);
  });

  step('takes no votes before the time', async () => {
    expect((await fair.member.run('/challenge vote', { ranking: '1' })).text).toContain('No challenge here');
  });

  step('opens the vote on time, with the bars in view', async () => {
    await fair.wait(3 * day);
    expect(newest().text).toContain(`3 entries are in, vote until ${instant(Date.UTC(2026, 11, 8, 10))}`);
    expect(newest().files.map(({ name }) => name)).toEqual(['bars.png']);
    expect(announcement().controls.map(({ label }) => label)).toEqual(['Vote']);
    expect((await fair.ana.run('/challenge withdraw')).text).toContain('No challenge here is taking entries');
  });

  step(
    'lets a member rank by menus, tie bars, and change their mind; their own bar is not there',
    async () => {
      const { ana } = fair;
      let ballot = await ana.press(newest(), controlOf(newest(), 'Vote'));
      expect(ballot.ephemeral).toBe(true);
      expect(ballot.controls[0]?.options.map(({ label }) => label)).toEqual([
        '2. “Green tide”',
        '3. “Flamingo”',
      ]);
      ballot = await ana.choose(ballot, controlOf(ballot, /like best/), ['3']);
      expect(ballot.text).toContain('Saved: 1 bar');
      ballot = await ana.press(ballot, controlOf(ballot, 'Add one to 1st place'));
      ballot = await ana.choose(ballot, controlOf(ballot, /Shares/), ['2']);
      expect(ballot.text).toContain('“Flamingo” (bar 3) = “Green tide” (bar 2)');
      expect(ballot.text).not.toContain('This ballot counts');
      ballot = await ana.press(ballot, controlOf(ballot, 'Start again'));
      // Nothing is cast by starting again: what was cast still counts, and says so.
      expect(ballot.text).toContain('This ballot counts until you choose a new first place.');
      expect(ballot.text).toContain('“Flamingo” (bar 3)');
      ballot = await ana.choose(ballot, controlOf(ballot, /like best/), ['2']);
      const seen = await ana.run('/challenge ballot');
      expect(seen.text).toContain('“Green tide” (bar 2)');
      expect(seen.text).not.toContain('Flamingo');
    },
  );

  step('reads a written ballot, and leaves the voter’s own bar out of it', async () => {
    expect((await fair.bea.run('/challenge vote', { ranking: '2,1,3' })).text).toContain(
      'Your own bar is left out',
    );
    expect((await fair.cleo.run('/challenge vote', { ranking: '1 > 2' })).text).toContain('Saved: 2 bars');
    expect((await fair.member.run('/challenge vote', { ranking: '1,2=3' })).text).toContain('Saved: 3 bars');
    // Two that share the first place leave the second free, as in the results.
    const tied = await fair.member.run('/challenge vote', { ranking: '1=2,3' });
    expect(tied.text).toMatch(/1\\?\. .*bar 1.* = .*bar 2/);
    expect(tied.text).toMatch(/3\\?\. .*bar 3/);
    await fair.member.run('/challenge vote', { ranking: '1,2=3' });
    expect((await fair.member.run('/challenge vote', { ranking: '1,9' })).text).toContain('number 9');
    expect((await fair.member.run('/challenge vote', { ranking: 'all' })).text).toContain(
      "I can't read “all”",
    );
  });

  step('takes a ballot back for ten minutes: the one before it counts again, or none', async () => {
    const before = (await fair.cleo.run('/challenge ballot')).text;
    const cast = await fair.cleo.run('/challenge vote', { ranking: '2' });
    const undo = controlOf(cast, 'Undo');
    expect((await fair.cleo.press(cast, undo)).text).toMatch(/^## Taken back: your ballot/);
    expect((await fair.cleo.run('/challenge ballot')).text).toBe(before);
    const odd = await fair.steward.run('/challenge vote', { ranking: '1' });
    expect((await fair.steward.press(odd, controlOf(odd, 'Undo'))).text).toContain('Taken back');
    expect((await fair.steward.run('/challenge ballot')).text).toContain('is still empty');
  });

  step('tells nobody how it stands before the end', async () => {
    const early = await fair.steward.run('/challenge results');
    expect(early.text).toBe('The challenge is being voted on; this works only while it is over.');
    expect((await fair.steward.run('/challenge export')).text).toContain('is being voted on');
  });

  step('closes on time and shows places, makers and colours', async () => {
    await fair.wait(3 * day + 6_000);
    const results = newest();
    expect(results.text.split('\n')[0]).toBe('## First in “Dusk over the lagoon”: “Still water” by Ana');
    expect(results.text).toContain('“Green tide” by Bea');
    expect(results.files.map(({ name }) => name)).toEqual(['results.png']);
    expect(announcement().text).toContain('“Dusk over the lagoon” is over.');
    expect((await fair.bea.run('/challenge vote', { ranking: '1' })).text).toContain('No challenge here');
    const asked = await fair.bea.run('/challenge results');
    expect(asked.ephemeral).toBe(false);
    expect(asked.text).toContain('Pair by pair');
  });

  step('tells it once, however often the deadline is looked at', async () => {
    const before = fair.channel().length;
    await fair.wait(day);
    await fair.wait(day);
    expect(fair.channel()).toHaveLength(before);
  });

  step('keeps a history for each member, and a list of what stewards did', async () => {
    const history = await fair.ana.run('/challenge history');
    expect(history.text).toContain('1 win');
    expect(history.text).toContain('1st of 3: “Still water”');
    const audit = await fair.cleo.run('/challenge audit');
    expect(audit.text).toContain('Odile: opened it');
  });

  step('left no fault behind', () => {
    expect(fair.faults).toEqual([]);
  });
});
