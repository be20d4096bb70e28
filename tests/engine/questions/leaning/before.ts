import type { Before, Ran, Talk } from '../../../../src/engine/questions/leaning/before.ts';

const ran = (command: string, given: Ran['given'], job?: Ran['job']): Ran => ({
  kind: 'command',
  job,
  command,
  given,
});

/** What was asked a turn before. */
export const BEFORE: Readonly<Record<string, Ran>> = {
  mica: ran('dose', { colourant: 'mica', portion: '1 kilo oils' }, 'dose'),
  clay: ran('dose', { colourant: 'green clay', portion: '500 g oils' }, 'dose'),
  cups: ran('dose', { colourant: 'ultramarine blue', portion: '2 cups', strength: 'pastel' }, 'dose'),
  lye: ran('plan', { oils: '800 g olive, 200 g coconut', superfat: '5' }, 'lye'),
  shares: ran('plan', { oils: '70% olive, 30% coconut', size: '1 kg oils' }, 'lye'),
  check: { ...ran('colourant check', { item: 'spirulina' }, 'survives-lye'), wish: 'green' },
  teal: ran('match', { target: 'teal', portion: '3 cups' }, 'mix'),
  shelf: ran('shelf add', { item: 'rose clay', amount: '80 g' }, 'shelf-add'),
  wet: ran('dose', { colourant: 'titanium dioxide' }, 'wet'),
  flaw: { ...ran('diagnose', { words: 'it zaps' }, 'diagnose'), burns: true },
};
const ANSWERED: Readonly<Record<string, Before>> = {
  layers: { kind: 'technique', id: 'layers-how' },
  jug: { kind: 'matter', id: 'glass-jug' },
  ash: { kind: 'technique', id: 'ash-avoid' },
  lumps: { kind: 'technique', id: 'no-lumps', words: 'how do I wet mica' },
  cloudy: { kind: 'matter', id: 'cloudy-lye' },
  water: { kind: 'matter', id: 'water-amount', words: 'how much water' },
  tooMuch: { kind: 'matter', id: 'too-much-in' },
  eruption: { kind: 'emergency', ids: ['lye-eruption'] },
  contest: { kind: 'contest' },
  recipe: { kind: 'recipe', hadOne: true },
  open: { kind: 'open' },
};

/** A talk in which that was last. */
export function talkAfter(before: string): Talk {
  const command = BEFORE[before];
  return { last: command ?? ANSWERED[before]!, ran: command };
}
