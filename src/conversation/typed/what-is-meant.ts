import { z } from 'zod';
import { barredIn } from '../../engine/hazards/index.ts';
import { byLanguage, type Language } from '../../engine/language.ts';
import { isNearBarred } from '../../engine/questions/near-barred.ts';
import type { Refusal } from '../../engine/refusal.ts';
import { closestThing, slipsInName } from '../../engine/text/closest-name.ts';
import { distance } from '../../engine/text/edit-distance.ts';
import { fold } from '../../engine/text/fold.ts';
import type { Given } from '../question.ts';

/** One thing that may be meant: what a button says, and what takes the place of the unclear text. */
export type Candidate = { readonly label: string; readonly text: string };
export type Unclear = { readonly text: string; readonly candidates: readonly Candidate[] };

/** More buttons than this are a list to read. */
const MOST = 10;

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? (value as unknown[]) : []);
const phrase = z.object(byLanguage(() => z.string()));
const named = z.object({ names: phrase });

/** What a refusal says may be meant: by its `candidates` or `nearest`, or by the two ends of a range. */
export function unclearIn({ id, values }: Refusal, language: Language): Unclear | undefined {
  const said = values as Readonly<Record<string, unknown>>;
  const text = said.text ?? said.asked;
  if (typeof text !== 'string' || text.trim() === '') return undefined;
  const ends = id === 'amount-range' ? [said.low, said.high] : [];
  const candidates = [...listOf(said.candidates), ...listOf(said.nearest), ...ends].flatMap(
    (one): readonly Candidate[] => {
      if (typeof one === 'string') return [{ label: one, text: one }];
      const entry = named.safeParse(one);
      const names = entry.success ? entry.data.names : phrase.safeParse(one).data;
      return names ? [{ label: names[language], text: names.en }] : [];
    },
  );
  return candidates.length === 0 ? undefined : { text: text.trim(), candidates: candidates.slice(0, MOST) };
}

/** The option whose text holds the unclear part. */
export function optionWith(text: string, given: Given): readonly [name: string, value: string] | undefined {
  const part = text.replace(/…$/u, '').toLowerCase();
  const entries = Object.entries(given).filter(
    (entry): entry is [string, string] => typeof entry[1] === 'string',
  );
  return (
    entries.find(([, value]) => value.trim().toLowerCase() === part) ??
    entries.find(([, value]) => value.toLowerCase().includes(part))
  );
}

export const replaced = (value: string, text: string, by: string): string => {
  const at = value.toLowerCase().indexOf(text.replace(/…$/u, '').toLowerCase());
  return at < 0 ? by : `${value.slice(0, at)}${by}${value.slice(at + text.replace(/…$/u, '').length)}`;
};

/** Names that a slip may be put right in without asking: nothing is written, and the reply says how it was read. */
export const SLIPS: ReadonlySet<string> = new Set(['colourant-unknown', 'oil-unknown']);

/**
 * The one candidate that a slip of the finger was meant for; undefined where two are as near, where it is too far, or where
 * a word is as near to a colour that must stay out of soap: such a correction is asked, never made.
 */
export function slipOf({ text, candidates }: Unclear): Candidate | undefined {
  if (fold(text).split(' ').some(nearBarred)) return undefined;
  return closestThing(
    candidates.map(thing => ({ thing, far: distance(fold(text), fold(thing.text)) })),
    { most: slipsInName(text), margin: 1, alike: () => false },
  );
}

const nearBarred = (word: string): boolean => barredIn(word)?.hue === false || isNearBarred(word);

/** What was given, with the option that was likely meant in place of one that the command does not have. */
export function underMeantName({ id, values }: Refusal, given: Given): Given | undefined {
  const { option, meant } = values as Readonly<Record<string, unknown>>;
  if (id !== 'option-unknown' || typeof option !== 'string' || typeof meant !== 'string') return undefined;
  const { [option]: value, ...rest } = given;
  return value === undefined || rest[meant] !== undefined ? undefined : { ...rest, [meant]: value };
}
