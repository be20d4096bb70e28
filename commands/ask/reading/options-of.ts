import type { Context } from '../../../src/conversation/context.ts';
import type { Given } from '../../../src/conversation/question.ts';
import type { Reading } from '../../../src/engine/questions/read.ts';

/** Options as the command wants them: a dose without a portion is told by the cup, and says so. */
export function filled({ command, given, missing }: Reading, { say }: Context): Given {
  return command === 'dose' &&
    given.colourant !== undefined &&
    given.portion === undefined &&
    missing.length <= 1
    ? { ...given, portion: say.match.oneCup }
    : given;
}
