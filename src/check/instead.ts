/** What to do instead, by what was done: a function that gives what was probably meant. */
const level = 'LEVELAT gives the level so many stops away.';
const fNumberAt = 'FNUMBERAT gives the f-number so many stops away.';
const combine =
  'Light adds as the square of f-numbers: FCOMBINE gives the reading of both together.';
const without =
  'FWITHOUT takes one light out of a reading, FSTOPS says how far apart two readings are.';
const inMired =
  'Mired values add and average as filters do: MIRED turns kelvin into mired, KELVIN turns it back.';
const factorStops = 'FACTORSTOPS turns a factor into stops, which add.';
const stopFactor = 'STOPFACTOR turns stops into a factor.';
const density = 'DENSITYSTOPS turns a density into stops, STOPSDENSITY turns it back.';
const mired = 'MIRED turns kelvin into mired, KELVIN turns it back.';
const footcandles =
  'Keep lux in the cell and let the workbook show footcandles, or turn them back with LUX.';
const footlamberts =
  'Keep candela per square metre in the cell and let the workbook show footlamberts, or turn them back with NITS.';
const ratioStops = 'STOPS turns two levels into stops, FACTORSTOPS a ratio.';
const kva = 'WATTS and KVA turn one into the other with the power factor.';

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
  'colourTemperature + mired': 'KELVINTHROUGH gives the kelvin after a shift in mired.',
  'density + stops': density,
  'factor + stops': factorStops,
  'ratio + stops': factorStops,
  'share + stops': 'TRANSMISSIONSTOPS turns a share into stops.',
  'factor * stops': stopFactor,
  'ratio * stops': stopFactor,
  'iso + stops': 'EIAFTER gives the speed after a loss in stops.',
  'iso * stops': 'EIAFTER gives the speed after a loss in stops.',
  'stops * time': 'Multiply the time by STOPFACTOR of the stops.',
  'ev + ev':
    'Exposure values count stops from a fixed light: add stops to one, or take one from another.',
  'illuminance + ~footcandles1': footcandles,
  'luminance + ~footlamberts1': footlamberts,
  'illuminance + luminance':
    'LUMINANCEOF says what luminance an illuminance comes to on a surface.',
  'apparentPower + power': kva,
  'duration + time': 'One is in hours, the other in seconds.',
};

/** By the function and what it was given. */
export const underTotal: Readonly<Record<string, string>> = {
  'SUM fNumber': 'Light adds as the square of f-numbers: use FCOMBINE.',
  'AVERAGE fNumber': 'Light averages as the square of f-numbers: use FAVERAGE.',
  'SUM colourTemperature': inMired,
  'AVERAGE colourTemperature': inMired,
  'SUM ev':
    'Exposure values count doublings: turn them into lux with EVLUX, or into luminance with EVLUMINANCE, and add those.',
};

/** By what is wanted and what was given. */
export const wantedGiven: Readonly<Record<string, string>> = {
  'stops ratio': ratioStops,
  'stops factor': ratioStops,
  'stops share': 'TRANSMISSIONSTOPS turns a share into stops.',
  'stops density': density,
  'density stops': density,
  'stops fNumber': 'FSTOPS says how many stops two f-numbers are apart.',
  'stops illuminance': 'STOPS says how many stops two levels are apart.',
  'stops luminance': 'STOPS says how many stops two levels are apart.',
  'stops ev': 'One exposure value less another is a number of stops.',
  'stops mired': 'Mired values say how warm or blue, not how much.',
  'factor stops': stopFactor,
  'ratio stops': stopFactor,
  'share stops': 'STOPSTRANSMISSION turns a loss in stops into a share.',
  'share density': 'DENSITYTRANSMISSION turns a density into a share.',
  'density share': 'TRANSMISSIONDENSITY turns a share into a density.',
  'factor share': 'A filter that passes a share has one over that share as its factor.',
  'share factor': 'A filter with a factor passes one over that factor.',
  'mired colourTemperature': mired,
  'colourTemperature mired': mired,
  'fNumber illuminance': 'INCIDENTF turns lux into an f-number.',
  'illuminance fNumber': 'INCIDENTLUX turns an f-number into lux.',
  'fNumber luminance': 'SPOTF turns candela per square metre into an f-number.',
  'luminance fNumber': 'SPOTLUMINANCE turns an f-number into candela per square metre.',
  'luminance illuminance': 'LUMINANCEOF says what luminance an illuminance comes to on a surface.',
  'illuminance luminance': 'A luminance is light that left a surface, not light that falls on one.',
  'illuminance intensity': 'CANDELALUX turns candela at a distance into lux.',
  'intensity illuminance': 'LUXCANDELA turns lux at a distance into candela.',
  'illuminance ev': 'EVLUX turns an exposure value into lux.',
  'luminance ev': 'EVLUMINANCE turns an exposure value into candela per square metre.',
  'ev illuminance': 'LUXEV turns lux into an exposure value.',
  'ev luminance': 'LUMINANCEEV turns candela per square metre into an exposure value.',
  'illuminance ~footcandles1': footcandles,
  'luminance ~footlamberts1': footlamberts,
  'time angle': 'SHUTTERTIME turns a shutter angle into a time.',
  'angle time': 'SHUTTERANGLE turns a time into a shutter angle.',
  'time duration': 'A length of time is kept in hours, an exposure time in seconds.',
  'duration time': 'An exposure time is kept in seconds, a length of time in hours.',
  'power apparentPower': kva,
  'apparentPower power': kva,
  'current power': 'AMPS turns watts into amperes.',
  'power current': 'WATTS turns amperes into watts.',
  'energy power': 'ENERGY turns watts over a length of time into watt-hours.',
  'frameRate frequency': 'The mains and the camera have rates of their own.',
  'frequency frameRate': 'The mains and the camera have rates of their own.',
};

/** The advice for two kinds under a sign, whichever stands first. */
export function insteadOf(operator: string, left: string, right: string): string | undefined {
  const sign = { '-': '+', '/': '*' }[operator] ?? operator;
  const [low = '', high = ''] = [left, right].toSorted();
  const own = left === right ? underSign[`${left} ${operator} ${right}`] : undefined;
  return own ?? underSign[`${low} ${sign} ${high}`];
}
