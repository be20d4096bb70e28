import type { Aspect } from './aspects/aspect.ts';
import type { Lack, Lean } from './lean-kinds.ts';
import type { Slots } from './turn/slots.ts';

/** These can be answered for all colours alike where none was named. */
export const FOR_ALL: ReadonlySet<Aspect> = new Set([
  'how-hot',
  'holds',
  'bleeds',
  'too-much',
  'instead',
  'which-cup',
  'when',
]);
const POINTS = /^(?:is |are |does |will |can i use )?(?:this|these|that|those|est[aeo]|es[aeo])(?!\p{L})/u;

const LACKS: { readonly [One in Aspect]?: Lack } = {
  why: 'of-what',
  done: 'what-happened',
  still: 'what-happened',
  'next-time': 'what-happened',
  'comes-back': 'what-happened',
  'how-long': 'of-what',
  same: 'of-what',
  more: 'of-what',
};

/** What is asked back where something is asked of nothing that is kept; undefined where it is answered for all alike. Pure. */
export const askedOfNothing = (aspect: Aspect, text: string): Lean | undefined =>
  FOR_ALL.has(aspect) && !POINTS.test(text)
    ? undefined
    : { kind: 'asks', lacks: LACKS[aspect] ?? 'which-thing' };

/** A name alone may be asked of anew; what else is to be changed has nothing here that it could change. */
export const unnamed = (slots: Slots): Lean | undefined =>
  slots.named.length > 0 || slots.hues.length > 0 ? undefined : lackOf(slots);

/** Names its colourant and how much is to be coloured: it needs nothing from before. */
export const isComplete = ({ named, amount }: Slots): boolean => named.length > 0 && amount !== undefined;

/** What a turn lacks that tells only what is to be changed; undefined where a name alone may be asked of. */
export function lackOf(slots: Slots): Lean | undefined {
  if (isComplete(slots)) return undefined;
  const asks = (lacks: Lack): Lean => ({ kind: 'asks', lacks, slots });
  if (slots.named.length > 0) return slots.isMarked ? asks('name-for') : undefined;
  if (slots.hues.length > 0) return slots.isMarked ? asks('name-for') : undefined;
  if (slots.amount !== undefined) return asks('amount-of');
  if (slots.region !== undefined) return undefined;
  const tells = [
    slots.times,
    slots.share,
    slots.unit,
    slots.of,
    slots.depth,
    slots.carrier,
    slots.percent,
    slots.figure,
    slots.towards,
  ];
  return tells.some(one => one !== undefined) || slots.isMarked ? asks('of-what') : undefined;
}
