import { spaced } from '../../../engine/over-lines.ts';
import type { TradeTerm } from '../../../engine/questions/found/trade-terms.ts';

/** Words of the trade, in a sentence or two. */
export const terms = {
  batter: {
    name: 'batter',
    text: 'Raw soap while it still pours: oils and lye water blended. It burns skin.',
  },
  trace: {
    name: 'trace',
    text: 'The moment batter is thick enough that a drizzle stays on top. Light trace pours, thick trace spoons.',
  },
  superfat: {
    name: 'superfat',
    text: 'Percent of the oils that the lye leaves as oil. 5 is usual; below 0 the bar is caustic.',
  },
  gel: {
    name: 'gel',
    text: 'A hot, see-through phase of the loaf. Gelled soap looks deeper and clearer; half gelled shows a ring.',
  },
  glycerinRivers: {
    name: 'glycerin rivers',
    text: 'Clear wandering lines in soap that got hot with much water. Looks only.',
  },
  ash: {
    name: 'soda ash',
    text: 'White bloom on the surface where young soap meets air. Looks only; steam or a rinse takes it off.',
  },
  premix: {
    name: 'premix',
    text: 'A colour that comes wetted, bought or made: you measure the paste, not the powder.',
  },
  paste: { name: 'paste', text: 'Powder stirred smooth in a little liquid, before it meets the batter.' },
  portion: {
    name: 'portion of batter',
    text: 'The part of the batter that you pull out for one colour: “2 cups”.',
  },
  lake: { name: 'lake', text: 'A dye fixed on alumina. Lye lets most of them go: they bleed and stain.' },
  mica: { name: 'mica', text: 'Pearly flakes. What coats the mica decides whether the colour holds in lye.' },
  oxide: {
    name: 'oxide',
    text: 'Iron and chromium oxides: strong, cheap, safe in lye, clumpy. Wet them well.',
  },
  dishTest: {
    name: 'dish test',
    text: 'A pinch of the powder in a dish of water. Swirls in: wet it in water. Sits on the bottom: oil or glycerin.',
  },
  testBar: {
    name: 'test bar',
    text: 'A small bar of a known dose, cured. It tells your own jar’s strength: /calibrate.',
  },
  colourUnits: {
    name: 'colour units',
    text: 'How far two colours are apart (CIEDE2000): 2 is just visible, 10 is another shade.',
  },
  zap: {
    name: 'zap',
    text: 'A sting of free lye, as of a battery. Never put soap on your tongue to find out: pH paper, or a wet fingertip off a cured bar.',
  },
  cure: {
    name: 'cure',
    text: spaced`
      The weeks of drying after the soap is cut, four or more: water leaves, and the bar gets harder and
      milder. It is cured when it loses under 1 % of its weight a week.
    `,
  },
  ricing: {
    name: 'ricing',
    text: 'Batter that goes grainy, like rice pudding, mostly from a fragrance. Blending it smooth often helps, and it thickens meanwhile.',
  },
  acceleration: {
    name: 'acceleration',
    text: 'Batter that thickens too fast, often from a fragrance, from heat or from much blending. Stop blending and get it into the mould.',
  },
  bleed: {
    name: 'bleed',
    text: 'Colour that wanders into its neighbours or into the lather. Dyes and most lakes do; pigments such as oxides and ultramarines stay where they are.',
  },
  dispersion: {
    name: 'dispersion',
    text: spaced`
      Powder spread evenly in water, oil or glycerin before it meets the batter, or bought like that. What
      a bought one holds is unknown unless its label says: start with a quarter.
    `,
  },
  ppo: {
    name: 'ppo',
    text: 'Per pound of oils: a pound (454 g) of the oils alone, without water and lye. 1 tsp ppo in 1 kg of oils is 2.2 tsp.',
  },
  waterDiscount: {
    name: 'water discount',
    text: spaced`
      Less water than usual, so the lye is stronger: batter thickens sooner, bars firm up sooner, less gel
      and fewer rivers. Never less water than lye, weight for weight.
    `,
  },
} satisfies Record<TradeTerm, { readonly name: string; readonly text: string }>;
