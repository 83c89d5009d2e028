/** The international foot, exact: NIST SP 811, Appendix B.6. */
const foot = 0.3048;

/** Lux in one footcandle: a lumen on each square foot. */
export const footcandle = 1 / foot ** 2;

/** Candela per square metre in one footlambert: 1/π candela on each square foot. */
export const footlambert = 1 / (Math.PI * foot ** 2);
