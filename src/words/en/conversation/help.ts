import type { ReasonId } from '../../../engine/refusal.ts';
import type { RefusalSentences } from '../../sentence.ts';

/** What people come for; each leads to the command that does it. */
const jobs = {
  dose: { name: 'How much colour?', says: 'spoons, and how to wet it', topic: 'dose' },
  colour: { name: 'See a colour', says: 'before you pour', topic: 'preview' },
  plan: { name: 'Plan a batch', says: 'lye, water, portions, heat', topic: 'plan' },
  trouble: { name: 'What went wrong?', says: 'in words or by photo', topic: 'diagnose' },
  keep: { name: 'My shelf', says: 'what you have, how it behaves', topic: 'shelf' },
};

/** Words of the trade, in a sentence or two. */
const terms = {
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
    text: 'A sting of free lye. Never put soap on your tongue to find out: use pH paper or wait.',
  },
};

/** Cautions, under the words they are looked for by. */
const cautions = {
  lye: {
    name: 'lye',
    text: 'Burns skin and eyes. Sealed goggles, gloves, long sleeves. Slowly into cold water, never water onto lye; strong draught; no aluminium. In the eyes: rinse at once, 30 minutes, get help. No vinegar.',
  },
  rawBatter: {
    name: 'raw batter',
    text: 'Burns skin and eyes for a day or two, washing-up included: gloves and goggles.',
  },
  dust: {
    name: 'dust',
    text: 'Don’t breathe powders: no draught, dust mask on, powder under the liquid before any power.',
  },
  heat: {
    name: 'heat',
    text: 'A loaf can reach 85 °C and heave. Watch it in the first hours; cool it when it bulges.',
  },
  metal: {
    name: 'metal in soap',
    text: 'Aluminium, zinc and copper flakes never go in: aluminium and lye make hydrogen, which burns.',
  },
};

export const help = {
  headline: 'Ask me in your own words, or pick a job.',
  job: (v: { name: string; topic: string; says: string }) => `${v.name} /${v.topic}: ${v.says}`,
  jobs,
  terms,
  cautions,
  /** Lines to try a command with. */
  examples: {
    dose: '/dose colourant:"ultramarine blue" portion:"2 cups"',
    preview: '/preview mix:"ultramarine blue + titanium dioxide"',
    match: '/match target:teal portion:"1 cup"',
    plan: '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups ultramarine blue; rest plain"',
    diagnose: '/diagnose words:"blue specks all over, no zap"',
    ask: '/ask question:"how much ultramarine for 2 cups?"',
  },
  tryIt: 'Try it',
  row: (v: { name: string; purpose: string; subcommands: readonly string[] }) =>
    `/${v.name}: ${v.purpose}${v.subcommands.length > 0 ? ` (${v.subcommands.join(', ')})` : ''}`,
  start: '/help topic: explains any command, word or caution.',
  lye: 'Raw soap and lye burn. Gloves and goggles on, children and pets away; nothing here replaces a tested recipe or your local rules.',
  lyeBrief: 'Raw soap and lye burn: gloves and goggles. Hurt? /first-aid',
};

export type HelpReason = Extract<ReasonId, `topic-${string}`>;

export const helpRefusals: Pick<RefusalSentences, HelpReason> = {
  'topic-unknown': ({ text, nearest }) =>
    `I have nothing to explain under “${text}”.${nearest.length > 0 ? ` Did you mean ${nearest.join(', ')}?` : ''}`,
};
