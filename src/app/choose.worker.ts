import { serve } from './serve.ts';

export type { ChooseAnswer } from './choose-work.ts';

serve(() => import('./choose-work.ts'));
