import type { Block } from '../../conversation/reply.ts';
import type { Jar } from '../../records/shelf/jars/jar.ts';
import { timesItsKind } from '../../records/shelf/jars/learnt-strength.ts';
import type { Words } from '../../words/index.ts';
import { rough } from '../dose.ts';
import { knownAs } from './jars.ts';

/** In one clause, that the spoons of an answer go by what bars taught of these jars; nothing where they taught nothing. */
export function learntNote(jars: readonly Jar[], say: Words): readonly (Block & { readonly kind: 'text' })[] {
  const learnt = new Map(
    jars.flatMap(jar => {
      const times = timesItsKind(jar);
      return times === undefined ? [] : [[knownAs(jar, say), rough(times)] as const];
    }),
  );
  if (learnt.size === 0) return [];
  return [
    {
      kind: 'text',
      text: say.dosing.learntIn({ jars: [...learnt].map(([name, times]) => ({ name, times })) }),
    },
  ];
}
