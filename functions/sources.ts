/** One line of the bibliography. */
export interface Source {
  readonly title: string;
  readonly kind: 'standard' | 'handbook' | 'paper' | 'practice';
}

/** Everything that a definition may cite; a test fails when an entry is cited nowhere. */
export const sources = {
  'common practice': {
    title: 'Common practice of the trade, in print in many places and in no one standard.',
    kind: 'practice',
  },
  'ISO 517': {
    title:
      'ISO 517:2008, Photography. Apertures and related properties pertaining to photographic lenses.',
    kind: 'standard',
  },
  'ISO 2720': {
    title:
      'ISO 2720:1974, Photography. General purpose photographic exposure meters (photoelectric type).',
    kind: 'standard',
  },
  'ISO 5': {
    title: 'ISO 5-1:2009, Photography and graphic technology. Density measurements.',
    kind: 'standard',
  },
  'CIE S 017': {
    title: 'CIE S 017:2020, ILV: International Lighting Vocabulary, 2nd edition.',
    kind: 'standard',
  },
  'exposure value table': {
    title:
      'Table of exposure values at ISO 100 against luminance (K = 12.5) and illuminance (C = 250), as printed in encyclopaedia articles on exposure value.',
    kind: 'handbook',
  },
  'ANSI PH3.49': {
    title:
      'ANSI PH3.49-1971, General-purpose photographic exposure meters (photoelectric type); worked example as quoted in print.',
    kind: 'standard',
  },
  'US Army SS0512': {
    title: 'US Army correspondence course SS0512, Copying and close-up photography.',
    kind: 'handbook',
  },
  'NIST SP 811': {
    title:
      'NIST Special Publication 811 (2008), Guide for the use of the International System of Units.',
    kind: 'standard',
  },
  'configuration factors': {
    title:
      'R. Siegel and J. R. Howell, Thermal Radiation Heat Transfer: catalogue of configuration factors.',
    kind: 'handbook',
  },
  'IES Lighting Handbook': {
    title: 'Illuminating Engineering Society of North America, The IESNA Lighting Handbook.',
    kind: 'handbook',
  },
  'mired tables': {
    title:
      'Tables of mired values and shifts as printed in photographic dictionaries and encyclopaedias.',
    kind: 'handbook',
  },
  'neutral density tables': {
    title: 'Tables of neutral density labels, transmission and stops as filter makers print them.',
    kind: 'handbook',
  },
  'CIE 15': {
    title: 'CIE 15:2004, Colorimetry, 3rd edition.',
    kind: 'standard',
  },
  'ISO 11664-1': {
    title: 'ISO/CIE 11664-1:2019, Colorimetry. CIE standard colorimetric observers.',
    kind: 'standard',
  },
  'CIE 13.3': {
    title:
      'CIE 13.3-1995, Method of measuring and specifying colour rendering properties of light sources.',
    kind: 'standard',
  },
  'SMPTE ST 2122': {
    title:
      'SMPTE ST 2122:2020, Spectral similarity index (SSI); the calculation as open-source colour libraries carry it.',
    kind: 'standard',
  },
  'EBU Tech 3355': {
    title:
      'EBU Tech 3355 (2017), Method for the assessment of the colorimetric properties of luminaires: TLCI-2012.',
    kind: 'standard',
  },
  'ISO 11664-6': {
    title: 'ISO/CIE 11664-6:2014, Colorimetry. CIEDE2000 colour-difference formula.',
    kind: 'standard',
  },
  'Ohno 2013': {
    title:
      'Y. Ohno, Practical use and calculation of CCT and Duv, LEUKOS 10 (2014) 47–55, online 2013.',
    kind: 'paper',
  },
  'IEC 60050-131': {
    title: 'IEC 60050-131:2002, International Electrotechnical Vocabulary. Circuit theory.',
    kind: 'standard',
  },
  'IEC 60228': {
    title: 'IEC 60228:2004, Conductors of insulated cables.',
    kind: 'standard',
  },
  'Janiczek 1987': {
    title:
      'P. M. Janiczek and J. A. DeYoung, Computer programs for sun and moon illuminance, US Naval Observatory Circular 171, 1987.',
    kind: 'paper',
  },
  'IES RP-21': {
    title:
      'Illuminating Engineering Society, Calculation of daylight availability, recommended practice RP-21, 1984 (constants from memory).',
    kind: 'standard',
  },
  'LM-63': {
    title:
      'ANSI/IES LM-63-19, Approved method: IES standard file format for the electronic transfer of photometric data, and its editions since 1986.',
    kind: 'standard',
  },
  'CIE 121': {
    title: 'CIE 121-1996, The photometry and goniophotometry of luminaires.',
    kind: 'standard',
  },
  'sunrise and sunset tables': {
    title: 'Sunrise and sunset tables as national almanac offices print them (from memory).',
    kind: 'handbook',
  },
} as const satisfies Record<string, Source>;

export type SourceName = keyof typeof sources;
