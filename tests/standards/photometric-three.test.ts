import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { FloatType } from 'three';
import { IESLoader } from 'three/examples/jsm/loaders/IESLoader.js';
import { describe, expect, it } from 'vitest';
import { candelaAt } from '../../functions/fixture/photometry.ts';
import { readLm63 } from '../../src/files/photometric/lm63.ts';

const folder = join(import.meta.dirname, 'photometric-files');

/** What three.js reads otherwise, each with the reason; where it is right we would be wrong. */
const otherwise: Readonly<Record<string, string>> = {
  'h_uplight_2002.ies':
    'it draws intensities out below the first angle, where the file states none',
  'j_bilateral_90_270_1995.ies': 'it takes planes from 90 to 270 degrees to begin at 0',
};
const files = readdirSync(folder).filter((file) => file.endsWith('.ies'));

function theirs(text: string) {
  const loader = new IESLoader();
  loader.type = FloatType;
  return loader.parse(text).image;
}

/** Beyond the last angle it draws on, where a file says dark: compared within what is stated. */
describe('three.js (IESLoader) reads the same shape, by its own degrees, as shares of the highest', () => {
  for (const file of files.filter((one) => !(one in otherwise))) {
    it(file, () => {
      const text = readFileSync(join(folder, file), 'utf8');
      const { photometry } = readLm63(text);
      // It parts numbers at blanks alone, and lines at \n.
      const { data, width, height } = theirs(text.replaceAll('\r', '').replaceAll('\t', ' '));
      expect(width).toBe(180);
      const ours = (theta: number, phi: number) =>
        candelaAt(photometry, phi, theta) / photometry.peak;
      let compared = 0;
      for (let theta = 0; theta < height; theta += 1) {
        for (let row = 0; row < width; row += 1) {
          const phi = (row * 180) / (width - 1);
          if (phi > photometry.gammaSteps.last) continue;
          compared += 1;
          const value = data[theta * width + row]!;
          expect(Math.abs(value - ours(theta, phi)), `γ ${phi}, C ${theta}`).toBeLessThan(1e-6);
        }
      }
      expect(compared).toBeGreaterThan(80);
    });
  }

  it('but for the files listed with the reason', () => {
    for (const [file, reason] of Object.entries(otherwise)) {
      expect(files).toContain(file);
      expect(reason).toMatch(/\w+ \w+/);
    }
  });
});
