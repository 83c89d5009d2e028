/** What rounding may leave of a whole number. */
const grace = 1e-9;

/** Pulses of the light during one frame: mains light pulses twice in each period. */
export function pulsesAFrame(fps: number, mains: number): number {
  return (2 * mains) / fps;
}

/** Whether every frame sees the same part of the pulses, so that nothing changes between frames. */
export function keepsStep(fps: number, mains: number): boolean {
  const pulses = pulsesAFrame(fps, mains);
  return Math.abs(pulses - Math.round(pulses)) <= grace * pulses;
}

/**
 * (max − min) / (max + min) of what exposures of one length see of a source 1 + m·cos(2π·2f·t),
 * over all moments at which they may begin: the average of the cosine over the exposure.
 */
export function residue(time: number, mains: number, modulation: number): number {
  const phase = 2 * Math.PI * mains * time;
  return modulation * Math.abs(Math.sin(phase) / phase);
}

/** Shutter angle that is open for `pulses` whole pulses. */
export function cleanAngle(fps: number, mains: number, pulses: number): number {
  return (180 * fps * pulses) / mains;
}

/**
 * The clean angle nearest to one that is wanted, the smaller of two as near; undefined where a
 * frame is shorter than one pulse.
 */
export function nearestCleanAngle(fps: number, mains: number, wanted: number): number | undefined {
  const one = cleanAngle(fps, mains, 1);
  const most = Math.floor(pulsesAFrame(fps, mains) * (1 + grace));
  if (most < 1) return undefined;
  const nearest = Math.ceil(wanted / one - 0.5 - grace);
  return cleanAngle(fps, mains, Math.min(most, Math.max(1, nearest)));
}
