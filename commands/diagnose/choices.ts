import type { Choice } from '../../src/conversation/reply.ts';
import { CAUSE_IDS } from '../../src/engine/flaws/cause.ts';
import { answers } from '../../src/records/flaws/index.ts';
import type { Words } from '../../src/words/index.ts';
import type { Looked } from './answer.ts';

type Leads<Args extends string> = {
  with(args: Readonly<Record<Args, string>>): Choice['follow'];
};

/** Where the choices lead. */
export type FlawFollows = {
  readonly reply: Leads<'id' | 'finding' | 'answer'>;
  readonly notIt: Leads<'id'>;
  readonly turnedOut: Leads<'id'>;
};

/** Most items of a menu on the platform. */
const MOST_ITEMS = 25;

/** The question's three buttons, what may be taken back, and once there is a verdict what it turned out to be. */
export function flawChoices(
  id: string,
  { diagnosis, question }: Looked,
  follows: FlawFollows,
  say: Words,
): readonly Choice[] {
  const asked = question
    ? answers.map(
        (answer): Choice => ({
          kind: 'button',
          label: say.flaws.answers[answer],
          follow: follows.reply.with({ id, finding: question, answer }),
        }),
      )
    : [];
  const closing = question && diagnosis.cantTell ? [] : [turnedOutMenu(id, diagnosis, follows, say)];
  return [...asked, ...notItMenu(id, diagnosis, follows, say), ...closing];
}

function notItMenu(
  id: string,
  { findings }: Looked['diagnosis'],
  { notIt }: FlawFollows,
  say: Words,
): readonly Choice[] {
  const noticed = findings.filter(({ present, via }) => present && via !== 'plan');
  const named = new Map(noticed.map(one => [one.id, one]));
  const items = [...named.values()].slice(0, MOST_ITEMS).map(({ id: finding, via, from }) => ({
    label: say.flaws.findings[finding],
    value: finding,
    note: via === 'words' ? `${say.flaws.via.words}: ${from}` : say.flaws.via[via],
  }));
  if (items.length === 0) return [];
  const follow = notIt.with({ id });
  return [{ kind: 'menu', label: say.flaws.notIt, items, least: 1, most: items.length, follow }];
}

/** The likeliest causes first. */
function turnedOutMenu(
  id: string,
  { causes }: Looked['diagnosis'],
  { turnedOut }: FlawFollows,
  say: Words,
): Choice {
  const chance = new Map(causes.map(one => [one.id, one.probability]));
  const ordered = [...CAUSE_IDS].sort((a, b) => (chance.get(b) ?? 0) - (chance.get(a) ?? 0));
  return {
    kind: 'menu',
    label: say.flaws.turnedOut,
    items: [
      ...ordered
        .slice(0, MOST_ITEMS - 1)
        .map(cause => ({ label: say.flaws.causes[cause].name, value: cause })),
      { label: say.flaws.somethingElse, value: 'something-else' },
    ],
    least: 1,
    most: 1,
    follow: turnedOut.with({ id }),
  };
}
