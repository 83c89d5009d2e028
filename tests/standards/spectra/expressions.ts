import SPECTRUMCCT from '../../../functions/colour/SPECTRUMCCT.ts';
import SPECTRUMCRI from '../../../functions/colour/SPECTRUMCRI.ts';
import SPECTRUMLUX from '../../../functions/colour/SPECTRUMLUX.ts';
import SPECTRUMSSI from '../../../functions/colour/SPECTRUMSSI.ts';
import SPECTRUMX from '../../../functions/colour/SPECTRUMX.ts';
import SPECTRUMY from '../../../functions/colour/SPECTRUMY.ts';
import { lightOf } from '../../../functions/spectrum/light.ts';
import type { ReferenceKind } from '../../../functions/spectrum/reference.ts';
import { renderingOf } from '../../../functions/spectrum/rendering.ts';
import { number, type Expressions } from '../../support/cases.ts';
import { cellsOf, rowsOf, spectrumOf } from './illuminants.ts';

const xy = (name: string) => [SPECTRUMX, SPECTRUMY].map((one) => number(one, cellsOf(name)));
const xyCct = (name: string) => [...xy(name), number(SPECTRUMCCT, cellsOf(name))];
const ra = (name: string) => number(SPECTRUMCRI, cellsOf(name));
const special = (name: string) =>
  Array.from({ length: 14 }, (_, index) => number(SPECTRUMCRI, cellsOf(name), index + 1));
const all = (name: string) => [ra(name), ...special(name)];
const ssi = (name: string, kelvin: number) => number(SPECTRUMSSI, cellsOf(name), kelvin);

/** With the reference that a printed row was made with, though the rule of CIE 13.3 is another. */
function forced(name: string, kind: ReferenceKind): readonly number[] {
  const kelvin = number(SPECTRUMCCT, cellsOf(name));
  const { general, special } = renderingOf(lightOf(spectrumOf(name)).sampled, kelvin, kind);
  return [general, ...special];
}

const raAndRed = (name: string, kind: ReferenceKind) => {
  const indices = forced(name, kind);
  return [indices[0]!, indices[9]!];
};

/** W/m² from 380 to 780 nm. */
const watts = (name: string) =>
  rowsOf(name).reduce((sum, [nm, value]) => (nm < 380 || nm > 780 ? sum : sum + 5 * value), 0);

function whiteTo100(name: string): readonly number[] {
  const { X, Y, Z } = lightOf(spectrumOf(name)).tristimulus;
  return [X, Y, Z].map((one) => (100 * one) / Y);
}

/** How the check cases that begin with a spectrum are written with our functions. */
export const spectrumCases: Expressions = {
  'colour-036-illum-D75-xy': () => xy('D75'),
  'colour-074-F1-xy-cct': () => xyCct('F1'),
  'colour-077-F2-xy-cct': () => xyCct('F2'),
  'colour-079-F2-R1-14': () => special('F2'),
  'colour-080-F3-xy-cct': () => xyCct('F3'),
  'colour-082-F3-R1-14': () => special('F3'),
  'colour-083-F4-xy-cct': () => xyCct('F4'),
  'colour-086-F5-xy-cct': () => xyCct('F5'),
  'colour-088-F5-R1-14': () => special('F5'),
  'colour-090-F6-Ra': () => ra('F6'),
  'colour-093-F7-Ra': () => ra('F7'),
  'colour-094-F7-R1-14': () => special('F7'),
  'colour-096-F8-Ra': () => ra('F8'),
  'colour-099-F9-Ra': () => ra('F9'),
  'colour-100-F9-R1-14': () => special('F9'),
  'colour-101-F10-xy-cct': () => xyCct('F10'),
  'colour-102-F10-Ra': () => ra('F10'),
  'colour-103-F10-R1-14': () => special('F10'),
  'colour-106-F11-R1-14': () => special('F11'),
  'colour-108-F12-Ra': () => ra('F12'),
  'colour-109-F12-R1-14': () => special('F12'),
  'colour-112-FL3.3-published': () => all('FL3.3'),
  'colour-114-FL3.7-published': () => all('FL3.7'),
  'colour-115-FL3.11-published': () => all('FL3.11'),
  'colour-116-FL3.12-published': () => all('FL3.12'),
  'colour-118-FL3.14-published': () => all('FL3.14'),
  'colour-120-FL3.5-daylight-ref': () => forced('FL3.5', 'daylight'),
  'colour-122-FL3.6-daylight-ref': () => forced('FL3.6', 'daylight'),
  'colour-123-FL3.6-planck-ref': () => all('FL3.6'),
  'colour-124-FL3.8-daylight-ref': () => forced('FL3.8', 'daylight'),
  'colour-126-FL3.9-daylight-ref': () => forced('FL3.9', 'daylight'),
  'colour-128-FL3.10-daylight-ref': () => forced('FL3.10', 'daylight'),
  'colour-135-F8-planck': () => raAndRed('F8', 'planck'),
  'colour-136-F8-daylight': () => raAndRed('F8', 'daylight'),
  'colour-139-XYZ-F2': () => whiteTo100('F2'),
  'colour-142-lux-A': () => number(SPECTRUMLUX, cellsOf('A', 0.0001)),
  'colour-143-lux-F11': () => number(SPECTRUMLUX, cellsOf('F11', 0.0001)),
  'colour-144-lux-F2': () => number(SPECTRUMLUX, cellsOf('F2', 0.001)),
  'colour-148-LER-A': () => number(SPECTRUMLUX, cellsOf('A')) / watts('A'),
  'colour-151-SSI-F12-P3200': () => ssi('F12', 3200),
  'colour-152-SSI-F11-P3200': () => ssi('F11', 3200),
  'colour-154-SSI-D55-D55': () => ssi('D55', 5500),
  'colour-155-SSI-D65-D55': () => ssi('D65', 5500),
  'colour-157-SSI-F7-D55': () => ssi('F7', 5500),
  'colour-158-SSI-F8-D50': () => ssi('F8', 5000),
  'colour-159-SSI-F2-D55': () => ssi('F2', 5500),
};
