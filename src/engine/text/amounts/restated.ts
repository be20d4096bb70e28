/** "A bit under a pound, call it 420 g": what is said second is what it is. */
const RESTATES =
  /^[^,;()]{1,60}[,;(]\s*(?:so |or |o )?(?:call it|say|make it|let'?s say|more like|rather|well|that is|that'?s|i'?d say|digamos|pongamos|o sea|m[aá]s bien|dir[ií]a)\s+(?=(?:about |around |some |unos |unas |como )?(?:\d|(?:an?|one|half|un|una|medi[oa])\s))/iu;

/** An amount as it is told at last: "half a kilo, say 520 g" is 520 g. Pure. */
export const restated = (text: string): string => text.replace(RESTATES, '');
