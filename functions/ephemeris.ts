/** A place on earth, degrees: north and east are positive. */
export interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

/**
 * Where the sun stands. The library leaves this to whoever calls it, in the call settings,
 * with the clock that people go by; moments are milliseconds since 1970, universal time.
 */
export interface Ephemeris {
  /** The sun’s middle as it is seen, with the usual refraction: degrees above level, and clockwise from true north. */
  sun(moment: number, place: Place): { readonly altitude: number; readonly azimuth: number };
  /** When its upper edge first comes up within a day from a moment; undefined if it does not. */
  sunrise(moment: number, place: Place): number | undefined;
  /** When its upper edge first goes down within a day from a moment; undefined if it does not. */
  sunset(moment: number, place: Place): number | undefined;
  /**
   * Hours that the clock in use is ahead of universal time when it shows `wall`, summer time included.
   * `wall` is in milliseconds since 1970, counted as if the clock showed universal time.
   */
  ahead(wall: number): number;
}
