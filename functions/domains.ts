/** Which numbers an argument may be, said in words that follow "must be". */
export interface Domain {
  readonly says: string;
  allows(value: number): boolean;
  /** Zero is a reading, but a logarithm has no answer to it: "no light at …". */
  readonly needsLight?: true;
  /** Where random samples for the tests are drawn from. */
  readonly samples: readonly [low: number, high: number];
  /** Only these, of which the samples are then drawn. */
  readonly choices?: readonly number[];
}

export const any: Domain = { says: 'any number', allows: () => true, samples: [-10, 10] };

export const zeroOrMore: Domain = {
  says: 'zero or more',
  allows: (value) => value >= 0,
  samples: [0, 10_000],
};

export const positive: Domain = {
  says: 'more than zero',
  allows: (value) => value > 0,
  samples: [0.01, 10_000],
};

/** Light that a logarithm or a division looks at: negative is refused, none is "no light". */
export const light: Domain = { ...positive, needsLight: true };

export function between(low: number, high: number): Domain {
  return {
    says: `from ${low} to ${high}`,
    allows: (value) => value >= low && value <= high,
    samples: [low, high],
  };
}

export function above(low: number, high: number): Domain {
  return {
    says: `more than ${low} and at most ${high}`,
    allows: (value) => value > low && value <= high,
    samples: [low + (high - low) / 1000, high],
  };
}

/** More than one number and less than another, both left out. */
export function inside(low: number, high: number): Domain {
  const margin = (high - low) / 1000;
  return {
    says: `more than ${low} and less than ${high}`,
    allows: (value) => value > low && value < high,
    samples: [low + margin, high - margin],
  };
}

/** Same rule, with samples from where the trade lives. */
export function sampled(domain: Domain, low: number, high: number): Domain {
  return { ...domain, samples: [low, high] };
}

export const share = between(0, 1);
export const shareAboveZero = above(0, 1);
export const shutterAngle = above(0, 360);
export const coneAngle = inside(0, 180);

/** A light level as a meter reads it, lux or candela per square metre. */
export const lightLevel = sampled(light, 0.1, 100_000);
/** A light level that may also be nothing at all. */
export const levelOrNone = sampled(zeroOrMore, 0, 100_000);
/** An f-number that a meter shows: none means that it saw no light. */
export const stopReading = sampled(light, 0.7, 45);
/** An f-number reading that may also be none. */
export const stopReadingOrNone = sampled(zeroOrMore, 0, 45);
/** An f-number set on a lens. */
export const lensStop = sampled(positive, 0.7, 45);
export const isoSpeed = sampled(positive, 25, 25_600);
export const exposureTime = sampled(positive, 1 / 8000, 2);
export const framesPerSecond = sampled(positive, 1, 1000);
/** Share of the light that a surface sends back, where a logarithm or a division looks at it. */
export const reflecting: Domain = { ...shareAboveZero, needsLight: true };

/** Light distances and sizes as they are on a set, in metres. */
export const onSet = sampled(positive, 0.1, 100);
/** How far the light comes in from straight on; at a right angle it only grazes. */
export const incidenceAngle = between(0, 90);
/** Straight on or at a slant, where a division needs some of it to arrive. */
export const slantAngle: Domain = {
  says: 'from 0 to less than 90',
  allows: (value) => value >= 0 && value < 90,
  samples: [0, 85],
};
/** A share of the light that goes through or is left on, where a logarithm looks at it. */
export const passing: Domain = { ...shareAboveZero, needsLight: true };
/** Stops that filters take away: never less than none. */
export const filterLoss = sampled(zeroOrMore, 0, 20);
export const opticalDensity = sampled(zeroOrMore, 0, 6);
export const colourTemperature = sampled(positive, 1000, 20_000);

export const chromaticityX = sampled(between(0, 1), 0.25, 0.5);
export const chromaticityY = sampled(between(0, 1), 0.28, 0.45);
/** Green above and magenta below the Planckian locus, as far as a colour temperature still means something. */
export const duvRange = sampled(between(-0.05, 0.05), -0.03, 0.03);

/** One of a few numbers and nothing between them. */
export function oneOf(...choices: readonly [number, ...number[]]): Domain {
  const last = choices.at(-1) ?? choices[0];
  return {
    says: `${choices.slice(0, -1).join(', ')} or ${last}`,
    allows: (value) => choices.includes(value),
    samples: [choices[0], last],
    choices,
  };
}

/** Things that are counted: 1, 2, 3 and so on. */
export const countFromOne: Domain = {
  says: 'a whole number, 1 or more',
  allows: (value) => Number.isInteger(value) && value >= 1,
  samples: [1, 6],
  choices: [1, 2, 3, 4, 5, 6],
};
