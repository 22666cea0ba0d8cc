import { care } from '../site.ts';

/** What the plans of any reels are worked out from in the browser. */
export const GET = () => new Response(JSON.stringify(care().reels));
