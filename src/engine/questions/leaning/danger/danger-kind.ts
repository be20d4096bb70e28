/** `lye-heavy`: soap with more lye than its oils take; `lye-water`: a jug in which lye went wrong; `lye-metal`: one whose metal lye eats. */
export type Danger = 'lye-heavy' | 'lye-water' | 'lye-metal';
