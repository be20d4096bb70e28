import { z } from 'zod';
import { byLanguage } from '../../engine/language.ts';
import { saidAmount } from '../../engine/quantities/told/said-amount.ts';
import type { Refusal } from '../../engine/refusal.ts';
import { respelt } from '../../engine/text/spelling/trade/respelt.ts';
import type { Words } from '../../words/index.ts';
import { type Given, textsOf } from '../question.ts';
import type { ToldAmount } from './told-plainly.ts';

/** One thing that may be meant: what a button says, and what takes the place of the unclear text. */
export type Candidate = { readonly label: string; readonly text: string };
export type Unclear = { readonly text: string; readonly candidates: readonly Candidate[] };

/** More buttons than this are a list to read. */
const MOST = 10;

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? (value as unknown[]) : []);
const phrase = z.object(byLanguage(() => z.string()));
const named = z.object({ names: phrase });

/** What a refusal says may be meant: by its `candidates` or `nearest`, or by the two ends of a range. */
export function unclearIn({ id, values }: Refusal, say: Words): Unclear | undefined {
  const said = values as Said;
  const text = said.text ?? said.asked;
  if (typeof text !== 'string' || text.trim() === '') return undefined;
  if (id === 'amount-several' || id === 'amount-range')
    return { text: text.trim(), candidates: amountsIn(said).map(one => amountLabelled(one, say)) };
  const candidates = [...listOf(said.candidates), ...listOf(said.nearest)].flatMap(
    (one): readonly Candidate[] => {
      if (typeof one === 'string') return [{ label: one, text: one }];
      const entry = named.safeParse(one);
      const names = entry.success ? entry.data.names : phrase.safeParse(one).data;
      return names ? [{ label: names[say.language], text: names.en }] : [];
    },
  );
  return candidates.length === 0 ? undefined : { text: text.trim(), candidates: candidates.slice(0, MOST) };
}

type Said = Readonly<Record<string, unknown>>;
/** The amounts that a refusal offers: those that may be meant, or the two ends of a range. */
const amountsIn = ({ candidates, low, high }: Said): readonly ToldAmount[] =>
  candidates === undefined
    ? [low, high].map(end => ({ text: String(end), said: saidAmount(String(end)) }))
    : (candidates as readonly ToldAmount[]);

const amountLabelled = ({ text, said }: ToldAmount, say: Words): Candidate => ({
  label: say.quantities.said(said),
  text,
});

/** The option whose text holds the unclear part. */
export function optionWith(text: string, given: Given): readonly [name: string, value: string] | undefined {
  const part = text.replace(/…$/u, '').toLowerCase();
  const entries = Object.entries(textsOf(given));
  return (
    entries.find(([, value]) => value.trim().toLowerCase() === part) ??
    entries.find(([, value]) => value.toLowerCase().includes(part))
  );
}

export const replaced = (value: string, text: string, by: string): string => {
  const at = value.toLowerCase().indexOf(text.replace(/…$/u, '').toLowerCase());
  return at < 0 ? by : `${value.slice(0, at)}${by}${value.slice(at + text.replace(/…$/u, '').length)}`;
};

/** A longer text is told by the words that were put right in it. UTF-16 units. */
const LONGEST_SHOWN = 60;

/** Texts that no grammar reads as they stand, and that slips of the finger may have made so: nothing is written yet. */
const MISSPELT: ReadonlySet<string> = new Set([
  'colourant-unknown',
  'oil-unknown',
  'amount-unit-unknown',
  'amount-unreadable',
  'amount-without-unit',
  'carrier-unknown',
  'colour-unreadable',
  'mould-without-unit',
  'oil-without-amount',
  'palette-unreadable',
  'portion-without-amount',
  'powder-without-amount',
  'premix-unreadable',
  'size-unreadable',
  'strength-unreadable',
  'swirl-shares-unreadable',
]);

/**
 * What was given with the slips of the finger in the unreadable option put right, and how it was read; undefined where nothing in
 * it is a slip of a word of the trade.
 */
export function givenRespelt(
  { id, values }: Refusal,
  given: Given,
): { readonly given: Given; readonly label: string } | undefined {
  if (!MISSPELT.has(id)) return undefined;
  const said = values as Said;
  const part = said.text ?? said.unit ?? said.asked;
  const option = typeof part === 'string' && part.trim() !== '' ? optionWith(part.trim(), given) : undefined;
  if (!option) return undefined;
  const [name, value] = option;
  const { text, changes } = respelt(value);
  return changes.length === 0
    ? undefined
    : {
        given: { ...given, [name]: text },
        label: text.length > LONGEST_SHOWN ? [...new Set(changes.map(({ to }) => to))].join(', ') : text,
      };
}

/** What was given, with the option that was likely meant in place of one that the command does not have. */
export function underMeantName({ id, values }: Refusal, given: Given): Given | undefined {
  const { option, meant } = values as Readonly<Record<string, unknown>>;
  if (id !== 'option-unknown' || typeof option !== 'string' || typeof meant !== 'string') return undefined;
  const { [option]: value, ...rest } = given;
  return value === undefined || rest[meant] !== undefined ? undefined : { ...rest, [meant]: value };
}
