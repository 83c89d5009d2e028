/** A place on earth, degrees: north and east are positive. */
export interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

/**
 * Where the sun stands. The library leaves this to whoever calls it, in the call settings;
 * moments are milliseconds since 1970, universal time.
 */
export interface Ephemeris {
  /** The sun’s middle as it is seen, with the usual refraction: degrees above level, and clockwise from true north. */
  sun(moment: number, place: Place): { readonly altitude: number; readonly azimuth: number };
  /** When its upper edge first comes up within a day from a moment; undefined if it does not. */
  sunrise(moment: number, place: Place): number | undefined;
  /** When its upper edge first goes down within a day from a moment; undefined if it does not. */
  sunset(moment: number, place: Place): number | undefined;
}
