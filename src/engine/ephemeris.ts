import { Body, Equator, Horizon, MakeTime, Observer, SearchRiseSet } from 'astronomy-engine';
import type { Ephemeris, Place } from '../../functions/ephemeris.ts';
import { aheadIn } from './zone.ts';

/** Where the sun stands, to about a minute of arc (astronomy-engine); by a clock that shows universal time. */
export const ephemeris: Ephemeris = {
  sun(moment, place) {
    const [time, observer] = [MakeTime(new Date(moment)), observerAt(place)];
    const { ra, dec } = Equator(Body.Sun, time, observer, true, true);
    return Horizon(time, observer, ra, dec, 'normal');
  },
  sunrise: (moment, place) => search(moment, place, 1),
  sunset: (moment, place) => search(moment, place, -1),
  ahead: () => 0,
};

const known = new Map<string, Ephemeris>();

/** The same by the clocks of a time zone. */
export function ephemerisIn(zone: string): Ephemeris {
  const found = known.get(zone) ?? { ...ephemeris, ahead: aheadIn(zone) };
  known.set(zone, found);
  return found;
}

const observerAt = ({ latitude, longitude }: Place) => new Observer(latitude, longitude, 0);

function search(moment: number, place: Place, upOrDown: 1 | -1): number | undefined {
  const found = SearchRiseSet(Body.Sun, observerAt(place), upOrDown, new Date(moment), 1);
  return found?.date.getTime();
}
