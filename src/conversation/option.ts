import { z } from 'zod';
import type { ReadAs } from '../engine/questions/options/in-plain-words.ts';
import type { Phrase } from '../words/sentence.ts';
import { type Described, described } from './declared.ts';
import type { Attachment, Named } from './question.ts';

/**
 * The options a command can declare, as zod schemas that also carry what fronts need to know.
 * Amounts are always text: their grammar lives in the engine. No option transforms its value.
 */
function declare<S extends z.ZodType>(schema: S, one: Described): S {
  described.add(schema, one);
  return schema;
}

/**
 * A line of text, trimmed by nobody: at most `most` characters (default 200, the platform allows 6000). `reads`: an amount that is also
 * read as a plain question would tell it.
 */
export const text = (says: Phrase, { most = 200, reads }: { most?: number; reads?: ReadAs } = {}) =>
  declare(z.string().min(1).max(most), { kind: 'text', says, most, ...(reads && { reads }) });

/** One of the keys of `choices`; the platform shows their phrases, answers carry the key. */
export const choice = <const Key extends string>({
  says,
  choices,
}: {
  readonly says: Phrase;
  readonly choices: Readonly<Record<Key, Phrase>>;
}) => declare(z.enum(Object.keys(choices) as [Key, ...Key[]]), { kind: 'choice', says, choices });

/** A whole number within bounds, both allowed. */
export const whole = (says: Phrase, { least, most }: { least: number; most: number }) =>
  declare(z.number().int().min(least).max(most), { kind: 'whole', says, least, most });

/** A number within bounds, both allowed. */
export const number = (says: Phrase, { least, most }: { least: number; most: number }) =>
  declare(z.number().min(least).max(most), { kind: 'number', says, least, most });

export const yesNo = (says: Phrase) => declare(z.boolean(), { kind: 'yes-no', says });

/** A picture or file the member hands in. */
export const picture = (says: Phrase) =>
  declare(
    z.custom<Attachment>(value => typeof value === 'object' && value !== null && 'read' in value),
    { kind: 'picture', says },
  );

const named = (kind: Named['kind'], says: Phrase) =>
  declare(
    z.custom<Named>(
      value => typeof value === 'object' && value !== null && 'kind' in value && value.kind === kind,
    ),
    { kind, says },
  );

/** A member of the group, a role, or a channel, picked where the platform lets one pick. */
export const member = (says: Phrase) => named('member', says);
export const role = (says: Phrase) => named('role', says);
export const channel = (says: Phrase) => named('channel', says);

/** Up to `most` of the same text option, declared as `name-1` .. `name-<most>` since nothing repeats there. */
export const several = (says: Phrase, { most: times }: { most: number }) => {
  const each = text(says);
  return declare(z.array(each).max(times), { ...(described.get(each) as Described), times }).default([]);
};
