import { serve } from './serve.ts';

serve(() => import('./exchange-work.ts'));
