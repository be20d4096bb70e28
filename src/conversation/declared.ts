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

type Described = {
  type?: string;
  option?: DeclaredOption['kind'];
  says?: Phrase;
  labels?: Record<string, Phrase>;
  reads?: ReadAs;
  minimum?: number;
  maximum?: number;
  maxLength?: number;
  items?: Described;
  maxItems?: number;
};

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
  const json = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' });
  const required = new Set(json.required ?? []);
  const options = Object.entries(json.properties ?? {}).flatMap(([name, described]) =>
    spread(name, described as Described).map(([spreadName, one]) =>
      declaredOption(spreadName, one, { required: required.has(name), completes: completes.has(name) }),
    ),
  );
  return [...options.filter(option => option.required), ...options.filter(option => !option.required)];
}

function spread(name: string, described: Described): [string, Described][] {
  const { type, items, maxItems } = described;
  if (type !== 'array' || !items || !maxItems) return [[name, described]];
  return Array.from({ length: maxItems }, (_, index) => [repeatedName(name, index + 1), items]);
}

function declaredOption(
  name: string,
  { option, says, labels, reads, minimum, maximum, maxLength }: Described,
  { required, completes }: { required: boolean; completes: boolean },
): DeclaredOption {
  if (!option || !says) throw new Error(`option ${name} is not made by the builders of option.ts`);
  const most = maximum ?? maxLength;
  return {
    name,
    kind: option,
    required,
    says,
    completes,
    ...(reads && { reads }),
    ...(labels && { choices: Object.entries(labels).map(([value, label]) => ({ value, label })) }),
    ...(minimum !== undefined && { least: minimum }),
    ...(most !== undefined && { most }),
  };
}
