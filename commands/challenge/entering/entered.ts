import type { Context } from '../../../src/conversation/context.ts';
import type { Follow } from '../../../src/conversation/follow-ups/follow.ts';
import type { Block, Choice, Reply } from '../../../src/conversation/reply.ts';
import { hexOfLab } from '../../../src/engine/colour/spectra/cielab.ts';
import { refuse } from '../../../src/engine/refusal.ts';
import { asOf, measuredOf, photosOf, requireChallenge } from '../../../src/records/challenges/index.ts';
import { type NumberedBar, numberedBars, tenth } from '../bars.ts';
import { scopeOf } from '../lookup.ts';
import { pairsOf } from '../pictures.ts';
import { type PhotoPartName, photoParts } from './measure.ts';

/** What was just done about an entry. */
export type EntryDone = {
  readonly challenge: string;
  readonly entry: string;
  readonly done: 'entered' | 'replaced' | 'measured';
};

/** Where the menu and the button of an entry lead. */
export type EntryLeads = {
  readonly part: (to: { readonly challenge: string; readonly entry: string }) => Follow;
  readonly takeBack: (to: { readonly challenge: string; readonly entry: string }) => Follow;
};

/** An entry as its maker sees it: what was measured, how it scores, and how to put it right. */
export async function enteredReply(
  { challenge: id, entry, done }: EntryDone,
  leads: EntryLeads,
  context: Context,
): Promise<Reply> {
  const { say, at } = context;
  const { challenges: words, challengeSteps: steps } = say;
  const scope = scopeOf(context);
  const challenge = await requireChallenge(scope, id);
  const now = asOf(challenge, at);
  const bar = numberedBars(challenge, now).find(one => one.entry === entry);
  if (!bar) return refuse('challenge-entry-unknown', { entry });
  const measured = measuredOf(bar.bar, now);
  const [photo] = await photosOf(scope, id, [bar]);
  const told: string[] = [];
  // Without a palette nothing is scored, so nothing is missed either.
  if (now.terms.palette.length > 0 && 'unscored' in measured) told.push(words.unscored[measured.unscored]);
  if ('score' in measured) {
    const { score, plusMinus, stray, matches } = measured.score;
    told.push(
      steps.colourScore({
        score: words.score({ score: tenth(score), plusMinus: tenth(plusMinus) }),
      }),
    );
    for (const { target, bar: found } of matches)
      if (found === undefined) told.push(words.lacking({ hex: now.terms.palette[target]!.hex }));
    if (stray.share >= 0.02)
      told.push(words.stray({ percent: Math.round(stray.share * 100), adds: tenth(stray.adds) }));
  }
  return {
    kind: 'reply',
    headline: steps[done]({ number: bar.number, title: bar.bar.title, challenge: now.terms.title }),
    data: { challenge: id, entry, number: bar.number, bar: bar.bar, measured },
    blocks: [
      ...(photo ? await measuredPicture(photo, bar, { challenge: now, measured }, context) : []),
      {
        kind: 'text',
        text: [
          ...told,
          steps.changeUntil({ until: words.moment(now.terms.entriesUntil, now.terms.zone) }),
        ].join('\n'),
      },
    ],
    cautions: [],
    choices: entryChoices(bar, { challenge: id, leads }, context),
  };
}

async function measuredPicture(
  photo: Uint8Array,
  bar: NumberedBar,
  {
    challenge,
    measured,
  }: { challenge: Parameters<typeof pairsOf>[0]; measured: ReturnType<typeof measuredOf> },
  { workers, asker, say: { challengeSteps: steps } }: Context,
): Promise<readonly Block[]> {
  const { colour, region } = bar.bar;
  const colours = 'colours' in colour ? colour.colours : [];
  const png = await workers.run(
    'challengeMeasured',
    {
      photo,
      region,
      pairs: pairsOf(challenge, bar, measured),
      colours: colours
        .slice(0, 6)
        .map(({ lab, share }) => ({ hex: hexOfLab(lab), part: `${Math.round(share * 100)} %` })),
      words: { pairs: steps.swatchNote, colours: steps.measuredColours },
    },
    { owner: asker.id },
  );
  return [{ kind: 'picture', name: 'measured.png', png, alt: steps.measuredAlt({ title: bar.bar.title }) }];
}

function entryChoices(
  { entry, bar }: NumberedBar,
  { challenge, leads }: { readonly challenge: string; readonly leads: EntryLeads },
  { say: { challengeSteps: steps } }: Context,
): readonly Choice[] {
  const measurable = 'colours' in bar.colour || ['no-white', 'no-colours'].includes(bar.colour.unscored);
  const names = Object.keys(photoParts) as PhotoPartName[];
  return [
    ...(measurable
      ? [
          {
            kind: 'menu',
            label: steps.measureAgain,
            items: names.map(name => ({ label: steps.parts[name], value: name })),
            least: 1,
            most: 1,
            follow: leads.part({ challenge, entry }),
          } as const,
        ]
      : []),
    { kind: 'button', label: steps.withdraw, weight: 'danger', follow: leads.takeBack({ challenge, entry }) },
  ];
}
