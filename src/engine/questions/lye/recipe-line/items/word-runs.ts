import { unbroken } from '../../../../over-lines.ts';
import type { Part } from '../settling/parts.ts';
import type { Item } from './item.ts';

/** Words that stand side by side in a part of a line, and what is told by where they stand. */
export type Run = {
  readonly words: readonly Item[];
  readonly before: Item | undefined;
  readonly after: Item | undefined;
  /** "From the butcher", "de la finca": where what stands before comes from. */
  readonly isOrigin: boolean;
  /** "It was lovely". */
  readonly isSpeech: boolean;
  /** "Sitting in the garage". */
  readonly isPlaced: boolean;
  /** "In the pot": where what stands before is. */
  readonly isIn: boolean;
  /** Before a colon. */
  readonly isHead: boolean;
};

/** "And my exam is tomorrow": of no oil. */
const WHEN = new RegExp(
  unbroken`
    ^(?:is|are|was|es|son) (?:the )?(?:tomorrow|today|tonight|soon|over|next|on|monday|tuesday|wednesday|
    thursday|friday|saturday|sunday|manana|hoy|pronto)(?!\p{L})
  `,
  'u',
);
const SPEECH = /(?:^| )(?:it|is|are|was|were|es|son|era|eran)(?: |$)/u;
const PLACE = /(?:^| )(?:in|at|on|as|to|en)(?: |$)/u;
const IN = /^(?:in|at|on|into|en)(?: (?:the|a|my|our|la|el|mi))?$/u;
const ORIGIN = /^(?:del|de (?:la|mi|mis|los|las|nuestr[oa])|from (?:the|my|our)|off the)$/u;
const textOf = (items: readonly Item[]): string => items.map(({ text }) => text).join(' ');

/** The links that stand directly before, as text. */
function linksBefore(items: readonly Item[]): string {
  const from = items.findLastIndex(({ is }) => is !== 'link') + 1;
  return items
    .slice(from)
    .map(({ text }) => text)
    .join(' ');
}

function linksBehind(items: readonly Item[]): string {
  const to = items.findIndex(({ is }) => is !== 'link');
  return items
    .slice(0, to === -1 ? items.length : to)
    .map(({ text }) => text)
    .join(' ');
}

/** Runs of words, and what stands on either side. */
export function runsOf(items: readonly Item[]): readonly Run[] {
  const runs: Run[] = [];
  for (let at = 0; at < items.length; at += 1) {
    // What is left away may be told in any word.
    if (items[at]!.is !== 'word' || items[at - 1]?.is === 'without') continue;
    const from = at;
    while (items[at + 1]?.is === 'word') at += 1;
    const links = linksBefore(items.slice(0, from));
    runs.push({
      words: items.slice(from, at + 1),
      before: items.slice(0, from).findLast(({ is }) => is !== 'link'),
      isSpeech: SPEECH.test(links) || WHEN.test(textOf(items.slice(at + 1, at + 4))),
      isHead: items[at + 1]?.text === ':',
      isIn: IN.test(links),
      isPlaced: PLACE.test(links) || PLACE.test(linksBehind(items.slice(at + 1))),
      isOrigin: ORIGIN.test(links),
      after: items.slice(at + 1).find(({ is }) => is !== 'link'),
    });
  }
  return runs;
}

/** Whether a part begins behind a joint ("and", "with") of the one before. Pure. */
export function followsJoint(items: readonly Item[], { items: [first] }: Part): boolean {
  return first !== undefined && items[items.indexOf(first) - 1]?.is === 'joint';
}
