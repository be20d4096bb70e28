import { acidIn } from '../../text/names/acid-words.ts';
import type { Reading } from '../read.ts';

/** Questions of what a colour bears, in which an acid beside an ultramarine decides. */
const BEARING: ReadonlySet<string> = new Set(['survives-lye', 'law', 'wet']);

/** What has already come of it is a flaw, or worse. */
const HAPPENED =
  /\b(?:why|smel\w*|stink\w*|turned|went|came out|has gone|por qu[eé]|huel\w*|ol[ií]a|olor|sali[oó]|qued[oó])(?!\p{L})/iu;

/**
 * An acid that a question names beside an ultramarine is checked with it, and not dropped; also where it is taken for a
 * flaw, of which it tells nothing. Pure.
 */
export function withItsAcid(reading: Reading, question: string): Reading {
  const acid = acidIn(question);
  const asksWhatItBears =
    BEARING.has(reading.job) || (reading.job === 'diagnose' && !HAPPENED.test(question));
  const { ingredients } = reading.given;
  // The reader knows "acid" alone: one that is a fat is not the acid that was found in the list.
  if (acid === undefined && typeof ingredients === 'string')
    return {
      ...reading,
      given: { ...reading.given, ingredients: ingredients.replace(/, acid(?:o)?(?=,|$)/u, '') },
    };
  if (acid === undefined || !/\b(?:ultramar|77007)/iu.test(question) || !asksWhatItBears) return reading;
  const listed = typeof ingredients === 'string' ? ingredients : 'ultramarine';
  return {
    ...reading,
    command: 'colourant check',
    given: { ingredients: acidIn(listed) === undefined ? `${listed}, ${acid}` : listed },
    missing: [],
  };
}
