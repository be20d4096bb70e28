import { parsePortion } from '../../src/engine/quantities/told/portion.ts';
import { unlessRefused } from '../../src/engine/refusal.ts';
import { sameThing } from './same-thing.ts';
import type { Expect } from './text-set.ts';

/** Options that a command is given: what each must be, and undefined where nobody told it. */
type Wanted = Readonly<Record<string, ((value: string) => boolean) | undefined>>;
type Given = Readonly<Record<string, string>>;

const named = (name: unknown) => (value: string) => sameThing(value, String(name));
const any = () => true;
const amount = (value: string) => unlessRefused(() => parsePortion(value)) !== undefined;
const sized = (expect: Expect) => Object.keys(expect).some(key => key.startsWith('portion_'));

/** One thing goes in under its name, several as a list of which each names one. */
function things({ colourant, ingredients }: Expect): Wanted {
  const all = (ingredients ?? [colourant].filter(one => one !== undefined)) as string[];
  if (all.length === 1) return { item: named(all[0]) };
  return all.length > 1
    ? { ingredients: value => all.length === value.split(/,|\by\b|\band\b/u).length, item: undefined }
    : {};
}

/** What each job takes of what a writer labelled. Of a shelf, a flaw and the contest more is taken than was labelled. */
const WANTED: Readonly<Record<string, (expect: Expect) => Wanted>> = {
  dose: ({ colourant, strength, tsp, grams, ...expect }) => ({
    colourant: colourant === undefined ? undefined : named(colourant),
    portion: sized(expect) ? amount : undefined,
    ...(tsp === undefined && grams === undefined && { strength: strength === undefined ? undefined : any }),
  }),
  'survives-lye': things,
  law: things,
  wet: ({ colourant }) => ({ colourant: colourant === undefined ? undefined : named(colourant) }),
  compare: ({ ingredients }) => {
    const [first, second, ...more] = (ingredients ?? []) as string[];
    return second !== undefined && more.length === 0 ? { first: named(first), second: named(second) } : {};
  },
  mix: ({ target_hex: target }) => (target === undefined ? {} : { target: any }),
  preview: expect => ({ mix: any, portion: sized(expect) ? amount : undefined }),
  plan: expect => ({ size: sized(expect) ? any : undefined, portions: undefined }),
};

/** What is wrong with the options of the command that a question comes to; undefined where each was told, and nothing else. */
export function wrongOptions(given: Given, job: string, expect: Expect): string | undefined {
  const wanted = WANTED[job]?.(expect) ?? {};
  for (const [option, isRight] of Object.entries(wanted)) {
    const value = given[option];
    if (isRight === undefined ? value !== undefined : value === undefined || !isRight(value))
      return `option ${option}: ${value ?? 'nothing'}`;
  }
  return undefined;
}
