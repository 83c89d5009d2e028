import { define } from '../define.ts';
import { levelOrNone, lightLevel } from '../domains.ts';
import { near } from '../near.ts';
import { isError, refuse, type FunctionError, type In } from '../values.ts';

function run(lux: In<'illuminance'>, wantedLux: In<'illuminance'>): In<'share'> | FunctionError {
  if (wantedLux > lux) {
    const short = Math.log2(wantedLux / lux).toFixed(1);
    return refuse(
      `DIMMERFOR: at full the lamp is ${short} stops short of wanted_lux: bring it closer or use a stronger one.`,
    );
  }
  return wantedLux / lux;
}

export default define({
  name: 'DIMMERFOR',
  family: 'distance',
  summary: 'Share of its light to which a lamp must be dimmed.',
  job: 'The lamp is too hot where it stands and you want to bring it down to a reading.',
  search: ['dimmer', 'too hot', 'bring it down', 'per cent', 'turn it down'],
  parameters: [
    {
      name: 'lux',
      quantity: 'illuminance',
      domain: lightLevel,
      help: 'Reading with the lamp at full.',
    },
    {
      name: 'wanted_lux',
      quantity: 'illuminance',
      domain: levelOrNone,
      help: 'Reading that is wanted.',
    },
  ],
  result: 'share',
  alike: ['DIMMERSTOPS', 'DISTANCEFOR', 'NDFOR', 'TUNGSTENKELVIN'],
  limits:
    'A share of the light, not the value of a control channel: dimmer curves differ. Tungsten turns warmer.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [800, 200], result: 0.25, why: 'a quarter of the light, two stops down' },
    { args: ['50 fc', '50 fc'], result: 1, why: 'already right' },
    { args: [640, 0], result: 0, why: 'no light wanted is the lamp out' },
  ],
  laws: {
    'that share of the light is the light wanted': (lux, wantedLux) => {
      const share = run(lux, wantedLux);
      return isError(share) ? wantedLux > lux : near(share * lux, wantedLux);
    },
  },
  formula: 'IF(wanted_lux > lux, NA(), wanted_lux / lux)',
  run,
});
