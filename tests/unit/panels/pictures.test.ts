import { expect, test } from 'vitest';
import { templates } from '../../../src/app/templates.ts';
import { pictureOf } from '../../../src/panels/start/pictures.ts';

test('every sheet set, the sample, a blank book and a file have a picture of their own', () => {
  const names = [...templates.map(({ id }) => id), 'harbour-hours', 'blank', 'file'];
  const drawn = names.map((name) => pictureOf(name).values[0]);
  const without = pictureOf('nothing of the kind').values[0];
  expect(names.filter((_, at) => drawn[at] === without)).toEqual([]);
  expect(new Set(drawn).size).toBe(names.length);
});
