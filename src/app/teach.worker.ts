import { serve } from './serve.ts';

export type { TeachAnswer } from './teach-work.ts';

serve(() => import('./teach-work.ts'));
