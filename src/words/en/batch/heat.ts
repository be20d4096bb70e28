import type { Lever } from '../../../engine/heat/crackle.ts';
import type { GelVerdict } from '../../../engine/heat/estimate.ts';
import type { HeatProcess, MouldMaterial, RiskLevel } from '../../../engine/heat/setting.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { degrees, degreesBetween } from '../../temperatures.ts';

const { percent: pc, tenths, whole } = numbersIn('en');

const levers: Readonly<Record<Lever['id'], (to: number) => string>> = {
  'start-cooler': to => `pour at ${degrees(to)}`,
  'less-water': to => `use ${whole(to)} % lye (less water)`,
  'no-insulation': () => 'leave it unwrapped',
  fridge: () => 'put it in the fridge',
};

export const heat = {
  processes: {
    ambient: 'on the bench',
    insulated: 'wrapped',
    oven: 'in a warm oven, switched off',
    fridge: 'in the fridge',
  } satisfies Record<HeatProcess, string>,
  materials: {
    silicone: 'silicone',
    wood: 'wood',
    plastic: 'plastic',
    cardboard: 'cardboard',
  } satisfies Record<MouldMaterial, string>,
  peaks: (v: { coreC: number; lowC: number; highC: number; edgeC: number; hours: number }) =>
    `Core about ${degrees(v.coreC)} after ${tenths(v.hours)} h (likely ${degreesBetween(v.lowC, v.highC, 'to')}), edge ${degrees(v.edgeC)}.`,
  gel: (v: { none: number; partial: number; full: number }) =>
    `Gel: none ${pc(v.none)}, partial with a ring ${pc(v.partial)}, full ${pc(v.full)}.`,
  verdicts: {
    none: 'Most likely no gel.',
    partial: 'Most likely a partial gel: expect a ring.',
    full: 'Most likely a full gel.',
    uncertain:
      'I can’t tell whether it will gel. Measure the core of one loaf with a probe and I can do better.',
  } satisfies Record<GelVerdict, string>,
  ring: (v: { millimetres: number }) =>
    `If a ring shows, look about ${whole(v.millimetres)} mm in from the sides.`,
  overheat: (v: { chance: number }) =>
    `${pc(v.chance)} chance that the core passes ${degrees(85)}, where loaves crack or heave: watch it, and cool it if it bulges.`,
  crackle: {
    none: 'No white pigment, so no white crackle.',
    low: 'White crackle: low risk.',
    some: 'White crackle: some risk.',
    high: 'White crackle: high risk.',
  } satisfies Record<RiskLevel, string>,
  lever: (v: { id: Lever['id']; to: number; peakC: number; gelChance: number }) =>
    `To lower it: ${levers[v.id](v.to)} (core ${degrees(v.peakC)}, gel ${pc(v.gelChance)}).`,
  lessWhite: 'Less white, no forced gel and a fragrance that does not heat up lower it too.',
  estimate:
    'All heat figures are estimates: heat of saponification and gel temperature are known only within a band.',
};

export const heatRefusals: Pick<RefusalSentences, 'temperature-without-unit' | 'temperature-out-of-range'> = {
  'temperature-without-unit': ({ text }) => `“${text}”: Celsius or Fahrenheit? Write “38 C” or “100 F”.`,
  'temperature-out-of-range': ({ text }) => `“${text}” is outside -5 to 120 °C (23 to 248 °F).`,
};
