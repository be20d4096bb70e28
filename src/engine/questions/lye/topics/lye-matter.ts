import { ASKED_TOPIC_ORIGINS, type AskedTopic } from './asked-topic.ts';
import { CALM_TOPIC_ORIGINS, type CalmTopic } from './calm-topic.ts';
import { CARE_TOPIC_ORIGINS, type CareTopic } from './care-topic.ts';
import { LYE_TOPIC_ORIGINS, type LyeTopic } from './topic.ts';

/** A matter that can be offered to choose from: what care has to say is found by its patterns alone. */
export type LyeMatter = Exclude<LyeTopic, 'unsure' | CareTopic | CalmTopic | AskedTopic>;

/** True of the id of a matter that has an answer of its own. */
export const isLyeMatter = (id: string): id is LyeMatter =>
  id !== 'unsure' &&
  Object.hasOwn(LYE_TOPIC_ORIGINS, id) &&
  !Object.hasOwn(CARE_TOPIC_ORIGINS, id) &&
  !Object.hasOwn(CALM_TOPIC_ORIGINS, id) &&
  !Object.hasOwn(ASKED_TOPIC_ORIGINS, id);
