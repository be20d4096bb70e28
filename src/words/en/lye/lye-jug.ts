import { spaced } from '../../../engine/over-lines.ts';

/** What is said of what goes on in the jug of lye: cloud, crystals, metal, and what fell in. */
export const lyeJug = {
  'metal-in-lye': {
    answer: [
      'Step back, no flame, no spark: there is metal in the lye.',
      'It makes hydrogen, which can explode.',
    ],
    why: [
      'Grey, fizzing or smelling lye water is aluminium, zinc or tin being eaten.',
      'Everybody out; window open, gas, cigarettes and switches left alone; do not stir, do not lid it, pour nothing in.',
      'Wait outside until it has stopped and is cold.',
      spaced`
        Then goggles, gloves, steel or plastic tongs for the metal; the liquid into an open plastic tub
        in the open air, labelled, never closed tight while it bubbles: caustic waste by your local
        rules.
      `,
      'It makes no soap.',
      'Coughing, dizzy, splashed: /first-aid.',
    ],
  },
  'cloudy-lye': {
    answer: [
      'White cloud or flakes in cold lye water are mostly carbonate: let it settle, use only what is clear.',
    ],
    why: [
      'Old or damp lye has it, and hard water.',
      'Still warm and grains at the bottom: not dissolved yet, stir on.',
      spaced`
        Cold and clear above the flakes: pour it off through steel mesh or polyester, goggles, gloves;
        it is a little weaker, never stronger.
      `,
      'Thick with white, or the lye was clumped: do not use it, caustic waste by your local rules.',
      'Grey and bubbling is metal: step back.',
    ],
  },
  'undissolved-lye': {
    answer: [
      'Not into the oils until it is clear: stir on.',
      'If it has gone cold, stand the open jug in warm tap water.',
    ],
    why: [
      'Grains that go into the oils burn weeks later.',
      'Still hot: cold water round the jug.',
      'At least as much water as lye by weight, better twice.',
      'No poking, no flame.',
      'A lump at the bottom: wait, stir gently with silicone or steel, never force it, it spits.',
      spaced`
        Set or frozen in the cold (lye of 50 % does at 15 °C (59 °F)): the open jug in warm tap water,
        stir until clear; never microwave or flame.
      `,
      'It stays cloudy: let it settle.',
    ],
  },
  'honey-in-lye': {
    answer: ['Never honey or sugar into lye water that is made: it heats, foams over and turns brown.'],
    why: [
      'Sugar or salt: dissolve it in the cold water first, then the lye, slowly, jug in ice.',
      'Honey: in a little kept-back cold water, into the oils or at thin trace.',
      'At most 30 g sugar or honey per kg oils (a tablespoon of honey is 21 g), 10 to 20 g salt; more overheats or crumbles.',
      'No wrapping, no oven.',
      'If it foams now: step back, face away, let it fall.',
      '/plan additives:“honey 15 g”',
    ],
  },
  'alcohol-in-lye': {
    answer: [
      'No: no alcohol into lye water.',
      'Lye reaches 90 °C (194 °F), alcohol boils at 78 °C (172 °F): it spits and its vapour burns.',
    ],
    why: [
      'Nor vodka against ash: a spray on the poured top is what some use, with no flame in the room.',
      'Against soda ash: less water, cover the mould, gel, or a plane afterwards.',
      'Wine and beer: boiled until flat and free of alcohol, then ice-cold.',
    ],
  },
  'water-was-put-on': {
    answer: [
      'If it has cooled, is clear and nothing is left at the bottom, it may be used.',
      'Next time lye into water.',
    ],
    why: [
      'What makes water on lye dangerous is the boiling and spitting at that moment; afterwards it is lye water, if both were weighed.',
      'Weigh it: jug, lye and water must add up, else water has boiled off (that alone does not change the lye).',
      'Grains or a crust: stir in the open jug standing in cold water until it is clear.',
      'Goggles, gloves.',
      'Splashed: running water, /first-aid.',
    ],
  },
  'rusty-lid': {
    answer: ['Goggles and gloves, wipe it off with paper, then water; keep lye under plastic, not metal.'],
    why: [
      'Mist and damp lye eat tin, zinc and aluminium: a lid rusts, a hood goes dull.',
      'Old traces are no danger, wet grey foam is: step back, no flame.',
      spaced`
        Lye with rust, clumps or damp in it is not weighed for soap any more: leave a lid that sticks or
        bulges alone, do not force it, hand it in as caustic waste by your local rules.
      `,
    ],
  },
};
