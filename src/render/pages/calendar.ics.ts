import { care, site } from '../site.ts';
import { calendarText } from '../words/calendar.ts';

/** What falls due, for any calendar program. */
export const GET = () => new Response(calendarText(care().calendar, site().catalogue.today));
