import { z } from 'zod';
import { EMERGENCY_IDS } from '../../engine/hazards/index.ts';
import { JOBS } from '../../engine/questions/jobs/jobs.ts';
import { ASKED_OF_IT, type Before } from '../../engine/questions/leaning/before.ts';
import { LYE_TOPIC_ORIGINS, type LyeTopic } from '../../engine/questions/lye/topics/topic.ts';
import { NAMED_ANSWERS } from '../../engine/questions/technique/named-answers.ts';
import { isTechnique } from '../../engine/questions/technique/topic.ts';
import { type Origin, type Question, textsOf } from '../question.ts';

/** Commands that a later turn can change. */
const LEANT_ON: ReadonlySet<string> = new Set([
  'dose',
  'match',
  'preview',
  'colourant check',
  'plan',
  'diagnose',
  'compare',
  'shelf show',
  'shelf add',
  'shelf use',
]);

const emergency = z.object({
  emergency: z.object({ id: z.enum(EMERGENCY_IDS), also: z.array(z.enum(EMERGENCY_IDS)) }),
});
const understood = z.object({
  understood: z.object({
    technique: z.string().optional(),
    named: z.enum(NAMED_ANSWERS).optional().catch(undefined),
    lye: z.string().optional(),
    job: z.enum(JOBS).optional().catch(undefined),
    command: z.string().optional(),
    lacks: z.string().optional().catch(undefined),
    asked: z.enum(ASKED_OF_IT).optional().catch(undefined),
    scaled: z.union([z.number().positive(), z.literal('to-size')]).optional(),
    given: z.record(z.string(), z.string()).optional(),
    facts: z.object({ target: z.object({ text: z.string() }).optional().catch(undefined) }).optional(),
  }),
});

/** These say only that something is in doubt. */
const NO_MATTER: ReadonlySet<string> = new Set(['unsure', 'soap-at-large']);
const isTopic = (id: string): id is LyeTopic => Object.hasOwn(LYE_TOPIC_ORIGINS, id) && !NO_MATTER.has(id);

/** Something was named and told of, though it has no answer of its own. */
const SPOKEN_OF: ReadonlySet<string> = new Set(['colourant-ambiguous', 'colour-barred']);

/** What an answer says that its question was understood as; undefined where there is nothing in it to lean on. */
export function understoodIn(question: Question | Origin, data: object): Before | undefined {
  if ('emergency' in data) {
    const told = emergency.safeParse(data).data?.emergency;
    return told && { kind: 'emergency', ids: [told.id, ...told.also] };
  }
  // What came to nothing tells nothing of the talk; of several that a name can mean the next turn may say which.
  if ('problem' in data && isStopped(data)) return { kind: 'recipe', hadOne: true };
  if ('problem' in data && !SPOKEN_OF.has(String(data.problem))) return undefined;
  const read = 'understood' in data ? understood.safeParse(data).data?.understood : undefined;
  if (read) {
    const before = reckonedHeavy(data) ?? withLyeFound(ofRead(read), data);
    const words =
      'given' in question && typeof question.given.question === 'string'
        ? question.given.question
        : undefined;
    const isTold = before?.kind === 'technique' || before?.kind === 'matter';
    return isTold && words !== undefined ? { ...before, words } : before;
  }
  if (!('kind' in question) || question.kind !== 'command') return undefined;
  const command = question.path.join(' ');
  return LEANT_ON.has(command)
    ? { kind: 'command', job: undefined, command, given: textsOf(question.given) }
    : undefined;
}

/** A recipe whose lye was not told: what comes next is of it. */
const isStopped = (data: object): boolean =>
  'understood' in data && understood.safeParse(data).data?.understood.lye === 'stopped';

const lyeFound = z.object({
  doNotUse: z.literal(true),
  causes: z.tuple(
    [z.object({ id: z.enum(['lye-excess', 'lye-pockets']), probability: z.number().min(0.5) })],
    z.unknown(),
  ),
});
/** A bar that is likelier to have too much lye than anything else. */
const withLyeFound = (before: Before | undefined, data: object): Before | undefined =>
  before?.kind === 'command' && before.command === 'diagnose' && lyeFound.safeParse(data).success
    ? { ...before, burns: true }
    : before;

/** Of what was reckoned only that it burns: what comes next is of soap that has too much lye. */
const reckoned = z.union([
  z.object({ check: z.object({ verdict: z.literal('lye-heavy') }) }),
  z.object({ amiss: z.object({ verdict: z.literal('lye-heavy') }) }),
  z.object({ verdict: z.literal('too-much-for-all') }),
]);
const reckonedHeavy = (data: object): Before | undefined =>
  reckoned.safeParse(data).success ? { kind: 'matter', id: 'too-much-in' } : undefined;

function ofRead({
  technique,
  named,
  lye,
  job,
  command,
  given = {},
  lacks,
  asked,
  scaled,
  facts,
}: z.infer<typeof understood>['understood']): Before | undefined {
  if (lye === 'stopped') return { kind: 'recipe', hadOne: true };
  if (lacks === 'whole-recipe' || lacks === 'lye-over' || (job === 'lye' && Object.keys(given).length === 0))
    return { kind: 'recipe' };
  // How much water goes with so much lye: more is asked of the water.
  if (lye === 'sums') return { kind: 'matter', id: 'water-amount' };
  // A technique that is answered from near lye is told by what was said of lye.
  if (lye !== undefined && isTopic(lye)) return { kind: 'matter', id: lye };
  if (technique !== undefined && isTechnique(technique))
    return { kind: 'technique', id: technique, ...(named && { named }) };
  if (command === 'challenge list') return { kind: 'contest' };
  if (command === undefined || !LEANT_ON.has(command) || Object.keys(given).length === 0) return undefined;
  return {
    kind: 'command',
    job,
    command,
    given,
    wish: facts?.target?.text,
    ...(asked && { asked }),
    ...(scaled !== undefined && { scaled }),
  };
}
