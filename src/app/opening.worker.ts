import { serve } from './serve.ts';

serve(() => import('./opening-work.ts'));
