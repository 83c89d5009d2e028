/** What figures are made with; nothing of it is needed before there is one. */
export { figureKinds } from '../../figures/kinds.ts';
export { fileTheme } from '../../figures/kit/theme.ts';
export { svgFile } from '../../figures/kit/file.ts';
export { figuresView } from './gather.ts';
export { formOf, newForm, plannedForm } from './form.ts';
export { placedHand } from './place.ts';
