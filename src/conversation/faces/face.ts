import type { Block, Caution, FoldId, Reply } from '../reply.ts';
import { FOLDS } from '../reply.ts';

/** Words a face has at most where its command says nothing else. */
export const MOST_WORDS = 130;
/** And with what is said in full because it is new to the member: one screen of a phone, with its picture and its buttons. */
const MOST_WITH_NEW = 136;
/** And characters: what is written without spaces is long too. */
const MOST_CHARACTERS = 2_400;
/** Cautions that stay on a face which grew too long; the others are a press away. */
const MOST_CAUTIONS = 2;

/** One named fold of a reply. */
export type Fold = {
  readonly id: FoldId;
  readonly blocks: readonly Block[];
  readonly cautions: readonly Caution[];
};

const isFolded = ({ fold }: { readonly fold?: FoldId | 'face' | undefined }): boolean =>
  fold !== undefined && fold !== 'face';

/** What is seen of a reply before anything is opened. */
export const faceOf = <Target>(reply: Reply<Target>): Reply<Target> => ({
  ...reply,
  blocks: reply.blocks.filter(one => !isFolded(one)),
  cautions: reply.cautions.filter(one => !isFolded(one)),
});

/** All of a reply: what only the face shortens is left to the parts that say it in full. */
export const wholeOf = <Target>(reply: Reply<Target>): Reply<Target> => ({
  ...reply,
  blocks: reply.blocks.filter(({ fold }) => fold !== 'face'),
  cautions: reply.cautions.filter(({ fold }) => fold !== 'face'),
});

/** The folds of a reply that hold anything, in the order they are offered. */
export function foldsOf({ blocks, cautions }: Pick<Reply<unknown>, 'blocks' | 'cautions'>): readonly Fold[] {
  const found = new Map<FoldId, { readonly blocks: Block[]; readonly cautions: Caution[] }>();
  const partsOf = (id: FoldId) => {
    const parts = found.get(id) ?? { blocks: [], cautions: [] };
    found.set(id, parts);
    return parts;
  };
  for (const block of blocks)
    if (block.fold !== undefined && block.fold !== 'face') partsOf(block.fold).blocks.push(block);
  for (const caution of cautions)
    if (caution.fold !== undefined && caution.fold !== 'face') partsOf(caution.fold).cautions.push(caution);
  return FOLDS.flatMap(id => {
    const parts = found.get(id);
    return parts ? { id, ...parts } : [];
  });
}

/** Words of a text, whatever stands between spaces: signs that mark a line count too. */
export function wordsIn(text: string): number {
  let words = 0;
  let isInWord = false;
  for (let at = 0; at < text.length; at += 1) {
    const isSpace = isSpaceAt(text, at);
    if (!isSpace && !isInWord) words += 1;
    isInWord = !isSpace;
  }
  return words;
}

/** Of the plain ones by their number: a face is counted with every answer, and a pattern for each letter would show. */
function isSpaceAt(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code <= 32) return code === 32 || (code >= 9 && code <= 13);
  return code >= 0xa0 && /\s/u.test(text.charAt(at));
}

/** How long something is to read. */
type Size = { words: number; characters: number };

const add = (size: Size, text: string): void => {
  size.words += wordsIn(text);
  size.characters += text.length;
};

/** A mark and a space that stand before a text: one word more. */
const addMarked = (size: Size, text: string): void => {
  add(size, text);
  size.words += 1;
  size.characters += 2;
};

/** What is read of a part; what a picture shows is no text. */
function addBlock(size: Size, block: Block): void {
  if (block.kind === 'text') add(size, block.text);
  else if (block.kind === 'rows') {
    if (block.title !== undefined) add(size, block.title);
    for (const row of block.rows) addMarked(size, row);
  } else if (block.kind === 'measures')
    for (const { label, value, note } of block.measures) {
      add(size, label);
      add(size, value);
      if (note !== undefined) add(size, note);
      // The spaces between them.
      size.characters += 2;
    }
}

/** As long as the heading of the cautions is in any language. */
const CAUTION_HEADING = 'Take care';

/** Counts without making a text of it: every answer is counted, some of them part by part. */
function sizeOf({ headline, blocks, cautions }: Reply<unknown>) {
  const all = { words: 0, characters: 0 };
  const unseen = { words: 0, characters: 0 };
  let [seen, isNew] = [0, 0];
  add(all, headline);
  for (const block of blocks) if (!isFolded(block)) addBlock(all, block);
  for (const { fold, brief, text } of cautions) {
    if (isFolded({ fold })) continue;
    seen += 1;
    // What is said in full because it is new to this member comes on top.
    if (brief !== undefined) isNew += 1;
    addMarked(brief === undefined ? all : unseen, text);
  }
  const heading = { words: 0, characters: 0 };
  if (seen > 0) add(heading, CAUTION_HEADING);
  const isHeadedWithoutNew = seen > isNew;
  return {
    words: all.words + (isHeadedWithoutNew ? heading.words : 0),
    withNew: all.words + unseen.words + heading.words,
    characters: all.characters + (isHeadedWithoutNew ? heading.characters : 0),
  };
}

/** Words on the face of a reply, but for standing cautions that the member meets for the first time. */
export const faceWords = (reply: Reply<unknown>): number => sizeOf(reply).words;

const fits = (reply: Reply<unknown>, most: number): boolean => {
  const { words, withNew, characters } = sizeOf(reply);
  // An opened fold has no limit: another fold in it would hide what was just asked for.
  if (most === Number.POSITIVE_INFINITY) return true;
  return words <= most && withNew <= Math.max(most, MOST_WITH_NEW) && characters <= MOST_CHARACTERS;
};

/**
 * A reply whose face has at most its `most` words, {@link MOST_WORDS} where it says none: cautions after the second go
 * into the fold of safety, then parts from the end into that of the rest; of a list the first rows stay; last the other
 * cautions, the first of them last. The headline
 * and whatever is `firm` stay in any case.
 */
export function shortened<Target>(reply: Reply<Target>): Reply<Target> {
  const most = reply.most ?? MOST_WORDS;
  if (fits(reply, most)) return reply;
  let kept = 0;
  const cautions = reply.cautions.map((one): Caution => {
    if (isFolded(one) || one.fold === 'face' || one.firm) return one;
    kept += 1;
    return kept > MOST_CAUTIONS ? { ...one, fold: 'safety' } : one;
  });
  let now: Reply<Target> = { ...reply, cautions };
  for (let at = reply.blocks.length - 1; at >= 0 && !fits(now, most); at--) {
    const block = now.blocks[at]!;
    if (isFolded(block) || block.firm || block.kind === 'picture' || block.kind === 'file') continue;
    now = withBlocks(now, at, folded(block, wordsLeft(now, at, most)));
  }
  return withFewerCautions(now, most);
}

/** Where the headline alone is long, the last cautions go into their fold too; what is in there already is not said twice. */
function withFewerCautions<Target>(reply: Reply<Target>, most: number): Reply<Target> {
  let now = reply;
  for (let at = reply.cautions.length - 1; at >= 0 && !fits(now, most); at--) {
    const caution = now.cautions[at]!;
    if (isFolded(caution) || caution.firm) continue;
    const inFold: readonly Caution[] = caution.fold === 'face' ? [] : [{ ...caution, fold: 'safety' }];
    now = { ...now, cautions: [...now.cautions.slice(0, at), ...inFold, ...now.cautions.slice(at + 1)] };
  }
  return now;
}

const withBlocks = <Target>(reply: Reply<Target>, at: number, blocks: readonly Block[]): Reply<Target> => ({
  ...reply,
  blocks: [...reply.blocks.slice(0, at), ...blocks, ...reply.blocks.slice(at + 1)],
});

/** Words that a part may have where everything else on the face stays. */
const wordsLeft = (reply: Reply<unknown>, at: number, most: number): number =>
  most - faceWords(withBlocks(reply, at, []));

const isSteps = (block: Block): boolean => block.kind === 'rows' && block.numbered === true;

/** A part in the fold of the rest, steps in that of steps; the rows of it that fit are on the face too. */
function folded(block: Block, room: number): readonly Block[] {
  // What stood on the face only is said in full by another fold.
  const rest: readonly Block[] =
    block.fold === 'face' ? [] : [{ ...block, fold: isSteps(block) ? 'steps' : 'more' }];
  if (block.kind !== 'rows') return rest;
  let left = room - wordsIn(block.title ?? '');
  const over = block.rows.findIndex(row => {
    left -= wordsIn(`- ${row}`);
    return left < 0;
  });
  const rows = block.rows.slice(0, Math.max(over, 0));
  return rows.length === 0 ? rest : [{ ...block, rows, fold: 'face' }, ...rest];
}
