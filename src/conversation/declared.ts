import { z } from 'zod';
import type { ReadAs } from '../engine/questions/options/in-plain-words.ts';
import type { Phrase } from '../words/sentence.ts';

/** An option as the fronts see it, read off the schema that also validates it. */
export type DeclaredOption = {
  readonly name: string;
  readonly kind:
    | 'text'
    | 'choice'
    | 'whole'
    | 'number'
    | 'yes-no'
    | 'picture'
    | 'member'
    | 'role'
    | 'channel';
  readonly required: boolean;
  readonly says: Phrase;
  readonly choices?: readonly { readonly value: string; readonly label: Phrase }[];
  readonly least?: number;
  readonly most?: number;
  /** What an amount in it is read as. */
  readonly reads?: ReadAs;
  /** True when the front may ask for suggestions while the member types. */
  readonly completes: boolean;
};

/** What the builders of `option.ts` say of a schema: an option before it has a name. */
export type Described = Pick<DeclaredOption, 'kind' | 'says' | 'least' | 'most' | 'reads'> & {
  /** In the order of the list. */
  readonly choices?: Readonly<Record<string, Phrase>>;
  /** Over how many options of the same kind it is spread. */
  readonly times?: number;
};
/** Beside the schemas and by themselves, so that a phrase stays unread until somebody needs its language. */
export const described = z.registry<Described>();

/** Name of the `place`-th (from 1) option that a repeated option `name` is spread over. */
export const repeatedName = (name: string, place: number) => `${name}-${place}`;

/**
 * The options of a schema in declared order, those that must be given first, as the platform wants them.
 * Throws an Error on a schema built from anything but the builders of `option.ts`.
 */
export function declaredOptions(
  schema: z.ZodObject,
  completes: ReadonlySet<string>,
): readonly DeclaredOption[] {
  const options = Object.entries(schema.shape).flatMap(([name, declared]) => {
    const { inner, required } = unwrapped(declared as z.ZodType);
    return named(name, described.get(inner), { required, completes: completes.has(name) });
  });
  return [...options.filter(option => option.required), ...options.filter(option => !option.required)];
}

/** What the builder made, without what was said of its absence. */
function unwrapped(schema: z.ZodType): { readonly inner: z.ZodType; readonly required: boolean } {
  if (!(schema instanceof z.ZodOptional || schema instanceof z.ZodDefault))
    return { inner: schema, required: true };
  return { inner: unwrapped(schema.unwrap() as z.ZodType).inner, required: false };
}

function named(
  name: string,
  one: Described | undefined,
  given: Pick<DeclaredOption, 'required' | 'completes'>,
): readonly DeclaredOption[] {
  if (!one) throw new Error(`option ${name} is not made by the builders of option.ts`);
  const { choices, times, ...rest } = one;
  const option = {
    ...rest,
    ...given,
    ...(choices && { choices: Object.entries(choices).map(([value, label]) => ({ value, label })) }),
  };
  if (times === undefined) return [{ name, ...option }];
  return Array.from({ length: times }, (_, at) => ({ name: repeatedName(name, at + 1), ...option }));
}
