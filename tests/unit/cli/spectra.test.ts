import { describe, expect, it } from 'vitest';
import { sampleSpectra } from '../../../src/files/spectra/samples.ts';
import { halfstop, lines } from './terminal.ts';

const files = Object.fromEntries(sampleSpectra.map(({ file, text }) => [file, text]));

describe('evaluate --spectrum', () => {
  it('reads spectra under their names, one after the other', async () => {
    const given = ['--spectrum', 'Key=tungsten-3100.xml', '--spectrum=Gel=amber-gel.csv'];
    const asked = ['SPECTRUMCRI("KEY")', 'SPECTRUMPEAK("Key")', 'SPECTRUMLUX("Key")'];
    const said = await halfstop(['evaluate', ...given, ...asked], { files });
    const [ra, peak, lux] = lines(said) as { value?: number; error?: string }[];
    expect(Math.round(ra?.value ?? 0)).toBe(100);
    expect(peak?.value).toBe(780);
    expect(lux?.error).toBe('#NUM!');
    expect(said.code).toBe(1);
  });

  it.each(['Key', '=key.csv', 'Key='])('%s is refused', async (given) => {
    const said = await halfstop(['evaluate', '--spectrum', given, '1+1']);
    expect(said.err).toContain('--spectrum wants NAME=FILE');
    expect(said.code).toBe(2);
  });

  it('a file that is no spectrum ends with its line', async () => {
    const said = await halfstop(['evaluate', '--spectrum', 'Key=a.csv', '1+1'], {
      files: { 'a.csv': 'Dear all' },
    });
    expect(said.err).toContain('a.csv: Line 1: There is no table of wavelengths');
    expect(said.code).toBe(2);
  });
});
