/** The words of whoever is in a hurry and names nothing. */
const HELP =
  /^\W*(?:(?:i need|we need|call|get|please|quick|necesito|llama|llamad|una?|an?|the|la|el|de|por favor|now|ya)\W+)*(?:first[ -]?aid|emergency|emergencies|ambulance|paramedics?|911|112|999|sos|primeros auxilios|emergencias?|urgencias?|ambulancia|socorro|auxilio)(?:\W+(?:please|now|quick|help|por favor|ya|r[aá]pido))*\W*$/iu;

/** True where a question is nothing but a call for first aid; what happened is then asked beside the list of it. */
export const callsForFirstAid = (question: string): boolean => HELP.test(question);
