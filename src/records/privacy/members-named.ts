/** Names that erased members are kept under begin so; they lead to nobody. */
export const ERASED = 'erased-';
/** Direct messages are a group of one, called after its member. */
export const DIRECT = 'direct-';
