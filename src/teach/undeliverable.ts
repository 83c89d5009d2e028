/** A class cannot be handed out to: a sentence that says why. */
export class Undeliverable extends Error {}
