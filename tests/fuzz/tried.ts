/** What came of one spoiled input. */
export interface Tried {
  readonly text: string;
  /** It was taken; otherwise it was refused in a sentence. */
  readonly read: boolean;
  /** What is wrong with what came out. */
  readonly fault: string | undefined;
}

/** A refusal says in a sentence what is wrong. */
const sentence = /^\S.*[.?!]$/su;

export const refused = (text: string, reason: string): Tried => ({
  text,
  read: false,
  fault: sentence.test(reason) && reason.length < 2_000 ? undefined : `It says: ${reason}`,
});

export const taken = (text: string, fault?: string): Tried => ({ text, read: true, fault });
