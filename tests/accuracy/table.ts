import { catalogue } from '../../functions/index.ts';
import { chance } from '../unit/functions/support/chance.ts';
import { measure, referencesOf, type Accuracy } from './measure.ts';

/** The functions that give words, each with the sentence why no figure stands beside it. */
export const words: Readonly<Record<string, string>> = {
  COLOURVERDICT: 'words; MIREDSHIFT and DUV have the figures',
  FLICKERCHECK: 'words; FLICKERRESIDUE and FLICKERANGLE have the figures',
  PLACEMENT: 'words; HEADROOM and FOOTROOM have the figures',
  SUNIN: 'words; tests/standards/recce.test.ts holds its times to the sun of every minute',
  STOPWORDS: 'words; STOPS has the figure',
  VERDICT: 'words; STOPS has the figure',
};

/** The worst error of every function that gives a figure, over so many random samples each. */
export function accuracies(samples: number, seed: number): Accuracy[] {
  return catalogue.flatMap((definition) =>
    referencesOf(definition).map((reference) =>
      measure(definition, reference, samples, chance(seed)),
    ),
  );
}
