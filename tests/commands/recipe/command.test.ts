import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeEach(async () => {
  room = await openRoom({ whole: true });
});
afterEach(() => room[Symbol.asyncDispose]());

const SEA = {
  oils: 'coconut 30%, olive 70%',
  size: '1000 g oils',
  portions: '2 cups ultramarine blue in 1 Tbsp olive; rest plain',
};
/** Bram’s own, the plan of {@link SEA}. */
const keepSea = () => room.member.run('/plan', { ...SEA, 'save-as': 'Open sea' });
const numbers = (text: string) => text.match(/\d+(?:\.\d+)?/g);

describe('a recipe', () => {
  test('is kept from the last plan, and planned again to the same numbers', async () => {
    const { member } = room;
    const first = await member.run('/plan', SEA);
    expect((await member.run('/recipe save', { 'save-as': 'Open sea' })).text).toContain(
      '“Open sea” is kept',
    );
    const again = await member.run('/plan', { recipe: 'open SEA' });
    expect(numbers(again.text)).toEqual(numbers(first.text));
    expect((await member.run('/recipe list')).text).toContain(
      'Open sea: coconut 30%, olive 70%, 1000 g oils',
    );
  });

  test('is kept only if it can be planned', async () => {
    const refused = await room.member.run('/plan', { ...SEA, water: '60% lye', 'save-as': 'Too strong' });
    expect(refused.text).toMatch(/too strong/);
    expect((await room.member.run('/recipe list')).text).not.toContain('Too strong');
  });

  test('changes where another option is given, for this once', async () => {
    const { member } = room;
    await keepSea();
    const changed = await member.run('/plan', { recipe: 'Open sea', superfat: 8 });
    expect(changed.text).toContain('Asked: 8 %');
    expect((await member.run('/plan', { recipe: 'Open sea' })).text).toContain('Usual: 5 %');
  });

  test('keeps its name to itself', async () => {
    await keepSea();
    const answer = await room.member.run('/plan', { ...SEA, 'save-as': 'OPEN SEA' });
    expect(answer.text).toContain('already have a recipe “Open sea”');
  });

  test('is rescaled with all its volumes, by a factor or to a size', async () => {
    const { member } = room;
    await keepSea();
    const double = await member.run('/recipe rescale', {
      recipe: 'Open sea',
      size: '2',
      'save-as': 'Big sea',
    });
    expect(double.text).toContain('for 2000 g oils');
    expect(double.text).toContain('Ultramarine blue: 946 ml (4 cups)');
    expect(double.text).toContain('2 Tbsp olive oil');
    const again = await member.run('/plan', { recipe: 'Big sea' });
    expect(again.text).toContain('Ultramarine blue: 946 ml (4 cups)');
    const sized = await member.run('/recipe rescale', { recipe: 'Big sea', size: '500 g oils' });
    expect(sized.text).toContain('for 500 g oils');
    expect(sized.text).toContain('Ultramarine blue: 237 ml (1 cup)');
    expect((await member.run('/recipe rescale', { recipe: 'Big sea', size: 'huge' })).text).toMatch(
      /can’t rescale by “huge”/,
    );
    expect((await member.run('/recipe rescale', { recipe: 'Big sea', size: '1000' })).text).toMatch(
      /outside 0.01 to 100/,
    );
  });

  test('gives /dose its own batter', async () => {
    const { member } = room;
    await member.run('/plan', {
      oils: 'coconut 30%, olive 70%',
      size: '1000 g oils',
      water: '28% lye',
      'save-as': 'Wet',
    });
    const asked = { colourant: 'gold mica', portion: '1 lb oils' };
    const typical = await member.run('/dose', asked);
    const own = await member.run('/dose', { ...asked, recipe: 'Wet' });
    expect(typical.text).toContain('typical batter');
    expect(own.text).not.toContain('typical batter');
    // More water, more batter to a pound of oils, more colour in it.
    const grams = (text: string) => Number(/about ([\d.]+) g/.exec(text)?.[1]);
    expect(grams(own.text)).toBeGreaterThan(grams(typical.text));
    const names = await member.complete('/dose', { ...asked, recipe: 'w' }, 'recipe');
    expect(names[0]?.value).toBe('Wet');
  });
});

describe('another member’s recipe', () => {
  const keepBay = async () => {
    await room.member.run('/shelf add', { item: 'Lagoon', amount: '40 g', colourant: 'ultramarine blue' });
    await room.member.run('/plan', {
      oils: 'olive 70%, coconut 30%',
      size: '800 g oils',
      portions: '1 cup Lagoon; rest',
      'save-as': 'Bay',
    });
  };
  const shareBay = async () => {
    await keepBay();
    return await room.member.run('/recipe share', { recipe: 'Bay' });
  };

  test('is unknown until it is shared, then planned and copied by all', async () => {
    const { member, steward } = room;
    await keepBay();
    expect((await steward.run('/plan', { recipe: 'Bay' })).text).toMatch(/no recipe “Bay”/);
    const shared = await member.run('/recipe share', { recipe: 'Bay' });
    expect(shared.ephemeral).toBe(false);
    // The jar is not on the steward's shelf; what is in it travelled with the recipe.
    expect((await steward.run('/plan', { recipe: 'Bay' })).text).toContain('1/4 tsp ultramarine blue');
    expect((await steward.run('/recipe list')).text).toContain('Bay, by Bram');
    expect((await steward.run('/recipe copy', { recipe: 'Bay', 'save-as': 'My bay' })).text).toContain(
      'is yours now',
    );
    await steward.run('/recipe remove', { recipe: 'My bay' });
    expect((await steward.run('/recipe list')).text).not.toContain('My bay');
    expect((await member.run('/recipe list')).text).toContain('Bay');
  });

  test('cannot be removed, nor taken back but by its maker or a steward', async () => {
    const { member, steward, group } = room;
    const guest = group.addMember({ name: 'Ines' });
    await shareBay();
    expect((await guest.run('/recipe remove', { recipe: 'Bay' })).text).toMatch(/no recipe “Bay”/);
    expect((await guest.run('/recipe unshare', { recipe: 'Bay' })).text).toContain('shared by Bram');
    expect((await steward.run('/recipe unshare', { recipe: 'Bay' })).text).toContain('no longer shared');
    expect((await guest.run('/plan', { recipe: 'Bay' })).text).toMatch(/no recipe “Bay”/);
    expect((await member.run('/plan', { recipe: 'Bay' })).text).toContain('for 800 g oils');
  });

  test('shared under a name that somebody has taken is told so', async () => {
    const { member, steward } = room;
    await shareBay();
    expect((await member.run('/recipe share', { recipe: 'Bay' })).text).toContain('shared already');
    await steward.run('/plan', { ...SEA, 'save-as': 'Bay' });
    expect((await steward.run('/recipe share', { recipe: 'Bay' })).text).toContain('Bram already shares');
    const gone = await member.run('/recipe remove', { recipe: 'Bay' });
    expect(gone.text).toContain('stays until /recipe unshare');
  });
});
