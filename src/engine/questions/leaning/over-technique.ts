import type { Technique } from '../technique/topic.ts';
import { isComplete } from './lacks.ts';
import { type Lean, run } from './lean-kinds.ts';
import type { Slots } from './turn/slots.ts';

const OF_WETTING: ReadonlySet<Technique> = new Set(['no-lumps', 'dry-in', 'mica-floats', 'premix-keeps']);
/** Matters after which another liquid is one to wet colours in. */
export const OF_LIQUID: ReadonlySet<Technique> = new Set([...OF_WETTING, 'carrier-counts', 'mica-settles']);
const OF_HOLDING: ReadonlySet<Technique> = new Set([
  'colours-that-stay',
  'colours-that-bleed',
  'natural-colours',
]);

/** "And clay?" after how colours are wetted, or which of them hold. */
export function overTechnique(id: Technique, slots: Slots): Lean | undefined {
  const [name, ...others] = slots.named;
  if (name === undefined || others.length > 0 || isComplete(slots)) return undefined;
  if (OF_WETTING.has(id)) return run({ job: 'wet', command: 'dose', given: { colourant: name } });
  return OF_HOLDING.has(id)
    ? run({ job: 'survives-lye', command: 'colourant check', given: { item: name } })
    : undefined;
}
