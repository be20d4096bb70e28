import type { Aspect } from './aspects/aspect.ts';
import { askedIn, isOfLye, type Ran } from './before.ts';
import { type Lean, run } from './lean-kinds.ts';
import { holderNamed } from './subject/subject.ts';
import { thingOf } from './subject/things.ts';

/** A command for what is asked of the thing before. */
export function ofItsThing(aspect: Aspect, before: Ran, text: string): Lean {
  const { command, given } = before;
  const part: Lean = { kind: 'part', of: aspect };
  if (command === 'diagnose') return part;
  if (isOfLye(before)) return aspect === 'water' || aspect === 'how-much' ? run(before) : part;
  const thing = thingOf(before);
  if (command === 'match') return aspect === 'how-much' || aspect === 'looks' ? run(before) : part;
  if (thing === undefined) return part;
  const portion = given.portion === undefined ? {} : { portion: given.portion };
  // Too much of it went in: what is done with the bars.
  if (aspect === 'comes-back' && command === 'dose') return { kind: 'technique', id: 'too-much-colour' };
  switch (aspect) {
    case 'holds':
    case 'bleeds':
    case 'safe':
    case 'allowed':
    case 'comes-back':
      return run({
        job: 'survives-lye',
        command: 'colourant check',
        given: { item: thing },
        asked:
          aspect === 'bleeds'
            ? 'bleeds'
            : aspect === 'holds' && askedIn(text) === 'fades'
              ? 'fades'
              : undefined,
      });
    case 'how-much':
      return run({ job: 'dose', command: 'dose', given: { colourant: thing, ...portion } });
    case 'wet':
    case 'water':
      return run({ job: 'wet', command: 'dose', given: { colourant: thing, ...portion } });
    case 'looks':
      return run({ job: 'preview', command: 'preview', given: { mix: thing, ...portion } });
    case 'instead': {
      // "A better one", of a green that fades: the colourant of that hue that neither lye nor light moves.
      const holder = before.wish?.split(' ').flatMap(word => holderNamed(word) ?? [])[0];
      if (holder !== undefined && holder !== thing)
        return run({ job: 'dose', command: 'dose', given: { colourant: holder, ...portion } });
      return before.wish === undefined
        ? part
        : run({ job: 'mix', command: 'match', given: { target: before.wish } });
    }
    default:
      return part;
  }
}
