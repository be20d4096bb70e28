import { keepFolds, keepFoldsAgain } from '../../records/folds/index.ts';
import { meet, metBefore } from '../../records/met.ts';
import { preferencesOf } from '../../records/preferences.ts';
import type { Store } from '../../records/store.ts';
import type { Conversation } from '../conversation.ts';
import { type Follow, nonce } from '../follow-ups/follow.ts';
import { holderOf, signed } from '../follow-ups/sealed.ts';
import type { Origin } from '../question.ts';
import type { Caution, Choice, Next, Reply } from '../reply.ts';
import { foldsOf, shortened } from './face.ts';
import { givenAgain, isGivenAgain, onceFor } from './given-again.ts';
import { askNext, openFold, packed } from './open-fold.ts';
import { inFahrenheit } from './temperatures.ts';

/**
 * A reply with its face as this member is shown it: standing cautions that they have met are one line, what does not fit
 * is folded, and where the front opens folds by button the folds are kept for it. Whoever is hurt, and whoever wants
 * whole answers, gets all at once; so does everybody where the folds cannot be kept.
 */
export async function withFace(
  told: Reply<string>,
  origin: Origin,
  conversation: Conversation,
): Promise<Reply<string>> {
  const { store } = conversation.services;
  if (isUrgent(told.data)) return unfolded(told);
  const { answers, temperature } = await preferencesOf(store, origin.asker.id).catch(() => ({
    answers: 'short',
    temperature: 'celsius',
  }));
  const reply = temperature === 'fahrenheit' ? inFahrenheit(told) : told;
  if (answers === 'whole') return await withButtons(unfolded(reply), origin, conversation);
  const met = await metCautions(reply, { store, origin });
  const faced = onceFor(reply, `face for ${[...met].join(' ')}`, () => {
    const face = shortened(withMet(reply, met));
    return isGivenAgain(reply) ? givenAgain(face) : face;
  });
  return origin.opensFolds ? await withButtons(faced, origin, conversation) : faced;
}

/** True where somebody is hurt: all that is said is said at once. */
const isUrgent = (data: object): boolean =>
  'emergency' in data || ('firstAid' in data && data.firstAid !== undefined);

/** Nothing folded: its face is the whole. */
const unfolded = (reply: Reply<string>): Reply<string> => ({
  ...reply,
  blocks: reply.blocks.flatMap(({ fold, ...block }) => (fold === 'face' ? [] : [block])),
  cautions: reply.cautions.flatMap(({ fold, ...caution }) => (fold === 'face' ? [] : [caution])),
});

const standingIn = (reply: Reply<string>) => reply.cautions.filter(({ brief }) => brief !== undefined);

/** The standing cautions of a reply that the member has met; notes that they now meet the others. */
async function metCautions(
  reply: Reply<string>,
  { store, origin }: { readonly store: Store; readonly origin: Origin },
): Promise<ReadonlySet<string>> {
  const ids = [...new Set(standingIn(reply).map(({ id }) => id))];
  if (ids.length === 0) return new Set();
  const whose = { store, member: origin.asker.id };
  // What cannot be looked up is said in full.
  const met = await metBefore(whose, ids).catch(() => new Set<string>());
  const fresh = ids.filter(id => !met.has(id));
  if (fresh.length > 0) await meet(whose, fresh, new Date(origin.at)).catch(() => undefined);
  return met;
}

/**
 * Standing cautions in full for whoever has not met them, but for those whose line says enough; in one line, with the
 * whole in a fold, for the others.
 */
function withMet(reply: Reply<string>, met: ReadonlySet<string>): Reply<string> {
  const standing = standingIn(reply);
  const known = standing.filter(({ id, briefAtOnce }) => briefAtOnce || met.has(id));
  if (known.length === 0) return reply;
  const line: Caution = {
    id: 'standing',
    text: [...new Set(known.map(({ brief }) => brief))].join(' '),
    fold: 'face',
    firm: true,
  };
  const others = reply.cautions.map(one =>
    known.includes(one) && one.fold === undefined ? { ...one, fold: 'safety' as const } : one,
  );
  // What is told in full stands before the line of the rest.
  const first = others.filter(({ fold }) => fold === undefined);
  return { ...reply, cautions: [...first, line, ...others.filter(one => !first.includes(one))] };
}

/** The reply with buttons for its folds and what is asked next; all of it, without them, where they cannot be kept. */
async function withButtons(
  reply: Reply<string>,
  origin: Origin,
  conversation: Conversation,
): Promise<Reply<string>> {
  const { next = [] } = reply;
  const folds = onceFor(reply, 'folds', () => foldsOf(reply));
  if (!origin.opensFolds || (folds.length === 0 && next.length === 0)) return reply;
  const lines = next.flatMap(one => ('line' in one ? [one.line] : one.lines.map(({ line }) => line)));
  const member = origin.asker.id;
  const answer = onceFor(reply, 'id', nonce);
  try {
    const { store } = conversation.services;
    const kept = onceFor(reply, 'kept', () => packed(reply.headline, { folds, lines }));
    const keep = isGivenAgain(reply) ? keepFoldsAgain : keepFolds;
    await keep({ store, member }, answer, kept, new Date(origin.at));
  } catch {
    return unfolded(reply);
  }
  const sealing = { holder: holderOf(origin), at: origin.at };
  const sealedIn = (follow: Follow) => signed(follow, sealing, conversation);
  return {
    ...reply,
    choices: [
      ...(reply.choices ?? []),
      ...nextChoices(next, at => sealedIn(askNext.with({ member, answer, at }))),
    ],
    unfold: folds.map(({ id }) => ({
      id,
      follow: sealedIn(openFold.with({ member, answer, fold: id })),
    })),
  };
}

/** What is asked next as buttons and menus; `follow` signs the way to the line at a place among all of them. */
function nextChoices(next: readonly Next[], follow: (at: number) => string): readonly Choice<string>[] {
  let at = 0;
  return next.map((one): Choice<string> => {
    const first = at;
    at += 'line' in one ? 1 : one.lines.length;
    if ('line' in one) return { kind: 'button', label: one.label, follow: follow(first) };
    const items = one.lines.map(({ label }, place) => ({ label, value: String(place) }));
    return { kind: 'menu', label: one.label, items, least: 1, most: 1, follow: follow(first) };
  });
}
