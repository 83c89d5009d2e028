import { serve } from './serve.ts';

serve(() => import('./versions-work.ts'));
