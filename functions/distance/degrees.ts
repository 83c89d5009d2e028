export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Cosine of an angle in degrees, counted from the other side so that a right angle gives none at all. */
export const cosine = (angle: number): number => Math.sin(radians(90 - angle));
