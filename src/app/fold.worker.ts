import { serve } from './serve.ts';

serve(() => import('./fold-work.ts'));
