import { action, commandGroup } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { choice, number, text, whole, yesNo } from '../../src/conversation/option.ts';
import { suggestBases, suggestMix } from '../../src/presenting/colour/suggest.ts';
import { phrases } from '../../src/words/declared.ts';
import { gradientReply } from './gradient.ts';
import { infusionReply } from './infusion.ts';
import { layersReply, lineReply, swirlReply } from './shape.ts';

const says = phrases('pour');

const mould = text(says.options.mould, { most: 100 });
const soap = {
  base: text(says.options.base, { most: 400 }).optional(),
  gel: yesNo(says.options.gel).optional(),
};
const base = (typed: string, { say }: Context) => suggestBases(typed, say);

export default commandGroup('pour', says.purpose, {
  layers: action({
    purpose: says.layers.purpose,
    seenBy: 'group',
    options: {
      mould,
      layers: whole(says.layers.layers, { least: 2, most: 12 }),
      raised: number(says.layers.raised, { least: 0, most: 40 }).optional(),
    },
    answer: layersReply,
  }),
  line: action({
    purpose: says.line.purpose,
    seenBy: 'asker',
    options: {
      mould,
      colourant: text(says.line.colourant).optional(),
      lines: whole(says.line.lines, { least: 1, most: 20 }).optional(),
      thickness: choice(says.line.thickness).optional(),
    },
    answer: lineReply,
  }),
  swirl: action({
    purpose: says.swirl.purpose,
    seenBy: 'group',
    options: {
      mould,
      shares: text(says.swirl.shares, { most: 400 }),
      depth: number(says.swirl.depth, { least: 0.5, most: 30 }).optional(),
    },
    answer: swirlReply,
  }),
  gradient: action({
    purpose: says.gradient.purpose,
    seenBy: 'asker',
    pace: 'slow',
    options: {
      from: text(says.gradient.from, { most: 400 }),
      to: text(says.gradient.to, { most: 400 }),
      steps: whole(says.gradient.steps, { least: 3, most: 12 }).optional(),
      portion: text(says.gradient.portion, { reads: 'portion' }).optional(),
      ...soap,
    },
    completes: { base, from: suggestMix, to: suggestMix },
    answer: gradientReply,
  }),
  infusion: action({
    purpose: says.infusion.purpose,
    seenBy: 'group',
    options: {
      bar: text(says.infusion.bar).optional(),
      target: text(says.infusion.target).optional(),
      oils: text(says.infusion.oils).optional(),
      ...soap,
    },
    completes: { base },
    answer: infusionReply,
  }),
});
