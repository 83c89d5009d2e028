import { serve } from './serve.ts';

serve(() => import('./archive-work.ts'));
