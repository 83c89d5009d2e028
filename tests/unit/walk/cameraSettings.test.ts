import { describe, expect, it } from 'vitest';
import { readCameraSettings } from '../../../src/walk/cameraSettings.ts';

describe('what a walk says of the camera', () => {
  it('goes to the captions of the sheet as it was written', () => {
    expect(
      readCameraSettings('ISO 800, 25 fps, 180°, ND none, white balance 3200 K', '.').settings,
    ).toEqual([
      { label: 'Speed', typed: 'ISO 800' },
      { label: 'Frame rate', typed: '25 fps' },
      { label: 'Shutter', typed: '180°' },
      { label: 'Filters lose', typed: '0' },
      { label: 'White', typed: '3200 K' },
    ]);
  });

  it('takes a shutter as a time and mains from a note', () => {
    expect(readCameraSettings('1/50 s, 50 Hz mains', ',').settings).toEqual([
      { label: 'Shutter', typed: '1/50 s' },
      { label: 'Mains', typed: '50 Hz' },
    ]);
  });

  it('counts an ND label as its nominal stops', () => {
    expect(readCameraSettings('ND 0.9', '.').settings).toEqual([
      { label: 'Filters lose', typed: '3' },
    ]);
  });

  it('returns what it does not know', () => {
    expect(readCameraSettings('ISO 800, matte box', '.').leftOut).toEqual(['matte box']);
  });
});
