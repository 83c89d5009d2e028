import { words } from '../words/words.ts';

const {
  level,
  fNumberAt,
  combine,
  without,
  inMired,
  factorStops,
  stopFactor,
  density,
  mired,
  footcandles,
  footlamberts,
  ratioStops,
  kva,
} = words.instead;

/** By the two kinds under a sign, the same either way. */
export const underSign: Readonly<Record<string, string>> = {
  'illuminance + stops': level,
  'luminance + stops': level,
  'intensity + stops': level,
  'flux + stops': level,
  'illuminance * stops': level,
  'luminance * stops': level,
  'intensity * stops': level,
  'flux * stops': level,
  'fNumber + stops': fNumberAt,
  'fNumber * stops': fNumberAt,
  'factor * fNumber': `${factorStops} ${fNumberAt}`,
  'fNumber * ratio': `${factorStops} ${fNumberAt}`,
  'fNumber + fNumber': combine,
  'fNumber - fNumber': without,
  'colourTemperature + colourTemperature': inMired,
  'colourTemperature + mired': words.instead.kelvinThrough,
  'density + stops': density,
  'factor + stops': factorStops,
  'ratio + stops': factorStops,
  'share + stops': words.instead.transmissionStops,
  'factor * stops': stopFactor,
  'ratio * stops': stopFactor,
  'iso + stops': words.instead.speedAfter,
  'iso * stops': words.instead.speedAfter,
  'stops * time': words.instead.timeByStops,
  'ev + ev': words.instead.evAndStops,
  'illuminance + ~footcandles1': footcandles,
  'luminance + ~footlamberts1': footlamberts,
  'illuminance + luminance': words.instead.luminanceOf,
  'apparentPower + power': kva,
  'duration + time': words.instead.hoursAndSeconds,
};

/** By the function and what it was given. */
export const underTotal: Readonly<Record<string, string>> = {
  'SUM fNumber': words.instead.addFNumbers,
  'AVERAGE fNumber': words.instead.averageFNumbers,
  'SUM colourTemperature': inMired,
  'AVERAGE colourTemperature': inMired,
  'SUM ev': words.instead.addEv,
};

/** By what is wanted and what was given. */
export const wantedGiven: Readonly<Record<string, string>> = {
  'stops ratio': ratioStops,
  'stops factor': ratioStops,
  'stops share': words.instead.transmissionStops,
  'stops density': density,
  'density stops': density,
  'stops fNumber': words.instead.fStops,
  'stops illuminance': words.instead.stops,
  'stops luminance': words.instead.stops,
  'stops ev': words.instead.evLess,
  'stops mired': words.instead.miredIsColour,
  'factor stops': stopFactor,
  'ratio stops': stopFactor,
  'share stops': words.instead.stopsTransmission,
  'share density': words.instead.densityTransmission,
  'density share': words.instead.transmissionDensity,
  'factor share': words.instead.factorOfShare,
  'share factor': words.instead.shareOfFactor,
  'mired colourTemperature': mired,
  'colourTemperature mired': mired,
  'fNumber illuminance': words.instead.incidentF,
  'illuminance fNumber': words.instead.incidentLux,
  'fNumber luminance': words.instead.spotF,
  'luminance fNumber': words.instead.spotLuminance,
  'luminance illuminance': words.instead.luminanceOf,
  'illuminance luminance': words.instead.luminanceLeaves,
  'illuminance intensity': words.instead.candelaLux,
  'intensity illuminance': words.instead.luxCandela,
  'illuminance ev': words.instead.evLux,
  'luminance ev': words.instead.evLuminance,
  'ev illuminance': words.instead.luxEv,
  'ev luminance': words.instead.luminanceEv,
  'illuminance ~footcandles1': footcandles,
  'luminance ~footlamberts1': footlamberts,
  'time angle': words.instead.shutterTime,
  'angle time': words.instead.shutterAngle,
  'time duration': words.instead.durationInHours,
  'duration time': words.instead.timeInSeconds,
  'power apparentPower': kva,
  'apparentPower power': kva,
  'current power': words.instead.amps,
  'power current': words.instead.watts,
  'energy power': words.instead.energy,
  'frameRate frequency': words.instead.ratesOfTheirOwn,
  'frequency frameRate': words.instead.ratesOfTheirOwn,
};

/** The advice for two kinds under a sign, whichever stands first. */
export function insteadOf(operator: string, left: string, right: string): string | undefined {
  const sign = { '-': '+', '/': '*' }[operator] ?? operator;
  const [low = '', high = ''] = [left, right].toSorted();
  const own = left === right ? underSign[`${left} ${operator} ${right}`] : undefined;
  return own ?? underSign[`${low} ${sign} ${high}`];
}
