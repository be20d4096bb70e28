import type { TradeTerm } from '../../../engine/questions/found/trade-terms.ts';

/** A word, what it means in one sentence, and what else is said of it. */
export type Explained = { readonly name: string; readonly means: string; readonly more?: string };

/** Words of the trade, in a sentence or two. */
export const terms = {
  batter: {
    name: 'batter',
    means: 'Raw soap while it still pours: oils and lye water blended.',
    more: 'It burns skin.',
  },
  trace: {
    name: 'trace',
    means: 'The moment batter is thick enough that a drizzle stays on top.',
    more: 'Light trace pours, thick trace spoons.',
  },
  superfat: {
    name: 'superfat',
    means: 'Percent of the oils that the lye leaves as oil. 5 is usual; below 0 the bar is caustic.',
  },
  gel: {
    name: 'gel',
    means: 'A hot, see-through phase of the loaf.',
    more: 'Gelled soap looks deeper and clearer; half gelled shows a ring.',
  },
  glycerinRivers: {
    name: 'glycerin rivers',
    means: 'Clear wandering lines in soap that got hot with much water.',
    more: 'Looks only.',
  },
  ash: {
    name: 'soda ash',
    means: 'White bloom on the surface where young soap meets air.',
    more: 'Looks only; steam or a rinse takes it off.',
  },
  premix: {
    name: 'premix',
    means: 'A colour that comes wetted, bought or made: you measure the paste, not the powder.',
  },
  paste: {
    name: 'paste',
    means: 'Powder stirred smooth in a little liquid, before it meets the batter.',
  },
  portion: {
    name: 'portion of batter',
    means: 'The part of the batter that you pull out for one colour: “2 cups”.',
  },
  lake: {
    name: 'lake',
    means: 'A dye fixed on alumina.',
    more: 'Lye lets most of them go: they bleed and stain.',
  },
  mica: {
    name: 'mica',
    means: 'Pearly flakes.',
    more: 'What coats the mica decides whether the colour holds in lye.',
  },
  oxide: {
    name: 'oxide',
    means: 'Iron and chromium oxides: strong, cheap, safe in lye, clumpy.',
    more: 'Wet them well.',
  },
  dishTest: {
    name: 'dish test',
    means: 'A pinch of the powder in a dish of water.',
    more: 'Swirls in: wet it in water. Sits on the bottom: oil or glycerin.',
  },
  testBar: {
    name: 'test bar',
    means: 'A small bar of a known dose, cured.',
    more: 'It tells your own jar’s strength: /calibrate.',
  },
  colourUnits: {
    name: 'colour units',
    means: 'How far two colours are apart (CIEDE2000): 2 is just visible, 10 is another shade.',
  },
  zap: {
    name: 'zap',
    means: 'A sting of free lye, as of a battery.',
    more: 'Never put soap on your tongue to find out: pH paper, or a wet fingertip off a cured bar.',
  },
  cure: {
    name: 'cure',
    means:
      'The weeks of drying after the soap is cut, four or more: water leaves, and the bar gets harder and milder.',
    more: 'It is cured when it loses under 1 % of its weight a week.',
  },
  ricing: {
    name: 'ricing',
    means: 'Batter that goes grainy, like rice pudding, mostly from a fragrance.',
    more: 'Blending it smooth often helps, and it thickens meanwhile.',
  },
  acceleration: {
    name: 'acceleration',
    means: 'Batter that thickens too fast, often from a fragrance, from heat or from much blending.',
    more: 'Stop blending and get it into the mould.',
  },
  bleed: {
    name: 'bleed',
    means: 'Colour that wanders into its neighbours or into the lather.',
    more: 'Dyes and most lakes do; pigments such as oxides and ultramarines stay where they are.',
  },
  dispersion: {
    name: 'dispersion',
    means: 'Powder spread evenly in water, oil or glycerin before it meets the batter, or bought like that.',
    more: 'What a bought one holds is unknown unless its label says: start with a quarter.',
  },
  ppo: {
    name: 'ppo',
    means:
      'Per pound of oils: a pound (454 g) of the oils alone, without water and lye. 1 tsp ppo in 1 kg of oils is 2.2 tsp.',
  },
  waterDiscount: {
    name: 'water discount',
    means:
      'Less water than usual, so the lye is stronger: batter thickens sooner, bars firm up sooner, less gel and fewer rivers.',
    more: 'Never less water than lye, weight for weight.',
  },
} satisfies Readonly<Record<TradeTerm, Explained>>;
