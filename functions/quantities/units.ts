import type { QuantityName } from './names.ts';
import type { QuantityUnits, Unit } from './unit.ts';
import * as colour from './units/colour.ts';
import * as electric from './units/electric.ts';
import * as exposure from './units/exposure.ts';
import * as light from './units/light.ts';
import * as others from './units/others.ts';
import * as space from './units/space.ts';

/** Every quantity with its words, its base unit and the units people type. */
export const units: Readonly<Record<QuantityName, QuantityUnits>> = {
  illuminance: light.illuminance,
  luminance: light.luminance,
  intensity: light.intensity,
  flux: light.flux,
  length: space.length,
  area: space.area,
  angle: space.angle,
  time: exposure.time,
  frameRate: exposure.frameRate,
  fNumber: exposure.fNumber,
  iso: exposure.iso,
  ev: exposure.ev,
  stops: exposure.stops,
  ratio: exposure.ratio,
  factor: exposure.factor,
  density: colour.density,
  greenCorrection: colour.greenCorrection,
  share: colour.share,
  colourTemperature: colour.colourTemperature,
  mired: colour.mired,
  duv: colour.duv,
  chromaticity: colour.chromaticity,
  power: electric.power,
  apparentPower: electric.apparentPower,
  voltage: electric.voltage,
  current: electric.current,
  energy: electric.energy,
  charge: electric.charge,
  conductorArea: electric.conductorArea,
  frequency: electric.frequency,
  weight: others.weight,
  temperature: others.temperature,
  duration: others.duration,
  money: others.money,
  number: others.number,
  text: others.text,
  dateTime: others.dateTime,
  truth: others.truth,
  verdict: others.verdict,
};

/** The unit with this symbol; a programmer names it, so an unknown one throws. */
export function unitNamed(quantity: QuantityName, symbol: string): Unit {
  const unit = units[quantity].units.find((each) => each.symbol === symbol);
  if (unit === undefined) throw new Error(`No unit ${symbol} of ${quantity}.`);
  return unit;
}
