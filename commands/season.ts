import { action, commandGroup, type Suggestion } from '../src/conversation/command.ts';
import type { Context } from '../src/conversation/context.ts';
import { text } from '../src/conversation/option.ts';
import type { Block } from '../src/conversation/reply.ts';
import { readSeason } from '../src/engine/challenges/palette-written.ts';
import { labOfHex } from '../src/engine/colour/spectra/cielab.ts';
import { refuse } from '../src/engine/refusal.ts';
import { cut } from '../src/engine/text/excerpt.ts';
import { fold } from '../src/engine/text/fold.ts';
import { plainReply } from '../src/presenting/plain-reply.ts';
import {
  type Proposal,
  proposals,
  proposePalette,
  seasonOf,
  settleSeason,
  voteFor,
} from '../src/records/seasons/index.ts';
import { tidyName } from '../src/records/shelf/names.ts';
import { phrases } from '../src/words/declared.ts';

const says = phrases('season');

declare module '../src/engine/refusal.ts' {
  interface Reasons {
    'season-palette-unknown': { readonly asked: string; readonly titles: readonly string[] };
    'season-nothing-put': Record<never, never>;
    'season-tie': { readonly titles: readonly string[] };
    'season-title-taken': { readonly title: string };
  }
}

const scopeOf = ({ store, group }: Context) => ({ store, group });

async function drawn(
  title: string,
  colours: readonly string[],
  { workers, asker, say }: Context,
): Promise<Block> {
  const palette = colours.map(hex => ({ hex, lab: labOfHex(hex) }));
  const kicker = say.community.season;
  const card = { kicker, title, brief: colours.join(', '), palette, dates: [], rulesTitle: '', rules: [] };
  const png = await workers.run('challengeCard', card, { owner: asker.id });
  return { kind: 'picture', name: 'season.png', png, alt: say.community.palette({ title, colours }) };
}

/** The palette that is meant, by its title. */
function named(all: readonly Proposal[], asked: string): Proposal {
  const wanted = fold(asked);
  const found =
    all.find(({ title }) => fold(title) === wanted) ??
    (wanted === '' ? undefined : all.find(({ title }) => fold(title).startsWith(wanted)));
  const titles = all.slice(0, 5).map(({ title }) => title);
  if (titles.length === 0) refuse('season-nothing-put', {});
  return found ?? refuse('season-palette-unknown', { asked: cut(asked, 60), titles });
}

const suggest = async (typed: string, context: Context): Promise<readonly Suggestion[]> =>
  (await proposals(scopeOf(context)))
    .filter(({ title }) => fold(title).includes(fold(typed)))
    .map(({ title }) => ({ name: title, value: title }));

export default commandGroup('season', says.purpose, {
  show: action({
    purpose: says.show.purpose,
    seenBy: 'asker',
    pace: 'slow',
    options: {},
    async answer(_, context) {
      const { say } = context;
      const [now, put] = await Promise.all([seasonOf(scopeOf(context)), proposals(scopeOf(context))]);
      const rows = put.map(one => say.community.proposal(one));
      return plainReply(
        now ? say.community.palette(now) : say.community.noSeason,
        { season: now, proposals: put.map(({ title, colours, votes }) => ({ title, colours, votes })) },
        [
          ...(now ? [await drawn(now.title, now.colours, context)] : []),
          ...(rows.length > 0 ? [{ kind: 'rows' as const, title: say.community.putForward, rows }] : []),
        ],
      );
    },
  }),
  propose: action({
    purpose: says.propose.purpose,
    seenBy: 'group',
    pace: 'slow',
    options: {
      title: text(says.propose.title, { most: 60 }),
      colours: text(says.propose.colours, { most: 300 }),
    },
    async answer(asked, context) {
      const title = tidyName(asked.title);
      const colours = readSeason(asked.colours);
      const all = await proposals(scopeOf(context));
      const taken = all.some(one => one.member !== context.asker.id && fold(one.title) === fold(title));
      if (taken) refuse('season-title-taken', { title });
      const proposal = { ...context.by, id: context.id, title, colours: [...colours] };
      await proposePalette(scopeOf(context), proposal);
      return plainReply(context.say.community.proposed({ title, colours }), { title, colours }, [
        await drawn(title, colours, context),
      ]);
    },
  }),
  vote: action({
    purpose: says.vote.purpose,
    seenBy: 'asker',
    options: {
      palette: text(says.vote.palette, { most: 100 }),
    },
    completes: { palette: suggest },
    async answer({ palette }, context) {
      const chosen = named(await proposals(scopeOf(context)), palette);
      await voteFor(scopeOf(context), { ...context.by, chosen: chosen.id });
      return plainReply(context.say.community.voted({ title: chosen.title }), { palette: chosen.title });
    },
  }),
  settle: action({
    purpose: says.settle.purpose,
    seenBy: 'group',
    access: 'steward',
    pace: 'slow',
    options: {},
    async answer(_, context) {
      const [first, second] = await proposals(scopeOf(context));
      if (!first) return refuse('season-nothing-put', {});
      if (second && second.votes === first.votes)
        refuse('season-tie', { titles: [first.title, second.title] });
      const { title, colours, votes } = first;
      await settleSeason(scopeOf(context), { title, colours, votes, at: new Date(context.at) });
      return plainReply(context.say.community.settled({ title, colours, votes }), { title, colours, votes }, [
        await drawn(title, colours, context),
      ]);
    },
  }),
});
