import type { Given } from '../../src/conversation/question.ts';
import type { Field } from '../../src/conversation/reply.ts';
import type { WrittenPlan } from '../../src/engine/batch/planning/written-plan.ts';
import { readAlone } from '../../src/engine/quantities/number.ts';
import { refuse } from '../../src/engine/refusal.ts';
import type { KeptPlan } from '../../src/records/recipes/index.ts';
import type { Words } from '../../src/words/index.ts';
import { PICKS } from './written.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'number-unreadable': { readonly field: string };
  }
}

/** The three forms of a plan: five fields each, which is all the platform has room for. */
export type FormName = 'begin' | 'more' | 'heat';

/** A form over some of the plan's words, filled with what they are now. */
type Key = Exclude<keyof WrittenPlan, 'purity' | 'oven' | 'reserve'>;
const fields: Readonly<Record<FormName, readonly Key[]>> = {
  begin: ['oils', 'size', 'water', 'superfat', 'portions'],
  more: ['lye', 'liquid', 'additives', 'fragrance', 'swirl'],
  heat: ['process', 'material', 'start', 'room', 'scale'],
};

const HINTS: { readonly [Key in keyof WrittenPlan]?: keyof Words['plan']['forms'] } = {
  oils: 'oilsHint',
  size: 'sizeHint',
  water: 'waterHint',
  superfat: 'superfatHint',
  portions: 'portionsHint',
  lye: 'lyeHint',
  fragrance: 'fragranceHint',
  liquid: 'liquidHint',
  additives: 'additivesHint',
  start: 'temperatureHint',
  room: 'temperatureHint',
};
const LONG_FIELDS: ReadonlySet<string> = new Set(['oils', 'portions', 'additives']);
const NUMBERS: ReadonlySet<string> = new Set(['superfat', 'reserve', 'scale', 'purity']);

/** The fields of a form, filled with what the plan says now. */
export function fieldsOf(
  name: FormName,
  now: Partial<WrittenPlan>,
  { say, language }: { readonly say: Words; readonly language: Words['language'] },
): readonly Field[] {
  const { forms } = say.plan;
  return fields[name].map((key): Field => {
    const label = forms[key];
    const value = now[key];
    if (key in PICKS) {
      const items = Object.entries(PICKS[key as keyof typeof PICKS]).map(([one, names]) => ({
        label: names[language],
        value: one,
        chosen: value === one,
      }));
      return { kind: 'pick', name: key, label, required: false, items };
    }
    const hint = HINTS[key];
    return {
      kind: LONG_FIELDS.has(key) ? 'paragraph' : 'line',
      name: key,
      label,
      required: key === 'oils',
      ...(hint && { hint: forms[hint] }),
      ...(LONG_FIELDS.has(key) && { most: 1500 }),
      ...(value !== undefined && { value: String(value) }),
    };
  });
}

/** What stands in a form, as the plan's own words; a field left empty takes the word away. Throws a Refusal. */
export function wordsIn(sent: Given, name: FormName, say: Words): Partial<WrittenPlan> {
  const words: Record<string, unknown> = {};
  for (const key of fields[name]) {
    const typed = sent[key];
    if (typeof typed !== 'string' || typed.trim() === '') continue;
    words[key] = NUMBERS.has(key) ? numberIn(typed, say.plan.forms[key]) : typed.trim();
  }
  return words;
}

const numberIn = (typed: string, field: string): number =>
  readAlone(typed) ?? refuse('number-unreadable', { field });

/** Only what was written anew: what stands in the form as before keeps its scale. */
export const unlike = ({ written: before }: KeptPlan, words: Partial<WrittenPlan>): Partial<WrittenPlan> =>
  Object.fromEntries(
    Object.entries(words).filter(([key, value]) => before[key as keyof WrittenPlan] !== value),
  );

/** What stands in a field, as text; nothing where it is no text. */
export const textOf = (sent: Given[string] | undefined): string => (typeof sent === 'string' ? sent : '');

/** The plan without the words whose fields were sent empty. */
export function emptied(plan: KeptPlan, name: FormName, sent: Given): KeptPlan {
  const gone = new Set<string>(fields[name].filter(key => textOf(sent[key]).trim() === ''));
  const left = Object.entries(plan.written).filter(([key]) => key === 'oils' || !gone.has(key));
  return { ...plan, written: Object.fromEntries(left) as WrittenPlan };
}

/** Texts as they stand in the form, for another try; a number that is none is left out. */
export const typedIn = (sent: Given, name: FormName): Partial<WrittenPlan> =>
  Object.fromEntries(
    fields[name].flatMap((key): [Key, string | number][] => {
      const typed = sent[key];
      if (typeof typed !== 'string' || typed.trim() === '') return [];
      if (!NUMBERS.has(key)) return [[key, typed]];
      const value = readAlone(typed);
      return value === undefined ? [] : [[key, value]];
    }),
  );
